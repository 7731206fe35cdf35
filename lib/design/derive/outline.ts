/** Outlines on a panel: its points, and when two outlines touch. */
import { Length } from "../../quantity/index.js";
import { boundsOf, boxGap, gapOf, type Point2, type Shape } from "../../shape/index.js";

/** A point of a panel, from its bottom-left cut corner. */
export function panelPoint(x: number, y: number): Point2<Length> {
  return { x: Length.si(x), y: Length.si(y) };
}

/** What is closer than this counts as touching (a hundredth of a millimetre). */
export const sameness = 1e-5;

/** Do two outlines overlap or touch? */
export function touch(one: Shape, other: Shape): boolean {
  return boxGap(boundsOf(one), boundsOf(other)) <= sameness && gapOf(one, other) <= sameness;
}
