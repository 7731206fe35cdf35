/** What is not there is not asked about: a trunk that nobody moves, one person, one section, no services. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { boxForces } from "../../lib/findings/joints/box-forces.js";
import { statesOfMass } from "../../lib/model/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { Refusal } from "../../lib/refusal.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf, problemsOf, rolling, smallJob, spoilt } from "../design/small-job.js";
import { recipeInput } from "../recipe/recipes.js";

const ids = (findings: readonly Finding[]): string[] => findings.map(({ id }) => id);

function reviewed(texts: Readonly<Record<string, string>>): readonly Finding[] {
  const review = reviewCase(designOf(texts));
  return [...review.travel, ...review.fitOut, ...review.money];
}

const told = (findings: readonly Finding[]): string =>
  findings.map(({ question, answer, cautions }) => [question, answer, ...cautions].join(" ")).join("\n");

describe("a plain trunk: no journey, services, business, hardware, laminate or extrusion", () => {
  const design = designOf(plainTrunk);
  const review = reviewCase(design);

  test("asks for no table but that of its sheet, and for that one", () => {
    expect(problemsOf(plainTrunk)).toEqual([]);
    const { "sheet-stock.csv": _, ...without } = plainTrunk;
    expect(problemsOf(without)).toContainEqual({
      file: "sheet-stock.csv",
      expected: "this file beside case.yaml",
    });
  });

  test("is asked how stiff and strong it is and how it stands, and nothing else", () => {
    const others = review.findings.filter(({ id }) => !/^(stiffness|strength|assembly)\./.test(id));
    expect(ids(others).sort()).toEqual(["travel.push", "travel.tip"]);
    expect(review.findings.filter(({ verdict }) => verdict === "broken")).toEqual([]);
  });

  test("is warned of nothing that it has not, but of doors once it has one", () => {
    const cautions = (texts: Readonly<Record<string, string>>) =>
      reviewed(texts)
        .find(({ id }) => id === "travel.tip")
        ?.cautions.join() ?? "";
    expect(cautions(plainTrunk)).toContain("Try the real case by lifting one side");
    expect(cautions(plainTrunk)).not.toMatch(/door|drawer|caster/);
    expect(cautions(smallJob)).toContain("Keep doors shut when it stands alone. Try");
    expect(cautions(smallJob)).not.toContain("drawer");
  });

  test("is told where to stand on it, and nothing of casters or a stack that it has not", () => {
    const person = review.findings.find(({ id }) => id.startsWith("strength.person."));
    expect(person?.cautions).toEqual(["Who stands on the case keeps to its middle: near an edge it tips."]);
    const onCasters = reviewCase(designOf(rolling(smallJob))).findings;
    expect(onCasters.find(({ id }) => id.startsWith("strength.person."))?.cautions).toEqual([
      "Nobody stands on the case while it is on casters: it rolls or tips long before it breaks.",
    ]);
  });

  test("weighs and tips as by hand", () => {
    // Top and bottom 924 x 474, front and back 924 x 500, left and right 450 x 500, 12 mm of 520 kg/m3.
    const area = 2 * (0.924 * 0.474 + 0.924 * 0.5 + 0.45 * 0.5);
    const [state] = statesOfMass(design);
    expect(state?.balance.value.mass).toBeCloseTo(area * 0.012 * 520, 9);
    // It balances in its middle, 262 mm up, half of 474 mm from its front edge.
    const tip = review.travel.find(({ id }) => id === "travel.tip");
    const degrees = (Math.atan2(0.237, 0.262) * 180) / Math.PI;
    expect(10 / (tip?.ratio ?? 0)).toBeCloseTo(degrees, 6);
  });

  test("is not called a stack, and its recipe is written whole", () => {
    expect(told(review.travel)).not.toMatch(/stacked|caster|Brake|the sections/);
    expect(() => writeRecipe(recipeInput(design))).not.toThrow();
  });

  test("does not say what it earns", () => {
    expect(() => review.business).toThrow("the case file does not say what the case is to earn");
    expect(review.money).toEqual([]);
  });
});

test("nobody rolls a case without casters, and everybody one with", () => {
  const rollers = /^travel\.(roll|start|threshold|gap|ramp|ramp-down|brakes|floor|casters)$/;
  expect(ids(reviewed(smallJob)).filter((id) => rollers.test(id))).toEqual([]);
  expect(ids(reviewed(rolling(smallJob))).filter((id) => rollers.test(id))).toHaveLength(9);
});

describe("one person", () => {
  const alone = reviewed(rolling(spoilt("case.yaml", "people: 2", "people: 1")));

  test("is asked nothing of pairs or teams", () => {
    expect(ids(alone).filter((id) => id.startsWith("travel.team"))).toEqual([]);
    expect(told(alone)).not.toMatch(/1 people|two people (?:start|push|hold)|at an end|2 hands/);
    expect(alone.find(({ id }) => id === "travel.start")?.question).toBe(
      "Can one person start the case rolling?",
    );
  });

  test("takes any two handholds", () => {
    const hands = alone.find(({ id }) => id === "travel.hands.box");
    // One handle in the middle of the right side, one in the middle of the back: 300 mm and more apart.
    expect(hands?.question).toBe("Does whoever lifts box get both hands on a handle?");
    expect(hands?.verdict).not.toBe("unknown");
  });
});

test("a metric case is told nothing in inches, pounds or miles, and writes no such example", () => {
  const open = reviewed(rolling(smallJob));
  const words = [told(open), ...open.map(({ missing }) => missing?.how ?? "")].join("\n");
  expect(words).not.toMatch(/\d ?(in|in2|lb|lbf|mph|ft|psi|oz)\b/);
  expect(words).toContain("gust: 40 km/h");
});

test("no caution speaks of miles, nor of a battery or a platform that a case has not", () => {
  const cautionsOf = (texts: Readonly<Record<string, string>>): string =>
    reviewCase(designOf(texts))
      .findings.flatMap(({ cautions }) => cautions)
      .join("\n");
  const fed = `${smallJob["case.yaml"]}services: { battery: { capacity: 50 Ah, voltage: 12 V, usable: 80 %, must last: 5 h } }\n`;
  expect(cautionsOf(smallJob)).toContain("tighten them again at the first stop");
  expect(cautionsOf(smallJob)).not.toMatch(/\bmiles\b|battery|platform/);
  expect(cautionsOf({ ...smallJob, "case.yaml": fed })).toContain("the case of a battery");
});

test("a child is not asked of a flap that no foot finds room on", () => {
  const wide = ids(reviewed(smallJob)).filter((id) => id.startsWith("travel.child"));
  expect(wide).toEqual(["travel.child.box.left.door"]);
  const narrow = spoilt(
    "case.yaml",
    "rectangle: { width: 150, height: 200 }",
    "rectangle: { width: 60, height: 200 }",
  );
  expect(ids(reviewed(narrow)).filter((id) => id.startsWith("travel.child"))).toEqual([]);
});

test("power is asked of the source that the services name", () => {
  const powered = (services: string) =>
    ids(
      reviewed({
        ...spoilt("case.yaml", "mass: 4 kg,", "mass: 4 kg, power: 20 W,"),
        "case.yaml": `${spoilt("case.yaml", "mass: 4 kg,", "mass: 4 kg, power: 20 W,")["case.yaml"]}${services}`,
      }),
    ).filter((id) => id.startsWith("fit-out.power"));
  const battery = "{ capacity: 50 Ah, voltage: 12 V, usable: 80 %, must last: 5 h }";
  expect(powered("")).toEqual([]);
  const fed = powered(`services: { battery: ${battery} }\n`);
  expect(fed).toContain("fit-out.power.battery");
  expect(fed.filter((id) => /circuit|cable|strip|sockets|inrush/.test(id))).toEqual([]);
  expect(powered("services: { hottest: 30 °C }\n")).toEqual(
    expect.arrayContaining(["fit-out.power.battery", "fit-out.power.circuit", "fit-out.power.strip"]),
  );
});

test("the whole job that data/README.md shows is this trunk", () => {
  const page = readFileSync(new URL("../../data/README.md", import.meta.url), "utf8");
  expect(page).toContain(`\`\`\`yaml\n${plainTrunk["case.yaml"]}\`\`\``);
});

test("what handles share is asked of two and more; one by itself is asked whether it holds all", () => {
  const second = "\n      - { on: box.back, from: bottom-left, across: 311, up: 250, turned: true }";
  const asked = (texts: Readonly<Record<string, string>>): readonly string[] =>
    ids(
      boxForces({
        ...designOf(texts),
        box: () => {
          throw new Refusal("no box here");
        },
      }),
    );
  expect(asked(spoilt("case.yaml", second, ""))).toEqual([]);
  expect(asked(smallJob)).toEqual(["joints.box.handle"]);
});

test("a question about what rides inside reads well of one thing and of several", () => {
  const several = spoilt("case.yaml", "  meter: {", "  puppets: {");
  const asked = reviewed(several).filter(({ subject }) => subject === "puppets");
  expect(asked.map(({ question }) => question)).toContain("Will the puppets stay put when the van brakes?");
  for (const { question } of asked) expect(question).not.toMatch(/\b(Does|Is|Has) the puppets\b/);
});

test.each([
  ["a case on its floor", smallJob, /caster|brake it|braked/],
  ["a plain trunk", plainTrunk, /caster|brake it|braked|rivet|latch/],
])("no caution of %s speaks of metal that it has not", (_, texts, stranger) => {
  const findings = reviewCase(designOf(texts)).findings.filter(({ id }) => !id.startsWith("assembly."));
  for (const { id, cautions } of findings) expect(`${id}: ${cautions.join(" ")}`).not.toMatch(stranger);
});
