/** Points of the plane, and the few things done with them. Plain numbers, in one unit throughout. */

/** A point, or a way from one point to another; a labelled one carries its quantity. */
export interface Point2<Coordinate extends number = number> {
  /** To the right, in the unit of the whole. */
  readonly x: Coordinate;
  /** Up, in the unit of the whole. */
  readonly y: Coordinate;
}

/** The distance of two points; a root, as meshes ask for it often and a hypotenuse takes many times longer. */
export function apart(a: Point2, b: Point2): number {
  const dx = a.x - b.x;
  const dy = a.y - b.y;
  return Math.sqrt(dx * dx + dy * dy);
}

/** The point half way between two. */
export function halfWay(a: Point2, b: Point2): Point2 {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

/** A point part of the way from one to another. */
export function between(a: Point2, b: Point2, share: number): Point2 {
  return { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y) };
}

/** Twice the area of the triangle of three points, positive when they turn left. */
export function turnOf(a: Point2, b: Point2, c: Point2): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
