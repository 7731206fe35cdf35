import { expect, test } from "vitest";
import { readDesign } from "../../lib/design/index.js";
import { showProblem } from "../../lib/problem.js";
import { Length } from "../../lib/quantity/index.js";
import { problemsOf, smallJob, spoilt } from "./small-job.js";

const problemsWith = (file: string, find: RegExp, replacement: string): string[] => {
  const read = readDesign({ ...smallJob, [file]: (smallJob[file] ?? "").replace(find, replacement) });
  return "problems" in read ? read.problems.map(showProblem) : [];
};

test("a bar shorter than a piece is a problem of its row, with the piece that is too long", () => {
  expect(problemsWith("bar-stock.csv", /^angle 50,\d+/m, "angle 50,300")).toEqual([
    expect.stringMatching(
      /^bar-stock.csv, row 2, length: found "300 mm", expected at least [\d.]+ mm for box\..*, trimming included$/,
    ),
  ]);
});

test("a sheet too small along its grain, or across it, is one as well", () => {
  const problems = problemsWith("sheet-stock.csv", /^ply 10,\d+,\d+/m, "ply 10,300,200");
  expect(problems).toEqual([
    expect.stringMatching(/^sheet-stock.csv, row 2, length: found "300 mm", expected at least /),
    expect.stringMatching(/^sheet-stock.csv, row 2, width: found "200 mm", expected at least /),
  ]);
});

test("a face that would fit the other way of its grain says so", () => {
  expect(problemsWith("sheet-stock.csv", /^ply 10,\d+,\d+/m, "ply 10,560,1250")).toEqual([
    expect.stringMatching(
      /^sheet-stock.csv, row 2, length: found "560 mm", expected at least [\d.]+ mm for box\.\w+, trimming included; "grain: up" under "panels" in case.yaml lets these fit: box\.\w+(?:, box\.\w+)*$/,
    ),
  ]);
});

test("every face that would fit the other way is named at once, so that one round mends all", () => {
  const small = spoilt("sheet-stock.csv", "ply 10,2500,1250", "ply 10,560,1250");
  const [problem] = problemsOf(small);
  const named = problem?.expected.split("lets these fit: ")[1]?.split(", ") ?? [];
  expect(named.sort()).toEqual(["box.back", "box.bottom", "box.front", "box.top"]);
});

test("a piece as long as its raw bar is too long, for the ends of the bar are trimmed", () => {
  const read = readDesign(smallJob);
  if ("problems" in read) throw new Error("the small job has problems");
  const longest = Math.max(...read.design.parts.bars.map(({ length }) => Length.in(length, "mm")));
  const bar = (length: number): string[] =>
    problemsWith("bar-stock.csv", /^angle 50,\d+/m, `angle 50,${length}`);
  expect(bar(longest)).toEqual([
    expect.stringMatching(/^bar-stock.csv, row 2, length: .* trimming included$/),
  ]);
  expect(bar(longest + 12.7)).toEqual([]);
});

test("stock that is large enough is none", () => {
  expect(problemsWith("bar-stock.csv", /^$/, "")).toEqual([]);
});
