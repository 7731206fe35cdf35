/** Panes over openings: their parts and sums by hand, and how far they sag. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { paneSags } from "../../lib/findings/stiffness/panes.js";
import { massItems } from "../../lib/model/index.js";
import { recipeMarkdown, writeRecipe } from "../../lib/recipe/index.js";
import { crateJob } from "../design/crate-job.js";
import { designOf, problemsOf } from "../design/small-job.js";

const crate = designOf(crateJob);
const review = reviewCase(crate);

describe("the pane of a crate", () => {
  const [pane] = crate.parts.panes;

  test("is as large as its opening and its overlap, and lies outside", () => {
    // 120 x 100 and 15 on every side.
    expect(pane).toMatchObject({ width: expect.closeTo(0.15), height: expect.closeTo(0.13) });
    // The back is 9 mm behind an inside of 300; its outside is at 309.
    expect(pane?.box.low.y).toBeCloseTo(0.309, 9);
    expect(pane?.box.size.y).toBeCloseTo(0.003, 9);
  });

  test("weighs its area by its thickness and density", () => {
    const own = massItems(crate).find(({ name }) => name === pane?.id);
    expect(own?.mass).toBeCloseTo(0.15 * 0.13 * 0.003 * 1190, 9);
  });

  test("is bought, cut and fastened", () => {
    expect(review.bill.lines.filter(({ trade }) => trade === "panes")).toMatchObject([
      { item: "acrylic 3", quantity: 1, unit: "sheet" },
    ]);
    expect(crate.parts.fastenings.find(({ holds }) => holds === pane?.id)?.count).toBe(8);
    const { purchases, bill, masses } = review;
    const text = recipeMarkdown(writeRecipe({ ...crate, purchases, bill, findings: [], masses }));
    expect(text).toContain("over its opening on the outside of crate.back");
  });

  test("sags as a plate on four hinged edges", () => {
    // Timoshenko and Woinowsky-Krieger, table 8: sides of 1.2 to 1 give 0.00564 q a^4 / D; 500 Pa on 100 mm;
    // D = 3.2 GPa x 3^3 mm3 / (12 (1 - 0.37^2)) = 8.342 N m, so 0.0338 mm of the 100/150 allowed.
    const [finding] = paneSags(crate);
    expect(finding?.ratio).toBeCloseTo(0.0338 / (100 / 150), 3);
  });
});

describe("what a pane cannot be", () => {
  const expected = (pane: string): readonly string[] =>
    problemsOf({
      ...crateJob,
      "case.yaml": (crateJob["case.yaml"] ?? "").replace(/pane: \{.*?\}/, `pane: ${pane}`),
    }).map((problem) => problem.expected);

  test("of a sheet that nobody sells, or larger than its panel", () => {
    expect(expected("{ sheet: acryl 3, overlap: 15, held: gasket }")[0]).toContain(
      "a name in pane-stock.csv",
    );
    expect(expected("{ sheet: acrylic 3, overlap: 160, held: gasket }")[0]).toContain(
      "a pane on the panel crate.back",
    );
  });

  test("fastened by so many of nothing", () => {
    expect(expected("{ sheet: acrylic 3, overlap: 15, held: clips, count: 4 }")).toEqual([
      "a fastener and how many of it, or neither",
    ]);
  });
});
