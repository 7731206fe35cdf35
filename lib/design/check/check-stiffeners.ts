/** Stiffeners: on their panel, clear of openings and of each other, with room for their fasteners. */
import { fastenerTraits } from "../../fastening/index.js";
import { Length } from "../../quantity/index.js";
import { type Box2, boundsOf, distanceTo, gapOf, type Point2, rectangle } from "../../shape/index.js";
import { type LaidStiffener, runOf } from "../derive/laid-stiffeners.js";
import { sameness, touch } from "../derive/outline.js";
import type { CasePlan } from "../derive/plan.js";
import type { CasePath } from "../read/case-text.js";
import type { Ruler } from "../ruler.js";
import { type Stock, stockNamed } from "../stock.js";
import type { Fault } from "./fault.js";

/** Every fault of the stiffeners. */
export function checkStiffeners({ stiffeners }: CasePlan, stock: Stock, ruler: Ruler): Fault[] {
  return stiffeners.flatMap((one, i) => [
    ...checkOnPanel(one, ruler),
    ...checkOpenings(one),
    ...checkOthers(one, stiffeners.slice(0, i)),
    ...checkRoom(one, ruler),
    ...checkFastener(one, stock),
  ]);
}

function pathOf({ stiffener: { name } }: LaidStiffener): CasePath {
  return ["stiffeners", name];
}

/** Outside anywhere on its piece; inside a panel within the clear span, where the neighbours end. */
function checkOnPanel(one: LaidStiffener, ruler: Ruler): Fault[] {
  const { on, stiffener, zones } = one;
  const inside = stiffener.side === "inside";
  const room = inside ? on.clear : boundsOf(on.outline);
  const over = (zone: Box2): readonly (readonly [string, number])[] => [
    ["left", room.left - zone.left],
    ["right", zone.left + zone.width - room.left - room.width],
    ["bottom", room.bottom - zone.bottom],
    ["top", zone.bottom + zone.height - room.bottom - room.height],
  ];
  const past = zones.flatMap(over).filter(([, distance]) => distance > sameness);
  const [worst] = [...past].sort((a, b) => b[1] - a[1]);
  if (worst) {
    const where = inside && on.face ? `the inside of ${on.id}` : on.id;
    const expected = `a stiffener on ${where}, this one reaches ${ruler(worst[1])} past its ${worst[0]} side`;
    return [{ path: pathOf(one), expected }];
  }
  const off = zones.flatMap(cornersOfBox).filter((corner) => distanceTo(on.outline, corner) > sameness);
  return off.length > 0
    ? [{ path: pathOf(one), expected: `a stiffener whole on ${on.id}, as it is cut` }]
    : [];
}

function cornersOfBox({ left, bottom, width, height }: Box2): readonly Point2[] {
  const [right, top] = [left + width, bottom + height];
  return [left, right].flatMap((x) => [bottom, top].map((y) => ({ x, y })));
}

/** It may touch the opening that it frames, and no other. */
function checkOpenings(one: LaidStiffener): Fault[] {
  const { on, zones, stiffener } = one;
  return on.openings
    .filter(({ name }) => name !== stiffener.round)
    .filter(({ outline }) => zones.some((zone) => touch(rectangle(zone), outline)))
    .map(({ name }) => ({ path: pathOf(one), expected: `a place clear of the opening "${name}"` }));
}

/** Two on one side of a panel may touch, as the members of a frame do, but not lie on each other. */
function checkOthers(one: LaidStiffener, earlier: readonly LaidStiffener[]): Fault[] {
  return earlier
    .filter((other) => other.on.id === one.on.id)
    .filter((other) => one.zones.some((zone) => other.zones.some((theirs) => overlap(zone, theirs))))
    .map(({ stiffener: { name } }) => ({
      path: pathOf(one),
      expected: `a place that "${name}" does not take up, on either side of the panel`,
    }));
}

function overlap(one: Box2, other: Box2): boolean {
  return gapOf(rectangle(shrunk(one)), rectangle(shrunk(other))) <= 0;
}

function shrunk({ left, bottom, width, height }: Box2): Box2 {
  const off = 2 * sameness;
  return { left: left + off, bottom: bottom + off, width: width - 2 * off, height: height - 2 * off };
}

function checkRoom(one: LaidStiffener, ruler: Ruler): Fault[] {
  const { zones, stiffener } = one;
  const { endDistance, fastener } = stiffener;
  if (fastener === undefined || endDistance === undefined) return [];
  const shortest = Math.min(...zones.map(runOf));
  if (shortest > 2 * endDistance) return [];
  const expected = `an end distance that leaves room for fasteners on the ${ruler(Length.si(shortest))} of a piece`;
  return [{ path: [...pathOf(one), "end distance"], expected }];
}

function checkFastener(one: LaidStiffener, stock: Stock): Fault[] {
  const { fastener } = one.stiffener;
  if (fastener === undefined || !fastenerTraits[stockNamed(stock, "fasteners", fastener).kind].hasInsert)
    return [];
  return [
    {
      path: [...pathOf(one), "fastener"],
      expected: 'no insert here: inserts hold hardware, and contents "by: screws"',
    },
  ];
}
