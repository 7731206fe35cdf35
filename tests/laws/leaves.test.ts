/** More than one leaf in an opening: a pair of doors and a door in two halves, by hand. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { massItems } from "../../lib/model/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf, problemsOf, smallJob } from "../design/small-job.js";
import { recipeInput } from "../recipe/recipes.js";

type Texts = Readonly<Record<string, string>>;

const [head, , , hinge] = (smallJob["hardware.csv"] ?? "").split("\n");
const pair = "left door: { hinge: left, clearance: 3 }, right door: { hinge: right, clearance: 3 }";
const halves = "lower: { hinge: left, clearance: 3 }, upper: { hinge: left, clearance: 3 }";

function places(spots: readonly (readonly [number, number])[]): string {
  return spots.map(([x, y]) => `{ on: trunk.front, from: bottom-left, across: ${x}, up: ${y} }`).join(", ");
}

/** Hinges over the outer gaps, a latch over the gap in the middle, and bolts at the top and bottom of the right door. */
const metal = `hardware:
  hinge: { item: hinge, duty: hinge, places: [${places([
    [63.5, 120],
    [63.5, 380],
    [860.5, 120],
    [860.5, 380],
  ])}] }
  catch: { item: catch, duty: close, places: [${places([[462, 250]])}] }
  bolt: { item: bolt, duty: close, places: [${places([
    [520, 415],
    [520, 85],
  ])}] }
`;

/** The plain trunk with an opening of 800 by 380 mm in its front, shared by leaves with a gap of 4 mm. */
function trunk(each = pair, runs = "across", hardware = metal): Texts {
  const doors = `{ rectangle: { width: 800, height: 380 }, from: bottom-left, across: 62, up: 60, leaves: { runs: ${runs}, gap: 4, each: { ${each} } } }`;
  return {
    ...plainTrunk,
    "case.yaml": `${(plainTrunk["case.yaml"] ?? "").replace(
      "height: 500 } }",
      `height: 500 }, panels: { front: { openings: { doors: ${doors} } } } }`,
    )}${hardware}`,
    "fasteners.csv": smallJob["fasteners.csv"] ?? "",
    "hardware.csv": `${head}\n${hinge}
catch,latch,50,3,counter,60,30,2,0,0,0,screw,4,2,2,24,16,200
bolt,latch,50,3,counter,40,30,2,0,0,0,screw,2,2,1,20,0,200`,
  };
}

function leaves(texts: Texts): readonly (readonly (string | number)[])[] {
  const { parts } = designOf(texts);
  const round = (size: number): number => Number((1000 * size).toFixed(3));
  return parts.panels.flatMap(({ id, width, height, leaf }) =>
    leaf ? [[id, round(width), round(height), round(leaf.low.x), round(leaf.low.y)]] : [],
  );
}

