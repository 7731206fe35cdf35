/** A drawer: its pieces by hand, its mass, its slides, and the case with it pulled out. */
import { describe, expect, test } from "vitest";
import { sheetPieces } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { massItems, stackedBalance } from "../../lib/model/index.js";
import { writeRecipe } from "../../lib/recipe/index.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf, problemsOf, smallJob } from "../design/small-job.js";
import { recipeInput } from "../recipe/recipes.js";

const drawer =
  "{ in: trunk, opening: front.bay, slides: slide 350, depth: 380, sheet: ply 12, bottom: ply 6, joint: { fastener: screw, count: 16 }, load: 5 kg }";

/** The plain trunk with a drawer in its front. */
function chest(words = drawer): Record<string, string> {
  const text = (plainTrunk["case.yaml"] ?? "").replace(
    "height: 500 } }",
    "height: 500 }, panels: { front: { openings: { bay: { rectangle: { width: 400, height: 150 }, from: bottom-left, across: 100, up: 100 } } } } }",
  );
  const head = (smallJob["hardware.csv"] ?? "").split("\n")[0];
  return {
    ...plainTrunk,
    "case.yaml": `${text}drawers: { tool drawer: ${words} }\n`,
    "sheet-stock.csv": `${plainTrunk["sheet-stock.csv"]}\nply 6,2500,1250,6,540,25,yard,2+2+2,yellow birch`,
    "fasteners.csv": smallJob["fasteners.csv"] ?? "",
    "hardware.csv": `${head},side room (mm),extension (mm)\nslide 350,slide,1200,14,counter,350,45,1,0,0,0,screw,12,6,2,300,20,300,13,300`,
  };
}

const design = designOf(chest());
const review = reviewCase(design);

function find(id: string): Finding | undefined {
  return [...review.travel, ...review.fitOut].find((one) => one.id === id);
}

/** A box 400 - 2 x 13 = 374 wide and 150 - 2 x 3 = 144 high, its bottom 6 mm under sides of 138. */
const pieces = [
  ["trunk.drawer.tool drawer.front", 394, 144, 12],
  ["trunk.drawer.tool drawer.left side", 380, 138, 12],
  ["trunk.drawer.tool drawer.right side", 380, 138, 12],
  ["trunk.drawer.tool drawer.inner front", 350, 138, 12],
  ["trunk.drawer.tool drawer.back", 350, 138, 12],
  ["trunk.drawer.tool drawer.bottom", 374, 380, 6],
] as const;
const density = { 12: 520, 6: 540 } as const;
const box = pieces.reduce((sum, [, width, height, t]) => sum + width * height * t * 1e-9 * density[t], 0);

describe("a drawer", () => {
  test("is sawn as by hand", () => {
    const cut = sheetPieces(design.parts).filter(({ role }) => role === "drawer");
    const rounded = cut.map(({ id, width, height, sheet }) => [
      id,
      ...[width, height, sheet.thickness].map((size) => Number((1000 * size).toFixed(6))),
    ]);
    expect(rounded).toEqual(pieces);
  });

  test("weighs as by hand, and stands where its opening is", () => {
    const mine = massItems(design).filter(({ name }) => name.includes("drawer.tool drawer."));
    const sheets = mine.filter(({ group }) => group === "panels");
    expect(sheets.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(box, 9);
    // From the left 100 + 200 mm, from the front 12 mm of panel and half of 380; up 12 mm of bottom, 100, half of 150.
    const { low, size } = design.parts.drawers[0]?.box ?? {
      low: { x: 0, y: 0, z: 0 },
      size: { x: 0, y: 0, z: 0 },
    };
    expect(low.x + size.x / 2).toBeCloseTo(0.3, 9);
    expect(low.y + size.y / 2).toBeCloseTo(0.012 + 0.19, 9);
    expect(low.z + size.z / 2).toBeCloseTo(0.012 + 0.1 + 0.075, 9);
  });

  test("loads its slides with all that is in it, twice for a jolt", () => {
    expect(find("fit-out.slide.tool drawer")?.ratio).toBeCloseTo((2 * (box + 5) * 9.80665) / 300, 6);
  });

  test("tips the case by its own weight and that of a child on its edge", () => {
    const { mass, y } = stackedBalance(design).value;
    // Pulled out it takes its weight 300 mm to the front; the child hangs 300 mm before the front edge.
    const arm = y - (0.3 * (box + 5)) / mass;
    expect((27.2155422 * 0.3) / (mass * arm)).toBeCloseTo(find("travel.child.tool drawer")?.ratio ?? 0, 5);
  });

  test("has its slides, screws and sheet bought, and is built in the recipe", () => {
    const { hardware, sheets } = review.purchases;
    expect(hardware.map(({ stock, count }) => [stock.name, count])).toEqual([["slide 350", 1]]);
    expect(sheets.map(({ stock }) => stock.name)).toEqual(["ply 12", "ply 6"]);
    const screws = design.parts.fastenings.reduce((sum, { count }) => sum + count, 0);
    expect(screws).toBe(12 + 16);
    expect(JSON.stringify(writeRecipe(recipeInput(design)))).toContain("Build the tool drawer");
    expect(review.findings.filter(({ verdict }) => verdict === "broken")).toEqual([]);
  }, 600_000);
});

test("half of the screws of its slides go into the walls, half into its sides, each through what is there", () => {
  // Twelve in four groups; the wall and the side are 12 mm and the metal is 1 mm.
  const held = design.parts.fastenings.filter(({ holds }) => holds === "slides of tool drawer");
  expect(
    held.map(({ panel, count, stack }) => [
      panel,
      count,
      1000 * stack.reduce((sum, l) => sum + l.thickness, 0),
    ]),
  ).toEqual([
    ["trunk.left", 3, expect.closeTo(13, 9)],
    ["trunk.right", 3, expect.closeTo(13, 9)],
    ["trunk.drawer.tool drawer.left side", 3, expect.closeTo(13, 9)],
    ["trunk.drawer.tool drawer.right side", 3, expect.closeTo(13, 9)],
  ]);
});

describe("a drawer that cannot be", () => {
  test.each([
    ["of an opening that is not there", "front.bay", "front.bays", "drawers.tool drawer.opening"],
    ["on slides that nobody sells", "slide 350", "slide 400", "drawers.tool drawer.slides"],
    ["deeper than its section", "depth: 380", "depth: 460", "drawers.tool drawer.depth"],
    ["in a section that is not there", "in: trunk", "in: chest", "drawers.tool drawer.in"],
    ["of a sheet that is not there", "bottom: ply 6", "bottom: ply 9", "drawers.tool drawer.bottom"],
  ])("%s is a problem at its line", (_, find, replacement, column) => {
    expect(problemsOf(chest(drawer.replace(find, replacement)))).toMatchObject([{ column }]);
  });

  test("in the place of something else is a problem", () => {
    const texts = chest();
    const text = `${texts["case.yaml"]}contents: { hat: { in: trunk, mass: 1 kg, at: [120, 100, 0], size: [200, 200, 200], held: { by: floor } } }\n`;
    expect(problemsOf({ ...texts, "case.yaml": text })).toMatchObject([
      { column: "drawers.tool drawer.depth", expected: 'a drawer that ends before "hat"' },
    ]);
  });
});
