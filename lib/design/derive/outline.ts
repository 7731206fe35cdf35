/** Outlines on a panel: its own points as plain ones, and when two outlines touch. */
import { Length } from "../../quantity/index.js";
import { boundsOf, boxGap, gapOf, type Point2, type Shape } from "../../shape/index.js";
import type { PanelPoint } from "../place.js";

/** A point of a panel. */
export function panelPoint(u: number, v: number): PanelPoint {
  return { u: Length.si(u), v: Length.si(v) };
}

/** A point of a panel as a point of its outline. */
export function onOutline({ u, v }: PanelPoint): Point2 {
  return { x: u, y: v };
}

/** What is closer than this counts as touching (a hundredth of a millimetre). */
export const sameness = 1e-5;

/** Do two outlines overlap or touch? */
export function touch(one: Shape, other: Shape): boolean {
  return boxGap(boundsOf(one), boundsOf(other)) <= sameness && gapOf(one, other) <= sameness;
}
