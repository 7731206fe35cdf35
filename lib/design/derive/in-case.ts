/** From the axes of a panel to those of the stacked case. */
import type { Length } from "../../quantity/index.js";
import type { Point2 } from "../../shape/index.js";
import type { Box, Point } from "../place.js";
import { type Axis, faceAxes } from "./axes.js";
import { casePoint } from "./case-point.js";
import type { PanelLayout, StockedFacing } from "./layout.js";

/**
 * Where a point of a panel is in the stacked case.
 *
 * @param off distance outwards from the panel's inside face
 */
export function inCase({ section, face, reach }: PanelLayout, { x, y }: Point2<Length>, off: number): Point {
  const { inside, insideLow } = section;
  const axes = faceAxes[face];
  const place: Record<Axis, number> = { x: 0, y: 0, z: 0 };
  place[axes.u.axis] = axes.u.reversed ? inside[axes.u.axis] + reach.left - x : x - reach.left;
  place[axes.v.axis] = y - reach.bottom;
  place[axes.normal] = axes.end === "low" ? -off : inside[axes.normal] + off;
  return casePoint(insideLow.x + place.x, insideLow.y + place.y, insideLow.z + place.z);
}

/** Thickness of the facing on the inside. */
export function insideFacing({ facing }: { readonly facing?: StockedFacing }): number {
  return facing?.sides === "both" ? facing.stock.thickness : 0;
}

/** The box of a rectangle of a panel's sheet, without its facing. */
export function sheetBox(layout: PanelLayout, low: Point2<Length>, high: Point2<Length>): Box {
  const inner = insideFacing(layout);
  return boxOn(layout, low, high, [inner, inner + layout.sheet.thickness]);
}

/** The box of what lies on a rectangle of a panel, between two distances outwards from the panel's inside face. */
export function boxOn(
  layout: PanelLayout,
  low: Point2<Length>,
  high: Point2<Length>,
  [from, to]: readonly [number, number],
): Box {
  return boxBetween(inCase(layout, low, from), inCase(layout, high, to));
}

/** The box of which two points are opposite corners. */
export function boxBetween(one: Point, other: Point): Box {
  const lowest = (axis: Axis): number => Math.min(one[axis], other[axis]);
  const size = (axis: Axis): number => Math.abs(one[axis] - other[axis]);
  return {
    low: casePoint(lowest("x"), lowest("y"), lowest("z")),
    size: casePoint(size("x"), size("y"), size("z")),
  };
}

/** The middle of a box. */
export function middleOf({ low, size }: Box): Point {
  return casePoint(low.x + size.x / 2, low.y + size.y / 2, low.z + size.z / 2);
}
