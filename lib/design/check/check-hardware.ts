/** Hardware: on its panel, clear of extrusions, openings and other hardware. */

import { distanceTo, rectangle, type Shape } from "../../shape/index.js";
import { edgeBetween, neighbour } from "../derive/axes.js";
import type { EdgeBar } from "../derive/bars.js";
import type { HardwareSpot } from "../derive/hardware-spots.js";
import { leavesOf } from "../derive/leaves.js";
import { placeOpening } from "../derive/openings.js";
import { sameness, touch } from "../derive/outline.js";
import type { CasePlan } from "../derive/plan.js";
import { type PanelSide, panelSides } from "../place.js";
import type { CasePath } from "../read/case-text.js";
import type { Ruler } from "../ruler.js";
import type { Fault } from "./fault.js";

/** Every fault of the hardware placed on panels. */
export function checkHardware({ spots, bars, corners }: CasePlan, ruler: Ruler): Fault[] {
  const off = spots.map((spot) => checkWithin(spot, bars, ruler));
  const offIn = (section: string): number =>
    spots.filter(({ place }, i) => place.section === section && (off[i]?.length ?? 0) > 0).length;
  return spots.flatMap((spot, i) => {
    const { section } = spot.place;
    const own = off[i] ?? [];
    // So many places off the panels of one section have its size for a cause more likely than their own.
    if (offIn(section) > 3)
      return own.slice(0, 1).map((fault) => ({ ...fault, cause: `places in ${section}` }));
    return [
      ...own,
      ...checkCorners(spot, corners),
      ...checkOpenings(spot),
      ...checkCutOut(spot),
      ...checkOthers(spot, spots.slice(0, i)),
    ];
  });
}

/** Path of a place in the case file. */
export function placePath({ item, index }: HardwareSpot): CasePath {
  return ["hardware", item.name, "places", index];
}

function covered({ centre: { x, y } }: HardwareSpot, { width, height }: HardwareSpot["size"]): Shape {
  return rectangle({ left: x - width / 2, bottom: y - height / 2, width, height });
}

/** Each side of the part must stay on the panel, and off the leg of an extrusion at that edge. */
function checkWithin(spot: HardwareSpot, bars: readonly EdgeBar[], ruler: Ruler): Fault[] {
  const { layout, size, centre } = spot;
  const toCentre: Readonly<Record<PanelSide, number>> = {
    left: centre.x,
    right: layout.width - centre.x,
    bottom: centre.y,
    top: layout.height - centre.y,
  };
  return panelSides.flatMap((side) => {
    const half = (side === "left" || side === "right" ? size.width : size.height) / 2;
    const edge = edgeBetween(layout.face, neighbour(layout.face, side));
    const bar = bars.find((one) => one.section === layout.section && one.edge === edge);
    const underBar = bar ? Math.max(bar.stock.leg - bar.stock.wall - layout.inset[side], 0) : 0;
    const least = underBar + half;
    if (toCentre[side] >= least - sameness) return [];
    const why = bar ? `clear of the extrusion over ${bar.id}` : `on the panel ${layout.id}`;
    const expected = `its centre at least ${ruler(least)} from the panel's ${side} edge, ${why}`;
    const cause = `${spot.item.name} ${side} ${ruler(least)}`;
    return [{ path: placePath(spot), value: ruler(toCentre[side]), expected, cause }];
  });
}

/** The metal of a corner covers a square of each of its faces. */
function checkCorners(spot: HardwareSpot, corners: CasePlan["corners"]): Fault[] {
  const own = covered(spot, spot.size);
  return corners.flatMap(({ id, stock, legs }) => {
    const leg = legs.find(({ layout }) => layout === spot.layout);
    if (!leg) return [];
    const square = cornerSquare(leg, Math.max(stock.width, stock.height));
    if (!touch(own, square)) return [];
    return [{ path: placePath(spot), expected: `a place clear of "${id}"` }];
  });
}

function cornerSquare({ layout, holes }: CasePlan["corners"][number]["legs"][number], size: number): Shape {
  const [first] = holes;
  const { inset } = layout;
  const isRight = (first?.x ?? 0) > layout.width / 2;
  const isTop = (first?.y ?? 0) > layout.height / 2;
  return rectangle({
    left: isRight ? layout.width + inset.right - size : -inset.left,
    bottom: isTop ? layout.height + inset.top - size : -inset.bottom,
    width: size,
    height: size,
  });
}

/** Over an opening that stays open nothing can be fastened; over a door's gap hinges and latches belong. */
function checkOpenings(spot: HardwareSpot): Fault[] {
  const own = covered(spot, spot.size);
  return spot.layout.panel.openings
    .filter((opening) => leavesOf(opening).length === 0)
    .filter((opening) => touch(own, placeOpening(opening, spot.layout).outline))
    .map(({ name }) => ({ path: placePath(spot), expected: `a place clear of the opening "${name}"` }));
}

/** The cut-out must lie whole on the panel or on the leaf that its centre is on. */
function checkCutOut(spot: HardwareSpot): Fault[] {
  const { cut, surface, layout } = spot;
  if (cut.width === 0 || cut.height === 0) return [];
  const hole = covered(spot, cut);
  const inside = hole.sides.every(({ from }) => distanceTo(surface.outline, from) < -sameness);
  const doors = surface.leaf ? [] : layout.panel.openings.filter((opening) => leavesOf(opening).length > 0);
  const clear = doors.every((door) => !touch(hole, placeOpening(door, layout).outline));
  return inside && clear ? [] : [{ path: placePath(spot), expected: `its cut-out whole on ${surface.id}` }];
}

function checkOthers(spot: HardwareSpot, earlier: readonly HardwareSpot[]): Fault[] {
  return earlier
    .filter((other) => other.layout === spot.layout)
    .filter((other) => touch(covered(spot, spot.size), covered(other, other.size)))
    .map(({ id, item }) => ({
      path: placePath(spot),
      expected: `a place clear of "${id}"`,
      cause: `${spot.item.name} over ${item.name}`,
    }));
}
