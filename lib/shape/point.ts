/** Points of the plane, and the few things done with them. Plain numbers, in one unit throughout. */

/** A point, or a way from one point to another; a labelled one carries its quantity. */
export interface Point2<Coordinate extends number = number> {
  /** To the right, in the unit of the whole. */
  readonly x: Coordinate;
  /** Up, in the unit of the whole. */
  readonly y: Coordinate;
}

/** The distance of two points. */
export function apart(a: Point2, b: Point2): number {
  return Math.hypot(b.x - a.x, b.y - a.y);
}

/** A point part of the way from one to another. */
export function between(a: Point2, b: Point2, share: number): Point2 {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

/** Twice the area of the triangle of three points, positive when they turn left. */
export function turnOf(a: Point2, b: Point2, c: Point2): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
