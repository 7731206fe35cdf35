/** A lid in a top with its stays, by hand; a lid that nothing holds; a flap that drops down. */
import { describe, expect, test } from "vitest";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf, problemsOf, smallJob } from "../design/small-job.js";
import { recipeInput } from "../recipe/recipes.js";

type Texts = Readonly<Record<string, string>>;

const stay = ", stay: { item: lid stay, count: 2, arm: 250, opens to: 100 deg, pulls at: 45 deg }";

/** The plain trunk with a lid over most of its top, hinged at the back. */
function trunk(hold = stay, face = "top", hinge = "top"): Record<string, string> {
  const [up, height] = face === "top" ? [47, 380] : [60, 380];
  const leaf = `leaf: { hinge: ${hinge}, clearance: 3${hold} }`;
  const lid = `lid: { rectangle: { width: 800, height: ${height} }, from: bottom-left, across: 62, up: ${up}, ${leaf} }`;
  const head = (smallJob["hardware.csv"] ?? "").split("\n")[0];
  return {
    ...plainTrunk,
    "case.yaml": (plainTrunk["case.yaml"] ?? "").replace(
      "height: 500 } }",
      `height: 500 }, panels: { ${face}: { openings: { ${lid} } } } }`,
    ),
    "fasteners.csv": smallJob["fasteners.csv"] ?? "",
    "hardware.csv": `${head}\nlid stay,stay,0.001,6,counter,200,15,1,0,0,0,screw,2,2,1,150,0,120`,
  };
}

function find(texts: Texts, id: string): Finding | undefined {
  const { joints, travel } = reviewCase(designOf(texts));
  return [...joints, ...travel].find((one) => one.id === id);
}

const lidKg = 0.794 * 0.374 * 0.012 * 520;
const open = (100 * Math.PI) / 180;

describe("a lid on two stays", () => {
  test("pulls on them by its weight and a hand's push, as by hand", () => {
    const moment = lidKg * 9.80665 * 0.187 * Math.abs(Math.cos(open)) + 50 * 0.374;
    const force = moment / (2 * 0.25 * Math.sin(Math.PI / 4));
    expect(find(trunk(), "joints.stay.trunk.top.lid")?.ratio).toBeCloseTo(force / 120, 6);
  });

  test("leans the case to its back when it is open, as by hand", () => {
    const [density, whole] = [0.012 * 520, 2 * (0.924 * 0.474 + 0.924 * 0.5 + 0.45 * 0.5)];
    const gap = (0.8 * 0.38 - 0.794 * 0.374) * density;
    const mass = whole * density - gap;
    const up = (whole * density * 0.262 - gap * 0.518 + lidKg * 0.187 * Math.sin(open)) / mass;
    const back = 0.237 + (lidKg * 0.187 * (1 - Math.cos(open))) / mass;
    const degrees = (Math.atan2(0.474 - back, up) * 180) / Math.PI;
    const told = find(trunk(), "travel.lid.trunk.top.lid");
    expect(10 / (told?.ratio ?? 0)).toBeCloseTo(degrees, 1);
    expect(told?.answer).toContain("tips to the back");
  });

  test("warns of the hand that it could catch", () => {
    expect(find(trunk(), "joints.stay.trunk.top.lid")?.cautions.join()).toContain("fingers");
  });

  test("has its stays bought and fastened to panel and lid, and breaks nothing", () => {
    const design = designOf(trunk());
    const review = reviewCase(design);
    expect(review.purchases.hardware.map(({ stock, count }) => [stock.name, count])).toEqual([
      ["lid stay", 2],
    ]);
    const groups = design.parts.fastenings.map(({ holds, panel, count }) => [holds, panel, count]);
    expect(groups).toContainEqual(["stay 1 of trunk.top.lid", "trunk.top", 1]);
    expect(groups).toContainEqual(["stay 2 of trunk.top.lid", "trunk.top.lid", 1]);
    expect(review.findings.filter(({ verdict }) => verdict === "broken")).toEqual([]);
    expect(() => writeRecipe(recipeInput(design))).not.toThrow();
  }, 600_000);
});

test("a lid without a stay is held by nothing", () => {
  expect(find(trunk(""), "joints.stay.trunk.top.lid")).toMatchObject({ verdict: "fails" });
});

test("a flap that drops down pulls with its whole weight, and no lid is asked of it", () => {
  const level = ", stay: { item: lid stay, arm: 250, opens to: 90 deg, pulls at: 45 deg }";
  const texts = trunk(level, "front", "bottom");
  const moment = lidKg * 9.80665 * 0.187 + 50 * 0.374;
  expect(find(texts, "joints.stay.trunk.front.lid")?.ratio).toBeCloseTo(
    moment / (0.25 * Math.sin(Math.PI / 4)) / 120,
    6,
  );
  expect(find(texts, "travel.lid.trunk.front.lid")).toBeUndefined();
  expect(find(trunk("", "front", "bottom"), "joints.stay.trunk.front.lid")).toBeUndefined();
});

test("a stay that nobody sells is a problem at its line", () => {
  expect(problemsOf(trunk(stay.replace("lid stay", "gas strut")))).toMatchObject([
    { column: "sections.trunk.panels.top.openings.lid.leaf.stay.item", value: "gas strut" },
  ]);
});
