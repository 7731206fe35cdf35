/** Cases of every kind stand on their feet: what pushes pushes, what tips is told, and no load case takes another with it. */
import { describe, expect, test } from "vitest";
import type { Design } from "../../../lib/design/index.js";
import { nodeMasses } from "../../../lib/fem/index.js";
import { doors } from "../../../lib/findings/stiffness/boxes.js";
import { push } from "../../../lib/findings/travel/standing.js";
import { caseSystem, joinedBodies, linkOf } from "../../../lib/model/box/case-system.js";
import { type LoadedCase, type LoadedCases, loadedCases } from "../../../lib/model/box/load-cases.js";
import { sectionStiffness } from "../../../lib/model/box/section-stiffness.js";
import { caseBox, footprint, stackedBalance, tippingArm } from "../../../lib/model/index.js";
import { pushLimits } from "../../../lib/moving/index.js";
import { Length, ratio, standardGravity } from "../../../lib/quantity/index.js";
import { type JobKind, kindOf } from "./kinds.js";

/** A coarse mesh: balance holds on any. */
const coarse = 6;

function solved(kind: JobKind): LoadedCases & { readonly design: Design } {
  const design = kindOf(kind);
  return { design, ...loadedCases(caseSystem(design, joinedBodies(design, coarse))) };
}

function named({ cases }: LoadedCases, id: string): LoadedCase {
  const found = cases.find((one) => one.id === id);
  if (!found) throw new Error(`no load case ${id}`);
  return found;
}

/** Upward forces of what a case stands on, by name. */
function standsOn({ bodies, answer }: LoadedCase): readonly number[] {
  return bodies.links.flatMap((prepared, i) => {
    const { kind, only } = linkOf(prepared);
    return (kind === "caster" || kind === "floor") && only === "push" ? [-answer.forces[i]!] : [];
  });
}

function weightOf(design: Design): number {
  return stackedBalance(design).value.mass * standardGravity;
}

/** Every one-way spring pushes or has a gap, and the floor bears the weight. */
function expectBalance(loaded: LoadedCase, weight: number): void {
  const upward = standsOn(loaded);
  expect(Math.min(...upward)).toBeGreaterThanOrEqual(-1e-6 * weight);
  expect(upward.reduce((sum, force) => sum + force, 0) / weight).toBeCloseTo(1, 6);
  loaded.bodies.links.forEach((prepared, i) => {
    const { only } = linkOf(prepared);
    const force = loaded.answer.forces[i]!;
    if (only === "push") expect(force).toBeLessThanOrEqual(1e-6 * weight);
    if (only === "pull") expect(force).toBeGreaterThanOrEqual(-1e-6 * weight);
  });
}

const box = { width: 600, depth: 400, height: 500 };
const fourWheels: readonly (readonly [number, number])[] = [
  [90, 90],
  [532, 90],
  [90, 302],
  [532, 302],
];
const battery = "{ in: base, mass: 9 kg, at: [50, 50, 0], size: [200, 150, 120], held: { by: floor } }";

const hinge = (face: string, across: number, ups: readonly number[]): string =>
  `\n  hinge:\n    item: hinge\n    duty: hinge\n    places:${ups.map((up) => `\n      - { on: base.${face}, from: bottom-left, across: ${across}, up: ${up} }`).join("")}`;
const feet = `\n  foot:\n    item: foot\n    duty: stand\n    places:${fourWheels.map(([across, up]) => `\n      - { on: base.bottom, from: bottom-left, across: ${across}, up: ${up} }`).join("")}`;
const opening = (face: string, name: string, width: number, height: number, leaf: boolean): string =>
  `      ${face}:\n        openings:\n          ${name}:\n            rectangle: { width: ${width}, height: ${height} }\n            from: bottom-left\n            across: 110\n            up: 75${leaf ? "\n            leaf: { hinge: left, clearance: 3 }" : ""}`;
const lid = opening("top", "lid", 400, 250, true);
const window = opening("front", "window", 380, 300, false);

