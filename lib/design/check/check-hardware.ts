/** Hardware: on its panel, clear of extrusions, openings and other hardware. */

import { Length } from "../../quantity/index.js";
import { edgeBetween, neighbour, type Side, sides } from "../derive/axes.js";
import type { EdgeBar } from "../derive/bars.js";
import type { HardwareSpot } from "../derive/hardware-spots.js";
import { placeOpening } from "../derive/openings.js";
import { distanceTo, type Form, formPolygon, panelPoint, sameness, touch } from "../derive/outline.js";
import type { CasePlan } from "../derive/plan.js";
import type { CasePath } from "../read/case-text.js";
import type { Fault } from "./fault.js";
import type { Ruler } from "./ruler.js";

/** Every fault of the hardware placed on panels. */
export function checkHardware({ spots, bars, corners }: CasePlan, ruler: Ruler): Fault[] {
  return spots.flatMap((spot, i) => [
    ...checkWithin(spot, bars, ruler),
    ...checkCorners(spot, corners),
    ...checkOpenings(spot),
    ...checkCutOut(spot),
    ...checkOthers(spot, spots.slice(0, i)),
  ]);
}

/** Path of a place in the case file. */
export function placePath({ item, index }: HardwareSpot): CasePath {
  return ["hardware", item.name, "places", index];
}

function rectangle(spot: HardwareSpot, { width, height }: HardwareSpot["size"]): Form {
  const { u, v } = spot.centre;
  return {
    low: panelPoint(u - width / 2, v - height / 2),
    width: Length.si(width),
    height: Length.si(height),
    outline: { kind: "rectangle", cornerRadius: Length.si(0) },
  };
}

/** Each side of the part must stay on the panel, and off the leg of an extrusion at that edge. */
function checkWithin(spot: HardwareSpot, bars: readonly EdgeBar[], ruler: Ruler): Fault[] {
  const { layout, size, centre } = spot;
  const toCentre: Readonly<Record<Side, number>> = {
    left: centre.u,
    right: layout.width - centre.u,
    bottom: centre.v,
    top: layout.height - centre.v,
  };
  return sides.flatMap((side) => {
    const half = (side === "left" || side === "right" ? size.width : size.height) / 2;
    const edge = edgeBetween(layout.face, neighbour(layout.face, side));
    const bar = bars.find((one) => one.section === layout.section && one.edge === edge);
    const covered = bar ? Math.max(bar.stock.leg - bar.stock.wall - layout.inset[side], 0) : 0;
    const least = covered + half;
    if (toCentre[side] >= least - sameness) return [];
    const why = bar ? `clear of the extrusion over ${bar.id}` : `on the panel ${layout.id}`;
    const expected = `its centre at least ${ruler(least)} from the panel's ${side} edge, ${why}`;
    return [{ path: placePath(spot), value: ruler(toCentre[side]), expected }];
  });
}

/** The metal of a corner covers a square of each of its faces. */
function checkCorners(spot: HardwareSpot, corners: CasePlan["corners"]): Fault[] {
  const own = rectangle(spot, spot.size);
  return corners.flatMap(({ id, stock, legs }) => {
    const leg = legs.find(({ layout }) => layout === spot.layout);
    if (!leg) return [];
    const covered = cornerSquare(leg, Math.max(stock.width, stock.height));
    if (!touch(own, covered)) return [];
    return [{ path: placePath(spot), expected: `a place clear of "${id}"` }];
  });
}

function cornerSquare({ layout, holes }: CasePlan["corners"][number]["legs"][number], size: number): Form {
  const [first] = holes;
  const { inset } = layout;
  const isRight = (first?.u ?? 0) > layout.width / 2;
  const isTop = (first?.v ?? 0) > layout.height / 2;
  return {
    low: panelPoint(
      isRight ? layout.width + inset.right - size : -inset.left,
      isTop ? layout.height + inset.top - size : -inset.bottom,
    ),
    width: Length.si(size),
    height: Length.si(size),
    outline: { kind: "rectangle", cornerRadius: Length.si(0) },
  };
}

/** Over an opening that stays open nothing can be fastened; over a door's gap hinges and latches belong. */
function checkOpenings(spot: HardwareSpot): Fault[] {
  const own = rectangle(spot, spot.size);
  return spot.layout.panel.openings
    .filter(({ leaf }) => !leaf)
    .filter((opening) => touch(own, placeOpening(opening, spot.layout)))
    .map(({ name }) => ({ path: placePath(spot), expected: `a place clear of the opening "${name}"` }));
}

/** The cut-out must lie whole on the panel or on the leaf that its centre is on. */
function checkCutOut(spot: HardwareSpot): Fault[] {
  const { cut, surface, layout } = spot;
  if (cut.width === 0) return [];
  const hole = rectangle(spot, cut);
  const inside = formPolygon(hole).every((point) => distanceTo(surface.form, point) < -sameness);
  const doors = surface.leaf ? [] : layout.panel.openings.filter(({ leaf }) => leaf);
  const clear = doors.every((door) => !touch(hole, placeOpening(door, layout)));
  return inside && clear ? [] : [{ path: placePath(spot), expected: `its cut-out whole on ${surface.id}` }];
}

function checkOthers(spot: HardwareSpot, earlier: readonly HardwareSpot[]): Fault[] {
  return earlier
    .filter((other) => other.layout === spot.layout)
    .filter((other) => touch(rectangle(spot, spot.size), rectangle(other, other.size)))
    .map(({ id }) => ({ path: placePath(spot), expected: `a place clear of "${id}"` }));
}
