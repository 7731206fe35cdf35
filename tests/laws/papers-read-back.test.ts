/**
 * The printed papers, read back from their text by a program that knows nothing of how they are made: pieces against
 * saw steps, holes against drilling tables and bill, shopping against steps, sums, order, sentences and units.
 */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { newJob } from "../../lib/command/new.js";
import { openJob, recipeOf } from "../../lib/job/index.js";
import { recipeMarkdown } from "../../lib/recipe/index.js";
import { type ReadPapers, readPapers, tablesWith } from "./papers-as-read.js";
import {
  barFaults,
  hardwareFaults,
  holeFaults,
  longSentences,
  numberFaults,
  orderFaults,
  sawFaults,
  shoppingFaults,
  sumFaults,
  unitFaults,
} from "./papers-checks.js";

const checks: readonly (readonly [string, (papers: ReadPapers) => readonly string[]])[] = [
  ["every piece comes off its saw steps", sawFaults],
  ["every bar piece comes off its bar", barFaults],
  ["holes, marks, openings, list and bill agree", holeFaults],
  ["hardware that is bought is fitted", hardwareFaults],
  ["what a step uses is on the shopping list", shoppingFaults],
  ["money, masses and hours add up", sumFaults],
  ["the steps have an order that can be followed", orderFaults],
  ["no sentence has more than 25 words", longSentences],
  ["there is one system of units", unitFaults],
  ["every line to fill in has its number", numberFaults],
];

const folder = mkdtempSync(join(tmpdir(), "casewright-papers-"));
afterAll(() => rmSync(folder, { recursive: true }));

async function started(name: string, ...options: readonly string[]): Promise<string> {
  const path = join(folder, name);
  const said = vi.spyOn(console, "log").mockImplementation(() => {});
  await newJob([path, ...options]);
  said.mockRestore();
  return path;
}

const jobs: readonly (readonly [string, () => Promise<string> | string])[] = [
  ["the demo", () => "soil-lab"],
  ["the start of two sections, in inches", () => started("two", "--start", "two-section")],
  ["the tall start, in millimetres", () => started("tall", "--start", "tall", "--metric")],
];

describe.each(jobs)("the papers of %s", (_, job) => {
  let papers: ReadPapers;
  beforeAll(async () => {
    papers = readPapers(recipeMarkdown(recipeOf(openJob(await job()))));
  }, 900_000);

  test("are read whole", () => {
    expect(tablesWith(papers, "Set the fence to", "Falls off").length).toBeGreaterThan(1);
    expect(tablesWith(papers, "Group", "Holds", "Count").length).toBeGreaterThan(5);
    expect(papers.lines.filter(({ kind }) => kind === "step").length).toBeGreaterThan(20);
  });

  test.each(checks)("%s", (_name, check) => expect(check(papers)).toEqual([]));
});

describe("a program that reads papers sees", () => {
  let text = "";
  beforeAll(() => {
    text = recipeMarkdown(recipeOf(openJob("soil-lab")));
  }, 900_000);

  const spoilt: readonly (readonly [string, RegExp, string, (papers: ReadPapers) => readonly string[]])[] = [
    ["a fence set wrong", /\| 1 \| 24-25\/32 in, rip/, "| 1 | 24-21/32 in, rip", sawFaults],
    [
      "a piece that comes off nowhere",
      /\| P15 lower\.shelf\.supply shelf \|/,
      "| offcut 30 × 12 in |",
      sawFaults,
    ],
    ["a bar left out", /Bar 1: B6, B5;/, "Bar 1: B6;", barFaults],
    ["a hole left out", /3, 6-17\/32, 10-3\/32/, "3, 10-3/32", holeFaults],
    [
      "a hole in an opening",
      /12-3\/8, 13-7\/8, 15-3\/8, 16-7\/8, 18-3\/8 × 11-13\/16, 16-3\/16/,
      "12-3/8, 13-7/8, 15-3/8, 16-7/8, 18-3/8 × 13-13/16, 16-3/16",
      holeFaults,
    ],
    [
      "a washer too few",
      /\| washer for rivet 3\/16 short \| {2}\| \d+ \|/,
      "| washer for rivet 3/16 short |  | 37 |",
      holeFaults,
    ],
    ["a caster too few", /Bolt on caster \(4\)/, "Bolt on caster (3)", hardwareFaults],
    ["a thing that is not bought", /- ☐ edge sealer.*\n/, "", shoppingFaults],
    ["a cost that does not add up", /74\.00 USD \| 296\.00 USD/, "74.00 USD | 286.00 USD", sumFaults],
    ["a weight that does not add up", /\| 79\.8 lb \| 171 lb \|/, "| 88.1 lb | 171 lb |", sumFaults],
    ["a day without its cure", /from hour [\d.]+ on, when the glue has cured: /, "", orderFaults],
    ["a step without its time", /(drill the panels .*\| 1 \|) [\d.]+ h \|/, "$1 1 h |", sumFaults],
    ["a day too long for two", /saw the pieces, [\d.]+ h; row 2/, "saw the pieces, 9 h; row 2", sumFaults],
    ["a lid that is never put on", /\| put on lower\.top \|/, "| look at lower.top |", orderFaults],
    ["a bar that is set twice", /Put on the bars B5, /, "Put on the bars B5, B1, ", orderFaults],
    [
      "a sentence without end",
      /Lay out everything first\./,
      `Lay out ${"it and ".repeat(12)}all.`,
      longSentences,
    ],
    ["a foreign unit", /Lay out everything first\./, "Lay out everything within 600 mm.", unitFaults],
    ["a number that is missing", /\| M60 \|/, "|  |", numberFaults],
  ];
  test.each(spoilt)("%s", (_name, from, to, check) => {
    expect(text).toMatch(from);
    expect(check(readPapers(text.replace(from, to)))).not.toEqual([]);
  });
});