describe.each<readonly [string, JobKind]>([
  ["a box on the floor", { sections: { base: box } }],
  ["a box on four wheels", { sections: { base: box }, casters: fourWheels }],
  [
    "a box on three wheels",
    {
      sections: { base: box },
      casters: [...fourWheels.slice(0, 2), [311, 302]],
    },
  ],
  ["a box on four feet", { sections: { base: box }, hardware: feet }],
  ["a box on six wheels", { sections: { base: box }, casters: [...fourWheels, [311, 90], [311, 302]] }],
  ["a box with a load at one side", { sections: { base: box }, contents: `  battery: ${battery}` }],
  ["a box with a window", { sections: { base: { ...box, panels: window } } }],
  [
    "a box with a lid on two hinges",
    { sections: { base: { ...box, panels: lid } }, hardware: hinge("top", 111, [130, 270]) },
  ],
  [
    "a tall thin box of many rivets",
    { sections: { base: { width: 220, depth: 220, height: 2000 } }, pitch: 14, push: 5 },
  ],
  [
    "a shallow box, nearly all of its top open",
    {
      sections: {
        base: {
          width: 1200,
          depth: 900,
          height: 170,
          panels:
            "      top:\n        openings:\n          big: { rectangle: { width: 1080, height: 780 }, from: bottom-left, across: 65, up: 65 }",
        },
      },
    },
  ],
  ["two sections", { sections: { base: box, top: { ...box, height: 300 } }, casters: fourWheels, push: 20 }],
  [
    "three sections",
    {
      sections: { base: box, middle: { ...box, height: 300 }, top: { ...box, height: 250 } },
      casters: fourWheels,
      push: 20,
    },
  ],
])("%s", (_, kind) => {
  const all = solved(kind);

  test("is answered in every load case, standing with its whole weight on what it stands on", () => {
    expect(all.unanswered).toEqual([]);
    expect(all.cases.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["stacked", "pushed.x", "pushed.right", "pushed.y", "pushed.back"]),
    );
    for (const loaded of all.cases.filter(({ id }) => /^(stacked|hole|pushed)/.test(id)))
      expectBalance(loaded, weightOf(all.design));
  });

  test("tips at the push that moments about its edge give", () => {
    const strong = solved({ ...kind, push: 5000 });
    const standing = footprint(strong.design);
    for (const [id, side] of [
      ["pushed.x", "right"],
      ["pushed.y", "back"],
    ] as const) {
      const { tips, title } = named(strong, id);
      const level = Math.max(...strong.design.parts.sections.map(({ outside: o }) => o.low.z + o.size.z));
      const lift = kind.casters ? 0.09 : kind.hardware === feet ? 0.03 : 0;
      const floor = Math.min(...strong.design.parts.sections.map(({ outside }) => outside.low.z)) - lift;
      const byStatics = pushLimits({
        mass: standing.balance.value.mass,
        halfBase: tippingArm(standing, side),
        pushHeight: Length.si(level - floor),
        friction: ratio(0),
      }).tips;
      expect(tips! / byStatics).toBeCloseTo(1, 6);
      expect(title).toMatch(/until it begins to tip$/);
      // The same as the finding says, which looks at the weakest side, askew too, and no higher than a shoulder.
      const [found] = push(strong.design);
      const told = found?.because.at(-1)?.results.find(({ name }) => name === "tips")?.number ?? 0;
      const sides = ["x", "right", "y", "back"].map((way) => named(strong, `pushed.${way}`).tips ?? Infinity);
      if (level - floor < 1.5 && kind.casters?.length !== 3)
        expect(Math.min(...sides) / told).toBeCloseTo(1, 6);
      expectBalance(named(strong, id), weightOf(strong.design));
    }
  });
});

test("joined sections are tipped by the contacts themselves at the push of statics, not by their wheels' swivel alone", () => {
  // Wheels without an offset stand where their axes are, so that both ways to find it meet.
  const strong = solved({ sections: { base: box, top: box }, casters: fourWheels, push: 5000 });
  const pushed = named(strong, "pushed.x");
  const bearing = standsOn(pushed).filter((force) => force > 1e-4 * weightOf(strong.design));
  expect(bearing).toHaveLength(2);
});

test("a symmetric case with one wheel over a hole balances on two wheels, the third just touching", () => {
  const { cases, unanswered, design } = solved({ sections: { base: box }, casters: fourWheels });
  expect(unanswered).toEqual([]);
  const [standing, ...holes] = cases.filter(({ id }) => /^(stacked|hole)/.test(id));
  const four = standsOn(standing!);
  for (const force of four) expect(force).toBeGreaterThan(0.15 * weightOf(design));
  for (const hole of holes) {
    expectBalance(hole, weightOf(design));
    expect(Math.min(...standsOn(hole))).toBeLessThan(0.1 * weightOf(design));
  }
});

