/** Six sections of unlike plan on each other: sizes, masses, latches, tipping, the whole review and the recipe. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { latches } from "../../lib/findings/joints/handles.js";
import { wind } from "../../lib/findings/travel/standing.js";
import { footprint, stackedBalance } from "../../lib/model/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf, smallJob } from "../design/small-job.js";
import { recipeInput } from "../recipe/recipes.js";

/** From the ground up: inside width, depth and height, mm. */
const plan = [
  ["plinth", 700, 500, 200],
  ["bass", 700, 500, 300],
  ["middle", 600, 500, 250],
  ["treble", 600, 400, 250],
  ["lights", 500, 400, 200],
  ["crown", 400, 300, 150],
] as const;

const latchesOn = plan.slice(1).map(([name]) => name);
const keepersOn = plan.slice(0, -1).map(([name]) => name);
const sides = ["left", "right"];

/** Latches near the bottom of each upper section, keepers near the top of what it stands on. */
function places(sections: readonly string[], from: string): string {
  return sections
    .flatMap((name) => sides.map((side) => `{ on: ${name}.${side}, from: ${from}, across: 120, up: 60 }`))
    .join(", ");
}

const sections = plan
  .map(
    ([name, width, depth, height]) =>
      `  ${name}: { inside: { width: ${width}, depth: ${depth}, height: ${height} } }`,
  )
  .join("\n");

const texts = {
  ...plainTrunk,
  "case.yaml": (plainTrunk["case.yaml"] ?? "").replace(/ {2}trunk: .*/, sections).concat(
    `hardware:
  latch: { item: latch, duty: join-sections, places: [${places(latchesOn, "bottom-left")}] }
  keeper: { item: keeper, duty: join-sections, places: [${places(keepersOn, "top-left")}] }
  handle: { item: handle, duty: lift, places: [{ on: crown.left, from: bottom-left, across: 225, up: 75 }, { on: crown.right, from: bottom-left, across: 225, up: 75 }] }
`,
  ),
  "fasteners.csv": smallJob["fasteners.csv"] ?? "",
  "hardware.csv": `${(smallJob["hardware.csv"] ?? "").split("\n").slice(0, 1).join("")}
latch,latch,200,6,counter,60,80,1,0,0,0,rivet 4,4,2,2,40,50,900
keeper,keeper,60,2,counter,60,40,1,0,0,0,rivet 4,4,2,2,40,20,900
handle,handle,400,9,counter,120,90,1,0,0,0,rivet 4,4,2,2,90,60,600`,
};

const design = designOf(texts);

/** A box of 12 mm ply of 520 kg/m3: top and bottom run through, then front and back. */
function emptyKg(width: number, depth: number, height: number): number {
  const [w, d, h] = [width, depth, height].map((size) => size / 1000) as [number, number, number];
  return 2 * ((w + 0.024) * (d + 0.024) + (w + 0.024) * h + d * h) * 0.012 * 520;
}

describe("six sections of unlike plan", () => {
  test("stand on each other from the ground up, each as large as by hand", () => {
    let height = 0;
    for (const [i, [, width, depth, inside]] of plan.entries()) {
      const { low, size } = design.parts.sections[i]?.outside ?? {
        low: { z: -1 },
        size: { x: 0, y: 0, z: 0 },
      };
      expect([size.x, size.y, size.z].map((length) => Math.round(1000 * length))).toEqual([
        width + 24,
        depth + 24,
        inside + 24,
      ]);
      expect(low.z).toBeCloseTo(height, 9);
      height += (inside + 24) / 1000;
    }
  });

  test("weigh as by hand", () => {
    const boxes = plan.reduce((sum, [, width, depth, height]) => sum + emptyKg(width, depth, height), 0);
    // Ten latches, ten keepers, two handles, each with four rivets of 2 g, and 1 g of washer or none.
    const iron = 10 * 0.2 + 10 * 0.06 + 2 * 0.4 + 22 * 4 * 0.002;
    expect(stackedBalance(design).value.mass).toBeCloseTo(boxes + iron, 6);
  });

  test("tip over the plan of the lowest, whatever stands above it", () => {
    const { baseWidth, baseDepth } = footprint(design);
    expect([baseWidth, baseDepth].map((length) => Math.round(1000 * length))).toEqual([724, 524]);
  });

  test("hang on the latches of the highest joint: all but the crown, twice for a jerk, on two", () => {
    const below = plan
      .slice(0, -1)
      .reduce((sum, [, width, depth, height]) => sum + emptyKg(width, depth, height), 0);
    const iron = 8 * 0.2 + 10 * 0.06 + 18 * 4 * 0.002;
    const told = latches(design).find(({ id }) => id === "joints.latches.latch");
    expect(told?.demand?.meaning).toBe("on one latch");
    expect(told?.answer).toContain("Each of 2 must take");
    expect(told?.demand?.show({ unit: "N", digits: 4 })).toBe(
      `${(((below + iron) * 9.80665 * 2) / 2).toPrecision(4)} N`,
    );
  });

  test("show to the wind what each of them is wide, not what the lowest is", () => {
    const journey =
      "journey: { people: 2, lift from: 500, lift to: 750, reach: 350, lifts per minute: 0.2, lifting time: 20 min, grip: good, vehicle: van, floor: even, gust: 40 km/h }\n";
    const outdoors = designOf({ ...texts, "case.yaml": `${texts["case.yaml"]}${journey}` });
    const told = wind(outdoors)[0];
    // Front and back: the sum of each width times its height, at 40 km/h with 1.3 x 0.6 x v squared.
    const area = plan.reduce((sum, [, width, , height]) => sum + ((width + 24) * (height + 24)) / 1e6, 0);
    const push = 1.3 * 0.6 * (40 / 3.6) ** 2 * area;
    expect(told?.answer).toContain(`pushes its worst side with ${push.toPrecision(3)} N`);
  });

  test("are reviewed and written whole", () => {
    expect(
      reviewCase(design)
        .findings.filter(({ verdict }) => verdict === "broken")
        .map(({ id, error }) => [id, error]),
    ).toEqual([]);
    expect(() => writeRecipe(recipeInput(design))).not.toThrow();
  }, 600_000);
});
