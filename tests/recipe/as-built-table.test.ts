/** The table that the papers bring along, filled in, is read back and moves the findings. */
import { describe, expect, test } from "vitest";
import { readDesign } from "../../lib/design/index.js";
import { type Finding, reviewCase } from "../../lib/findings/index.js";
import { type RecipeBlock, writeRecipe } from "../../lib/recipe/index.js";
import { smallJob } from "../design/small-job.js";
import { flatBlocks, recipeInput, smallInput, smallRecipe } from "./recipes.js";

const lines = smallRecipe.asBuilt.split("\n");
const [, heads = ""] = lines;

/** The design whose table has figures put into some of its lines: by what, of and at. */
function filled(figures: Readonly<Record<string, Readonly<Record<string, string>>>>) {
  const columns = heads.split(",").map((head) => head.replace(/ \(.*/, ""));
  const text = lines.map((line) => {
    const given = Object.entries(figures).find(([start]) => line.includes(`,${start},`))?.[1];
    if (!given) return line;
    const kept = line.split(",");
    const tail = columns.slice(4).map((column, i) => given[column] ?? kept.at(i - 6) ?? "");
    return [...kept.slice(0, -6), ...tail].join(",");
  });
  const read = readDesign({ ...smallJob, "as-built.csv": text.join("\n") });
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return read.design;
}

const asBuiltOf = (design: ReturnType<typeof filled>) =>
  reviewCase(design).assembly.filter(({ id }) => id.startsWith("assembly.as-built"));

const toldBy = (findings: readonly Finding[]) =>
  findings.map(({ id, verdict, answer, ratio }) => ({ id, verdict, answer, ratio }));

describe("the table of the papers", () => {
  test("has a line for every blank that takes a figure, under the number beside it", () => {
    const blanks = smallRecipe.sections.flatMap(({ blocks }) => flatBlocks(blocks));
    const keys = blanks.flatMap((block: RecipeBlock) =>
      block.kind === "blanks" ? (block.records ?? []).flat() : [],
    );
    expect(lines.filter((line) => /^M\d+,/.test(line))).toHaveLength(keys.length);
    const what = new Set(keys.map((key) => key.what));
    for (const one of [
      "thickness",
      "kerf",
      "width",
      "opening width",
      "outside depth",
      "gap",
      "weight empty",
      "price paid",
    ])
      expect([...what]).toContain(one);
  });

  test("as it comes, is read and changes nothing", () => {
    const design = filled({});
    expect(asBuiltOf(design)).toEqual([]);
    expect(toldBy(reviewCase(design).findings)).toEqual(toldBy(smallInput.findings));
  });

  test("a piece that is 3 mm wide of its plan is to be planed, and one that is as planned holds", () => {
    const planned = smallInput.parts.panels.find(({ id }) => id === "box.front");
    const [width, height] = [planned?.width ?? 0, planned?.height ?? 0].map((one) => 1000 * one);
    const told = asBuiltOf(
      filled({
        "width,box.front,": { length: String((width ?? 0) + 3) },
        "height,box.front,": { length: String(height) },
      }),
    );
    const of = (what: string) => told.find(({ id }) => id === `assembly.as-built-size.${what}.box.front`);
    expect(of("width")?.verdict).toBe("fails");
    expect(of("width")?.answer).toContain("Plane 3 mm off box.front.");
    expect(of("height")?.verdict).toBe("holds");
  });

  test("a sheet that came thicker asks for a rivet that closes it, and the papers plan with it", () => {
    const design = filled({ "thickness,ply 10,1": { length: "12" } });
    const told = asBuiltOf(design).find(({ id }) => id === "assembly.as-built-thickness.ply 10");
    expect(told?.verdict).toBe("fails");
    expect(told?.remedies.map(({ words }) => words).join(" ")).toMatch(
      /In place of rivet 4, set .* where the stack is/,
    );
    const again = writeRecipe(recipeInput(design));
    expect(JSON.stringify(again.sections)).toContain("12\u00a0mm");
  });

  test("a section's weight on the scale is the weight that every answer uses", () => {
    const design = filled({ "weight empty,box,": { mass: "40" } });
    const empty = reviewCase(design).masses.filter(({ group }) => group !== "contents");
    expect(empty.reduce((sum, { mass }) => sum + mass, 0)).toBeCloseTo(40, 9);
    const load = reviewCase(design).masses.filter(({ group }) => group === "contents");
    expect(load).toEqual(reviewCase(filled({})).masses.filter(({ group }) => group === "contents"));
    expect(asBuiltOf(design)[0]?.answer).toMatch(
      /^It weighs 40(\.0)? kg, which is .* than the .* kg that was planned\./,
    );
  });
});
