/** Convex pieces of a plane. */
import { type Point2, turnOf } from "../../shape/index.js";
import type { Trapezoid } from "./region.js";

/** The corners of a convex piece, counterclockwise. */
export type Piece = readonly Point2[];

/** The convex hull of points, counterclockwise. */
export function hullOf(points: readonly Point2[]): readonly Point2[] {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  const chain = (list: readonly Point2[]): Point2[] => {
    const kept: Point2[] = [];
    for (const point of list) {
      while (kept.length > 1 && turnOf(kept.at(-2) as Point2, kept.at(-1) as Point2, point) <= 0) kept.pop();
      kept.push(point);
    }
    kept.pop();
    return kept;
  };
  return [...chain(sorted), ...chain(sorted.reverse())];
}

/** The corners of a trapezoid. */
export function cornersOf({ low, high, lowLeft, lowRight, highLeft, highRight }: Trapezoid): Piece {
  return hullOf([
    { x: lowLeft, y: low },
    { x: lowRight, y: low },
    { x: highRight, y: high },
    { x: highLeft, y: high },
  ]);
}
