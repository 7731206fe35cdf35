/** Drawers: their slides leave them room, they end inside their section, and nothing stands in their way. */
import type { CaseBody, Drawer } from "../case.js";
import { faceAxes } from "../derive/axes.js";
import { drawerOpening, drawerPart, drawerSizes } from "../derive/drawers.js";
import { contentPart, shelfPart } from "../derive/inside.js";
import type { CasePlan } from "../derive/plan.js";
import type { Box, Point } from "../place.js";
import type { Ruler } from "../ruler.js";
import type { Stock } from "../stock.js";
import { stockNamed } from "../stock.js";
import type { Fault } from "./fault.js";

/** Measured places are rounded: this much counts as touching, m. */
const rounding = 0.003;

/** The faults of drawers whose names lead somewhere. */
export function checkDrawers(description: CaseBody, plan: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const taken = [
    ...description.contents.map((one) => ({ name: one.name, ...contentPart(one, plan.layouts) })),
    ...description.shelves.map((one) => ({
      name: one.name,
      box: shelfPart(one, stock, plan.layouts, [], []).panel.box,
    })),
  ];
  return description.drawers.flatMap((drawer, i) => {
    const sizes = checkSizes(drawer, plan, stock, ruler);
    if (sizes.length > 0) return sizes;
    const { box } = drawerPart(drawer, stock, plan.layouts);
    const before = description.drawers
      .slice(0, i)
      .filter((one) => checkSizes(one, plan, stock, ruler).length === 0)
      .map((one) => ({ name: one.name, box: drawerPart(one, stock, plan.layouts).box }));
    return [...taken, ...before]
      .filter((other) => overlap(other.box, box))
      .map(({ name }) => ({
        path: ["drawers", drawer.name, "depth"],
        expected: `a drawer that ends before "${name}"`,
      }));
  });
}

/** What the pieces of a drawer could not be cut to, and slides that say no room. */
function checkSizes(drawer: Drawer, { layouts }: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  const { name, slides, depth } = drawer;
  const opening = drawerOpening(drawer, layouts);
  const { sideRoom } = stockNamed(stock, "hardware", slides);
  if (!opening) return [];
  if (sideRoom === undefined)
    return [
      {
        path: ["drawers", name, "slides"],
        value: slides,
        expected: 'slides whose row in hardware.csv says their "side room"',
      },
    ];
  const { layout, face } = opening;
  const { width, height } = drawerSizes(drawer, opening, stock);
  const side = stockNamed(stock, "sheets", drawer.sheet).thickness;
  const floor = stockNamed(stock, "sheets", drawer.bottom ?? drawer.sheet).thickness;
  const room = layout.section.inside[faceAxes[face].normal];
  return [
    ...(width > 2 * side && height > floor
      ? []
      : [
          {
            path: ["drawers", name, "opening"],
            value: `${ruler(width)} by ${ruler(height)}`,
            expected: `an opening that leaves its box more than ${ruler(2 * side)} by ${ruler(floor)}`,
          },
        ]),
    ...(depth > 2 * side && depth <= room + rounding
      ? []
      : [
          {
            path: ["drawers", name, "depth"],
            value: ruler(depth),
            expected: `more than ${ruler(2 * side)} and at most ${ruler(room)}, the inside of its section`,
          },
        ]),
  ];
}

function overlap(one: Box, other: Box): boolean {
  const axes: readonly (keyof Point)[] = ["x", "y", "z"];
  return axes.every(
    (axis) =>
      one.low[axis] + one.size[axis] > other.low[axis] + rounding &&
      other.low[axis] + other.size[axis] > one.low[axis] + rounding,
  );
}