describe("a case with its door or lid open", () => {
  const leafWeight = ({ system }: LoadedCase, name: string): number => {
    const part = system.model.parts.find(({ structure }) => structure.problem.name === name)!;
    return nodeMasses(part.structure).reduce((sum, one) => sum + one, 0) * standardGravity;
  };
  const gate = opening("front", "gate", 200, 200, true);
  const hung = hinge("front", 111, [125, 225]);

  test("stands with its whole weight, and its hinges bear what statics gives them", () => {
    const all = solved({ sections: { base: { ...box, panels: gate } }, hardware: hung, casters: fourWheels });
    const open = named(all, "open.base.front.gate");
    expectBalance(open, weightOf(all.design));
    const shut = named(all, "stacked");
    const weight = leafWeight(open, "base.front.gate");
    // Hinges 100 mm apart, on the gap beside a leaf of 194 mm: 97 mm to its middle, and the gap's 1 mm or 2.
    const [one, two] = open.hinges!.map(({ value }) => value);
    const arm = Math.sqrt((one! / weight) ** 2 - 0.25) * 0.1;
    expect(one).toBeCloseTo(two!, 6);
    expect(arm).toBeGreaterThan(0.0965);
    expect(arm).toBeLessThan(0.1005);
    // The front wheels bear more than they do with the door shut.
    const front = (loaded: LoadedCase) =>
      standsOn(loaded)
        .slice(0, 2)
        .reduce((sum, force) => sum + force, 0);
    expect(front(open)).toBeGreaterThan(front(shut));
  });

  test("with a lid upright has nothing to turn it by", () => {
    const all = solved({
      sections: { base: { ...box, panels: lid } },
      hardware: hinge("top", 111, [130, 270]),
      casters: fourWheels,
    });
    const open = named(all, "open.base.top.lid");
    expectBalance(open, weightOf(all.design));
    const sum = open.hinges!.reduce((whole, { value }) => whole + value, 0);
    const weight = leafWeight(open, "base.top.lid");
    expect(sum).toBeGreaterThanOrEqual(weight * (1 - 1e-9));
    expect(sum).toBeLessThan(1.1 * weight);
  });
});

test.each([
  ["a lid that its stay lets open to 120 degrees", "top", "top", 316, 120],
  ["a flap that its stay lets open to 45 degrees", "front", "bottom", 74, 45],
  ["a flap that hangs down", "front", "bottom", 74, 180],
])("%s turns the case by its weight at its true lever", (_, face, side, up, degrees) => {
  const stay = `, stay: { item: foot, count: 2, arm: 100, opens to: ${degrees} deg, pulls at: 45 deg }`;
  const panels = opening(face, "lid", 380, 240, true).replace(
    "{ hinge: left, clearance: 3",
    `{ hinge: ${side}, clearance: 3${degrees < 180 ? stay : ""}`,
  );
  const places = [200, 400].map(
    (across) => `\n      - { on: base.${face}, from: bottom-left, across: ${across}, up: ${up} }`,
  );
  const hardware = `\n  hinge:\n    item: hinge\n    duty: hinge\n    places:${places.join("")}`;
  const all = solved({ sections: { base: { ...box, panels } }, hardware, casters: fourWheels });
  const shut = named(all, "stacked");
  const open = named(all, `open.base.${face}.lid`);
  const leaf = open.system.model.parts.find(
    ({ structure }) => structure.problem.name === `base.${face}.lid`,
  )!;
  const weight = nodeMasses(leaf.structure).reduce((sum, one) => sum + one, 0) * standardGravity;
  // Moments of the wheels about the left of the case, against those with the leaf shut.
  const moment = ({ bodies, answer }: LoadedCase): number =>
    bodies.links.reduce((sum, prepared, i) => {
      const { kind, only } = linkOf(prepared);
      const [end] = prepared.ends;
      return kind === "caster" && only === "push" && end ? sum - answer.forces[i]! * end.fitting.at[1] : sum;
    }, 0);
  // The leaf reaches from 78 to 312 mm: its middle is 121 mm from its hinges, whose knuckles stand out from it.
  const [hung] = all.design.parts.hardware.filter(({ item }) => item.duty === "hinge");
  const out = face === "top" ? hung!.centre.z - leaf.at[2] : leaf.at[1] - hung!.centre.y;
  const turned = (degrees * Math.PI) / 180;
  const byHand =
    face === "top"
      ? 0.121 * (1 - Math.cos(turned)) - out * Math.sin(turned)
      : -0.121 * Math.sin(turned) - out * (1 - Math.cos(turned));
  expect(out).toBeGreaterThan(0);
  expect((moment(open) - moment(shut)) / weight).toBeCloseTo(byHand, 6);
});

