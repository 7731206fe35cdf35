/** Plane geometry of polygons: sides, crossings, distances, area. Plain numbers, in one unit throughout. */

/** A point on a panel, without its labels. */
export interface Flat {
  readonly u: number;
  readonly v: number;
}

/** A side of a polygon, from one point to the next. */
export type Segment = readonly [Flat, Flat];

/** The sides of a polygon, the last one back to the first point. */
export function segments(points: readonly Flat[]): Segment[] {
  return points.map((point, i) => [point, points[(i + 1) % points.length] as Flat]);
}

/** Do two segments have a point in common? */
export function segmentsMeet([a, b]: Segment, [c, d]: Segment): boolean {
  const sides = [turn(a, b, c), turn(a, b, d), turn(c, d, a), turn(c, d, b)] as const;
  const crossing = sides[0] * sides[1] < 0 && sides[2] * sides[3] < 0;
  const touching = (
    [
      [sides[0], c, a, b],
      [sides[1], d, a, b],
      [sides[2], a, c, d],
      [sides[3], b, c, d],
    ] as const
  ).some(([side, point, from, to]) => side === 0 && isBetween(point, from, to));
  return crossing || touching;
}

/** Least distance between two segments. */
export function segmentGap(one: Segment, other: Segment): number {
  if (segmentsMeet(one, other)) return 0;
  return Math.min(
    ...one.map((point) => distanceToSegment(point, other)),
    ...other.map((point) => distanceToSegment(point, one)),
  );
}

function turn(a: Flat, b: Flat, c: Flat): number {
  return (b.u - a.u) * (c.v - a.v) - (b.v - a.v) * (c.u - a.u);
}

function isBetween(point: Flat, from: Flat, to: Flat): boolean {
  return (
    Math.min(from.u, to.u) <= point.u &&
    point.u <= Math.max(from.u, to.u) &&
    Math.min(from.v, to.v) <= point.v &&
    point.v <= Math.max(from.v, to.v)
  );
}

/** Distance from a point to a segment. */
export function distanceToSegment(point: Flat, [a, b]: Segment): number {
  const length = Math.hypot(b.u - a.u, b.v - a.v);
  const along = length === 0 ? 0 : dot(a, point, a, b) / length ** 2;
  const share = Math.min(Math.max(along, 0), 1);
  return Math.hypot(point.u - a.u - share * (b.u - a.u), point.v - a.v - share * (b.v - a.v));
}

function dot(fromA: Flat, toA: Flat, fromB: Flat, toB: Flat): number {
  return (toA.u - fromA.u) * (toB.u - fromB.u) + (toA.v - fromA.v) * (toB.v - fromB.v);
}

/** Half the sum of cross products (shoelace), positive when anticlockwise. */
export function signedArea(points: readonly Flat[]): number {
  return segments(points).reduce((sum, [a, b]) => sum + (a.u * b.v - b.u * a.v) / 2, 0);
}

/** Is the point inside? Counts the sides that a ray to the right crosses. */
export function isInside({ u, v }: Flat, points: readonly Flat[]): boolean {
  const crossed = segments(points).filter(
    ([a, b]) => a.v > v !== b.v > v && u < a.u + ((v - a.v) / (b.v - a.v)) * (b.u - a.u),
  );
  return crossed.length % 2 === 1;
}