describe("leaves that share an opening", () => {
  test("are as wide as by hand, side by side", () => {
    // 800 less the gap of 4 is 398 for each; 3 off at the panel; the second begins 62 + 398 + 4.
    expect(leaves(trunk())).toEqual([
      ["trunk.front.doors.left door", 395, 374, 65, 63],
      ["trunk.front.doors.right door", 395, 374, 464, 63],
    ]);
  });

  test("are as high as by hand, one above the other", () => {
    // 380 less 4 is 188 for each.
    expect(leaves(trunk(halves, "up", ""))).toEqual([
      ["trunk.front.doors.lower", 794, 185, 65, 63],
      ["trunk.front.doors.upper", 794, 185, 65, 252],
    ]);
  });

  test("take their shares, each with its own clearance, and one in the middle has none beside it", () => {
    // 800 less two gaps is 792: 198, 396 and 198.
    const three =
      "a: { hinge: left, clearance: 3 }, b: { share: 2, hinge: top, clearance: 5 }, c: { hinge: right, clearance: 2 }";
    expect(leaves(trunk(three, "across", ""))).toEqual([
      ["trunk.front.doors.a", 195, 374, 65, 63],
      ["trunk.front.doors.b", 396, 370, 264, 65],
      ["trunk.front.doors.c", 196, 376, 664, 62],
    ]);
  });

  test("weigh as by hand, and are cut from the sheet of their panel", () => {
    const design = designOf(trunk());
    const mine = massItems(design).filter(({ group, name }) => group === "panels" && name.endsWith(" door"));
    const kg = 0.395 * 0.374 * 0.012 * 520;
    expect(mine.map(({ mass }) => mass)).toEqual([expect.closeTo(kg, 9), expect.closeTo(kg, 9)]);
    // The middles of the two lie as far from the middle of the opening, 462 mm from the left.
    expect(mine.reduce((sum, { centre }) => sum + centre.x, 0) / 2).toBeCloseTo(0.462, 9);
  });

  test("have hinges of their own and a latch over the gap between them", () => {
    const groups = designOf(trunk()).parts.fastenings.map(({ holds, panel }) => [holds, panel]);
    const [left, right] = ["trunk.front.doors.left door", "trunk.front.doors.right door"];
    for (const [holds, panel] of [
      ["hinge 1", left],
      ["hinge 3", right],
      ["catch 1", left],
      ["catch 1", right],
      ["bolt 1", right],
    ])
      expect(groups).toContainEqual([holds, panel]);
  });

  test("are asked each by itself, with nothing broken, and told whole by the recipe", () => {
    const design = designOf(trunk());
    const review = reviewCase(design);
    expect(review.findings.filter(({ verdict }) => verdict === "broken")).toEqual([]);
    const ids = review.findings.map(({ id }) => id);
    for (const door of ["left door", "right door"]) {
      expect(ids).toContain(`stiffness.door.trunk.front.doors.${door}`);
      expect(ids).toContain(`strength.panel.trunk.front.doors.${door}`);
      expect(
        review.findings.filter(({ subject, verdict }) => subject.includes(door) && verdict === "unknown"),
      ).toEqual([]);
    }
    const recipe = JSON.stringify(writeRecipe(recipeInput(design)));
    expect(recipe).toMatch(/3\smm to the panel and 4\smm at the right to the next leaf/);
  }, 600_000);

  test("of a pair that is mirrored lie mirrored", () => {
    const small =
      "left door: { hinge: left, clearance: 3 }, right door: { share: 2, hinge: right, clearance: 5 }";
    const large =
      "left door: { share: 2, hinge: left, clearance: 5 }, right door: { hinge: right, clearance: 3 }";
    const [there, here] = [small, large].map((each) => leaves(trunk(each, "across", "")));
    // The front is 924 mm wide, and the opening in its middle.
    const mirrored = (here ?? []).map(([, w = 0, h, x = 0, y]) => [
      w,
      h,
      Number((924 - Number(x) - Number(w)).toFixed(3)),
      y,
    ]);
    expect(mirrored.toReversed()).toEqual((there ?? []).map(([, ...place]) => place));
  });

  test("answer alike on both sides of a pair that is its own mirror image", () => {
    const mirrored = metal.replace(
      places([
        [520, 415],
        [520, 85],
      ]),
      places([
        [404, 415],
        [404, 85],
      ]),
    );
    const lost = (texts: Texts, door: string) =>
      reviewCase(designOf(texts)).findings.find(({ id }) => id === `stiffness.door.trunk.front.doors.${door}`)
        ?.ratio ?? Number.NaN;
    const there = lost(trunk(pair, "across", mirrored), "right door");
    expect(there).toBeGreaterThan(0);
    // A panel that is its own mirror image has one mesh, which need not be: as near as its own error.
    expect(lost(trunk(), "left door") / there).toBeCloseTo(1, 1);
  }, 240_000);
});

test("a pair of lids in a top rests on the panel at its ends, and breaks nothing", () => {
  const onTop = trunk(pair, "across", metal.replaceAll("trunk.front", "trunk.top"));
  const text = (onTop["case.yaml"] ?? "").replace("panels: { front:", "panels: { top:");
  const { findings } = reviewCase(designOf({ ...onTop, "case.yaml": text }));
  expect(findings.filter(({ verdict }) => verdict === "broken")).toEqual([]);
  const doors = findings.filter(({ id }) => id.startsWith("stiffness.door."));
  expect(doors.map(({ verdict }) => verdict)).toEqual(["holds", "holds"]);
}, 600_000);

describe("leaves that cannot be", () => {
  const path = "sections.trunk.panels.front.openings.doors.leaves";
  test.each([
    ["one alone", "left door: { hinge: left, clearance: 3 }", "each"],
    ["hinged on each other", pair.replace("hinge: left", "hinge: right"), "each.left door.hinge"],
    [
      "with a share of nothing",
      pair.replace("{ hinge: left", "{ share: 0, hinge: left"),
      "each.left door.share",
    ],
  ])("%s are a problem at their line", (_, each, column) => {
    expect(problemsOf(trunk(each, "across", ""))).toMatchObject([{ column: `${path}.${column}` }]);
  });

  test("whose gaps leave nothing of them are a problem", () => {
    const wide = trunk(pair.replaceAll("clearance: 3", "clearance: 200"), "across", "");
    expect(problemsOf(wide)).toMatchObject([{ column: path }]);
  });

  test("beside a leaf or a pane are a problem", () => {
    const both = trunk();
    const text = (both["case.yaml"] ?? "").replace("leaves:", "leaf: { hinge: left, clearance: 3 }, leaves:");
    expect(problemsOf({ ...both, "case.yaml": text })).toMatchObject([{ column: path }]);
  });
});