test("lifted by the top of three sections, every latch that carries pulls and nothing bears", () => {
  const handles = `\n  handle:\n    item: handle\n    duty: lift\n    places:\n      - { on: top.front, from: bottom-left, across: 300, up: 180 }\n      - { on: top.back, from: bottom-left, across: 300, up: 180 }`;
  const all = solved({
    sections: { base: box, middle: { ...box, height: 300 }, top: { ...box, height: 350 } },
    hardware: handles,
    contents: `  battery: ${battery}`,
  });
  expect(all.unanswered).toEqual([]);
  const { bodies, answer } = named(all, "lifted");
  const pulls = bodies.links.flatMap((prepared, i) =>
    linkOf(prepared).only === "pull" ? [answer.forces[i]!] : [],
  );
  expect(Math.min(...pulls)).toBeGreaterThanOrEqual(0);
  bodies.links.forEach((prepared, i) => {
    if (linkOf(prepared).kind === "bearing") expect(answer.forces[i]).toBe(0);
  });
});

describe("one load case that cannot be answered", () => {
  const handles = `\n  handle:\n    item: handle\n    duty: lift\n    places:\n      - { on: base.left, from: bottom-left, across: 215, up: 250, turned: true }\n      - { on: base.right, from: bottom-left, across: 215, up: 250, turned: true }`;
  const design = kindOf({ sections: { base: box }, hardware: handles });
  const two = kindOf({ sections: { base: box, top: box }, hardware: handles });
  const latch = two.parts.hardware.filter(({ stock }) => stock.kind !== "keeper");

  test("for a latch without a keeper says so, and leaves what needs none", () => {
    const input = { ...two, parts: { ...two.parts, hardware: latch } };
    const { cases, unanswered } = loadedCases(caseSystem(input, joinedBodies(input, coarse)));
    expect(cases.map(({ id }) => id)).toEqual(["carried.base"]);
    expect(unanswered.map(({ id }) => id)).toEqual([
      "stacked",
      "pushed.x",
      "pushed.right",
      "pushed.y",
      "pushed.back",
    ]);
    for (const { why } of unanswered) expect(why).toMatch(/^box: latch 1 has no keeper on another section$/);
  });

  test("is a leaf that nothing holds, and the rest of its section is answered without it", () => {
    const gate = opening("front", "gate", 200, 200, true);
    const all = solved({
      sections: { base: { ...box, panels: gate } },
      hardware: handles,
      casters: fourWheels,
    });
    expect(all.unanswered.map(({ id }) => id)).toEqual(["shut.base.front.gate"]);
    expect(all.unanswered[0]!.why).toMatch(/^base.front.gate is loose: it slides/);
    expect(all.cases.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["stacked", "pushed.x", "pushed.back", "carried.base"]),
    );
    expectBalance(named(all, "stacked"), weightOf(all.design));
    const [door] = doors({ ...all.design, box: () => caseBox(all.design) });
    expect(door?.verdict).toBe("unknown");
    expect(door?.missing?.how).toMatch(/is loose/);
  });

  test("is a door whose hinge nothing fastens, and its section's others are answered with its weight", () => {
    const whole = kindOf({
      sections: { base: { ...box, panels: opening("front", "gate", 200, 200, true) } },
      hardware: `${handles}${hinge("front", 111, [125, 225])}`,
      casters: fourWheels,
    });
    const fastenings = whole.parts.fastenings.filter(({ holds }) => holds !== "hinge 1");
    const input = { ...whole, parts: { ...whole.parts, fastenings } };
    const all = loadedCases(caseSystem(input, joinedBodies(input, coarse)));
    expect(all.unanswered.map(({ id, why }) => [id, why])).toEqual([
      ["shut.base.front.gate", "box: hinge 1 has no fasteners that hold it"],
    ]);
    expect(all.cases.map(({ id }) => id)).toEqual(
      expect.arrayContaining(["stacked", "pushed.x", "pushed.back", "carried.base"]),
    );
    expectBalance(named(all, "stacked"), weightOf(input));
  });

  test("leaves every section by itself its stiffness", () => {
    const bodies = joinedBodies(design, coarse);
    expect(sectionStiffness(bodies, 0).racking[0]).toBeGreaterThan(0);
  });

  test("for a case that falls as it stands says that it gives way", () => {
    const { cases, unanswered } = solved({
      sections: { base: box },
      casters: [
        [90, 90],
        [200, 90],
        [90, 302],
        [200, 302],
      ],
      hardware: handles,
    });
    expect(cases.map(({ id }) => id)).toEqual(["carried.base"]);
    expect(unanswered.map(({ id, givesWay }) => [id, givesWay])).toEqual([
      ["stacked", true],
      ["pushed.x", true],
      ["pushed.right", true],
      ["pushed.y", true],
      ["pushed.back", true],
    ]);
    expect(unanswered[0]!.why).toMatch(/^the base section gives way: it turns about y/);
  });
});
