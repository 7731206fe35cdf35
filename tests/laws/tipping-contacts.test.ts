/** The push at which the joined boxes begin to tip is that of statics, found by their contacts alone, wheels at their worst swivel. */
import { expect, test } from "vitest";
import type { Design } from "../../lib/design/index.js";
import { openJob } from "../../lib/job/index.js";
import { caseSystem, joinedBodies, linkOf } from "../../lib/model/box/case-system.js";
import { loadedCases } from "../../lib/model/box/load-cases.js";
import { footprint, tippingArm } from "../../lib/model/index.js";
import { pushLimits, type TipWay } from "../../lib/moving/index.js";
import { Force, Length, ratio, standardGravity } from "../../lib/quantity/index.js";
import { kindOf } from "../model/box/kinds.js";

const box = { width: 600, depth: 400, height: 500 };
const wheels: readonly (readonly [number, number])[] = [
  [90, 90],
  [532, 90],
  [90, 302],
  [532, 302],
];
const battery =
  "  battery: { in: base, mass: 19 kg, at: [50, 50, 0], size: [200, 150, 120], held: { by: floor } }";
const door =
  "      front:\n        openings:\n          gate:\n            rectangle: { width: 200, height: 200 }\n            from: bottom-left\n            across: 110\n            up: 75\n            leaf: { hinge: left, clearance: 3 }";
const hinges =
  "\n  hinge:\n    item: hinge\n    duty: hinge\n    places:\n      - { on: base.front, from: bottom-left, across: 111, up: 125 }\n      - { on: base.front, from: bottom-left, across: 111, up: 225 }";
const feet = `\n  foot:\n    item: foot\n    duty: stand\n    places:${wheels.map(([across, up]) => `\n      - { on: base.bottom, from: bottom-left, across: ${across}, up: ${up} }`).join("")}`;

const ways: readonly (readonly [string, TipWay])[] = [
  ["pushed.x", "right"],
  ["pushed.right", "left"],
  ["pushed.y", "back"],
  ["pushed.back", "front"],
];

/** A case with a push that tips it every way. */
function pushedHard(design: Design): Design {
  return {
    ...design,
    case: { ...design.case, demands: { ...design.case.demands, push: Force.si(20_000) } },
  };
}

/** A coarse mesh: balance holds on any. */
const coarse = 6;

test.each<readonly [string, () => Design]>([
  ["four wheels", () => kindOf({ sections: { base: box }, casters: wheels, offset: 35 })],
  [
    "a load at one side",
    () => kindOf({ sections: { base: box }, casters: wheels, offset: 35, contents: battery }),
  ],
  [
    "three wheels, whose edges lie askew",
    () =>
      kindOf({
        sections: { base: box },
        casters: [...wheels.slice(0, 2), [311, 302]],
        offset: 20,
        contents: battery,
      }),
  ],
  [
    "six wheels",
    () => kindOf({ sections: { base: box }, casters: [...wheels, [311, 90], [311, 302]], offset: 25 }),
  ],
  [
    "three sections",
    () =>
      kindOf({
        sections: { base: box, middle: { ...box, height: 300 }, top: { ...box, height: 250 } },
        casters: wheels,
        offset: 35,
      }),
  ],
  [
    "a door on hinges, which nothing holds shut",
    () =>
      kindOf({ sections: { base: { ...box, panels: door } }, casters: wheels, offset: 30, hardware: hinges }),
  ],
  ["feet", () => kindOf({ sections: { base: box }, hardware: feet, contents: battery })],
  ["no feet at all", () => kindOf({ sections: { base: box }, contents: battery })],
  ["the demo", () => openJob("soil-lab")],
])(
  "%s",
  (_, make) => {
    const design = pushedHard(make());
    const standing = footprint(design);
    const { mass, z } = standing.balance.value;
    const top = Math.max(...design.parts.sections.map(({ outside: { low, size } }) => low.z + size.z));
    const { cases } = loadedCases(caseSystem(design, joinedBodies(design, coarse)));
    for (const [id, side] of ways) {
      const pushed = cases.find((one) => one.id === id);
      const { tips } = pushLimits({
        mass,
        halfBase: tippingArm(standing, side),
        pushHeight: Length.si(top + standing.height - z),
        friction: ratio(0),
      });
      expect((pushed?.tips ?? Number.NaN) / tips).toBeCloseTo(1, 6);
      // Nothing but what lies on one line bears any more.
      const bearing = (pushed?.bodies.links ?? []).flatMap((prepared, i) => {
        const { kind, only } = linkOf(prepared);
        const force = -(pushed?.answer.forces[i] ?? Number.NaN);
        const [end] = prepared.ends;
        return (kind === "caster" || kind === "floor") &&
          only === "push" &&
          end &&
          force > 1e-6 * mass * standardGravity
          ? [end.fitting.at]
          : [];
      });
      const [one, ...others] = bearing;
      const last = others.at(-1) ?? one;
      for (const each of others) {
        const across =
          (last![0] - one![0]) * (each[1] - one![1]) - (last![1] - one![1]) * (each[0] - one![0]);
        expect(Math.abs(across)).toBeLessThan(1e-9);
      }
    }
  },
  600_000,
);
