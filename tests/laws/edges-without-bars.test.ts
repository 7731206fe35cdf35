/** Edges that are glued, screwed, or held by cleats and corner blocks: parts and sums by hand, and answers. */
import { describe, expect, test } from "vitest";
import { reviewCase } from "../../lib/findings/index.js";
import { sectionBody } from "../../lib/model/box/box-body.js";
import { massItems } from "../../lib/model/index.js";
import { recipeMarkdown, writeRecipe } from "../../lib/recipe/index.js";
import { crateJob } from "../design/crate-job.js";
import { designOf, problemsOf } from "../design/small-job.js";

const design = designOf(crateJob);
const review = reviewCase(design);
const { parts } = design;
const strips = parts.strips.filter(({ why }) => why === "edge");
const screws = parts.fastenings.filter(({ why }) => why === "edge");
const corners = new Set(strips.map(({ id }) => id));

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

describe("an open crate without an extrusion", () => {
  test("has wood in seven corners, as long as the inside less the set-backs", () => {
    // Inside 500 x 300 x 400: three across of 500 - 20, but one of them at the open front is not there; along the depth
    // 300 - 20, of which one edge has two blocks of 60 instead.
    const lengths = strips.map(({ length }) => Math.round(length * 1000)).sort((a, b) => a - b);
    expect(lengths).toEqual([60, 60, 280, 280, 280, 480, 480]);
  });

  test("weighs its strips by their section: 20 x 30 mm of 500 kg/m3 are 0.3 kg/m", () => {
    const wood = massItems(design).filter(({ name }) => corners.has(name));
    expect(sum(wood.map(({ mass }) => mass))).toBeCloseTo(0.3 * (2 * 0.06 + 3 * 0.28 + 2 * 0.48), 9);
  });

  test("takes glue on both sides of each cleat and along the glued edge", () => {
    // A cleat is 30 + 20 wide; the back meets the left side over 400 with its 9 mm.
    const area = 0.05 * (2 * 0.06 + 3 * 0.28 + 2 * 0.48) + 0.4 * 0.009;
    const stiffeners = parts.stiffeners.map(({ id, panel }) => `${id} on ${panel}`);
    const edges = parts.glues.filter(({ id }) => !stiffeners.includes(id));
    expect(sum(edges.map((glue) => glue.area))).toBeCloseTo(area, 9);
  });

  test("counts its screws row by row", () => {
    // 480 less two end distances of 40 is 400, four spaces of at most 120: 5 on each panel of two edges. 280 - 80 = 200,
    // two spaces: 3 on each panel of three. Through the right side into the back: 400 - 60 = 340, four spaces: 5.
    expect(sum(screws.map(({ count }) => count))).toBe(2 * 2 * 5 + 3 * 2 * 3 + 5);
    expect(screws.map(({ at }) => at.length)).toEqual(screws.map(({ count }) => count));
  });

  test("has each screw of a cleat over the middle of the cleat", () => {
    const row = parts.fastenings.find(({ id }) => id === "crate.top-back on crate.top");
    // The top reaches 9 past the inside at its left and back; the cleat is 30 wide on it, from 10 off the left side.
    expect(row?.at[0]?.x).toBeCloseTo(0.009 + 0.01 + 0.04, 9);
    expect(row?.at[0]?.y).toBeCloseTo(0.3 - 0.015, 9);
  });
});

describe("answers about it", () => {
  test("nothing is broken, and the joined boxes are worked out", () => {
    expect(review.findings.filter(({ verdict }) => verdict === "broken").map(({ id }) => id)).toEqual([]);
    expect("runs" in review.box).toBe(true);
  });

  test("speak of glued and screwed edges, never of rivets", () => {
    const asked = review.findings.filter(({ topic }) => topic === "joints").map(({ question }) => question);
    expect(asked).toContain(
      "Do the glued edges of crate keep it square when it is pushed sideways with its own weight?",
    );
    expect(asked).toContain(
      "Do the screwed edges of crate keep it square when it is pushed sideways with its own weight?",
    );
  });

  test("the recipe says how each edge is joined", () => {
    const { purchases, bill, findings, masses } = review;
    const text = recipeMarkdown(writeRecipe({ ...design, purchases, bill, findings, masses }));
    expect(text).toMatch(/Take the corner blocks [^.]*\. Set them into the corners at /);
    expect(text).toContain("white glue, wood to wood");
    expect(text).toContain("Strips: pine 20 x 30");
    expect(text).not.toContain("join those panels in your own way");
  });

  test("seams give as films of glue and as rows of screws do", () => {
    const { problem } = sectionBody(design, "crate");
    const slipOf = (one: string, other: string): number =>
      problem.seams?.find(({ faces }) => faces.includes(one as never) && faces.includes(other as never))
        ?.slip ?? 0;
    // 350 MPa over 9 mm of edge and a film of 0.1 mm.
    expect(slipOf("y1", "x0") / ((350e6 * 0.009) / 1e-4)).toBeCloseTo(1, 9);
    // Two films one after the other, 30 and 20 mm wide, over 480 of 500 mm.
    expect(slipOf("top", "y1") / ((0.96 * 350e6 * 0.012) / 1e-4)).toBeCloseTo(1, 9);
    // EN 1995, 7.1: 650^1.5 x 4 / 23 N/mm for each of 5 screws on 400 mm.
    expect(slipOf("y1", "x1") / ((5 * 1000 * 650 ** 1.5 * 4) / 23 / 0.4)).toBeCloseTo(1, 9);
  });
});

describe("what a joint cannot do without", () => {
  const expected = (edges: string): readonly string[] =>
    problemsOf({
      ...crateJob,
      "case.yaml": (crateJob["case.yaml"] ?? "").replace(
        / {2}edges: \{ joint: cleat.*\n/,
        `  edges: ${edges}\n`,
      ),
    }).map((problem) => problem.expected);

  test("a cleat needs its strip, and glue or screws", () => {
    expect(expected("{ joint: cleat }")).toEqual([
      'an adhesive, a screw or both with "joint: cleat"',
      'a strip with "joint: cleat"',
    ]);
  });

  test("screws need a pitch and an end distance", () => {
    expect(expected("{ joint: screwed, screw: screw 4 }")).toEqual([
      'a pitch with "joint: screwed"',
      'an end distance with "joint: screwed"',
    ]);
  });

  test("a cleat fits between its set-backs", () => {
    expect(
      expected("{ joint: cleat, strip: pine 20 x 30, adhesive: white glue, set back: 260 }")[0],
    ).toContain("pieces that fit between the set-backs");
  });
});
