/** What once ended in a stack trace, without end or in nonsense; each row stays answered as it is now. */
import { expect, test } from "vitest";
import { faultOfChanges, leavesOf } from "../../lib/command/fuzz/edits.js";
import { faultOfFormula } from "../../lib/command/fuzz/formulas.js";
import { faultOfTexts } from "../../lib/command/fuzz/job-files.js";
import { textsOf } from "../../lib/command/reference/cases/case-content.js";
import { faultsOf } from "../../lib/command/reference/cases/case-faults.js";
import { randomCase } from "../../lib/command/reference/cases/random-case.js";
import { applyChange, rename, set } from "../../lib/design/index.js";
import { problemsOf, rolling, rowOf, smallJob, spoilt } from "../design/small-job.js";

/** A mistake in the small job's files: what was wrong before, where, and the column of the problem that tells it now. */
type Mistake = readonly [
  was: string,
  file: string,
  find: string,
  replacement: string,
  column: string | undefined,
];

const manyNines = "9".repeat(320);
const pairs = "[*a, *a, *a, *a, *a, *a, *a, *a, *a]";

const mistakes: readonly Mistake[] = [
  ["a stack trace", "hardware.csv", "rivet 4,6,2,1", "rivet 4 x,6,2,1", "fastener"],
  ["without end", "hardware.csv", "rivet 4,6,2,1", "rivet 4,6,2000000,1", "hole columns"],
  ["a stack trace", "hardware.csv", "rivet 4,6,2,1", "rivet 4,6,2e12,1", "hole columns"],
  ["taken", "hardware.csv", "corner 55,corner,90", "corner 55,corner,1e12", "mass"],
  ["taken", "bar-stock.csv", "angle 50,2500", "angle 50,25400000000", "length"],
  ["taken", "sheet-stock.csv", "ply 10,2500", "ply 10,3.2e10", "length"],
  ["a stack trace", "case.yaml", "case: Small box", "case: *nobody", undefined],
  ["a stack trace", "case.yaml", "purpose: tests", `purpose: &a [1]\nx: &b ${pairs}\ny: ${pairs}`, undefined],
  [
    "a parser's words",
    "case.yaml",
    "purpose: tests",
    `purpose: ${"[".repeat(5000)}${"]".repeat(5000)}`,
    undefined,
  ],
  ["without end", "case.yaml", "people: 2", "people: 1000000000", "journey.people"],
  ["without end", "case.yaml", "pitch: 100", "pitch: 1/2000", "build.edges.pitch"],
  ["a stack trace", "case.yaml", "pitch: 100", "pitch: 1e-9", "build.edges.pitch"],
  ["a stack trace", "case.yaml", "pitch: 100", "pitch: 4e12", "build.edges.pitch"],
  ["taken", "case.yaml", "ready made: 900", "ready made: .inf", "business.ready made"],
  ["taken", "case.yaml", "own hour: 20", "own hour: 1e400", "business.own hour"],
  ["taken", "case.yaml", "income per job: 100", `income per job: ${manyNines}/1`, "business.income per job"],
];

test.each(mistakes)("%s: %s, %s", (_, file, find, replacement, column) => {
  const texts = spoilt(file, find, replacement);
  const found = problemsOf(texts).filter((problem) => problem.file === file);
  expect(found.length).toBeGreaterThan(0);
  if (column !== undefined) {
    const [problem] = found.filter((one) => one.column === column || one.column?.startsWith(`${column} (`));
    expect(problem).toMatchObject({ row: rowOf(texts, file, replacement.split("\n")[0] ?? "") });
  }
  expect(faultOfTexts(texts)).toBeUndefined();
});

test("the row of an adhesive that holds a stiffener, cut short, is told", () => {
  const texts = textsOf(randomCase(0));
  const cut = (texts["adhesives.csv"] ?? "").replace(/^white glue,.*$/m, "white gl");
  expect(cut).not.toBe(texts["adhesives.csv"]);
  expect(faultOfTexts({ ...texts, "adhesives.csv": cut })).toBeUndefined();
});

test("a job without a mistake goes through the same review without a fault", () => {
  expect(faultOfTexts(smallJob)).toBeUndefined();
  expect(faultOfTexts(rolling(smallJob))).toBeUndefined();
});

test.each<readonly [was: string, formula: string, inputs: Readonly<Record<string, unknown>>]>([
  ["no least size", "power.wire.size", { gauge: -100000 }],
  [
    "without end",
    "section.torsion.solid",
    {
      outline: [
        { x: "0 mm", y: "0 mm" },
        { x: "20 mm", y: "0 mm" },
        { x: "10 mm", y: "173205 mm" },
      ],
    },
  ],
  [
    "a stack trace",
    "bars.first.fit",
    {
      pieces: [{ length: "22 mm", count: 1e12 }],
      stockLength: "122 mm",
      kerf: "0 mm",
      endTrim: "0 mm",
    },
  ],
  [
    "without end",
    "panel.finite-elements.uniform",
    {
      length: "1 m",
      width: "1e-12 m",
      thickness: "1 mm",
      stiffness: { alongX: "100 N·m", alongY: "100 N·m", coupling: "30 N·m", twist: "35 N·m" },
      throughShear: "10 MN/m",
      left: "hinged",
      right: "hinged",
      bottom: "hinged",
      top: "hinged",
      openings: [],
      pressure: "10 Pa",
    },
  ],
])("%s: %s", (_, formula, inputs) => {
  expect(faultOfFormula({ formula, inputs })).toBeUndefined();
});

test.each(["__proto__", "constructor"])("the word %s, in place of a word of each kind, is told", (odd) => {
  const { content, ...tables } = randomCase(0, { sections: 1 });
  const texts = textsOf({ content, ...tables });
  const ways = new Map(leavesOf(content, []).map(([path]) => [`${path[0]} ${path.at(-1)}`, path]));
  const changes = [...ways.values()].map((path) => [rename(path.join("."), odd)]);
  expect(changes.map((change) => faultOfChanges(texts, change)).filter(Boolean)).toEqual([]);
  expect(() => applyChange(texts, set(`business.${odd}`, 3))).not.toThrow(TypeError);
});

test("a change to what repeats what nothing marks is written as a text, which check tells", () => {
  const { texts } = applyChange(smallJob, set("journey.people", "<<: *x"));
  expect(problemsOf(texts)).toMatchObject([{ column: "journey.people", value: "<<: *x" }]);
});

test.each([
  ["a grip in the middle of the front was counted to the right end", 10002564],
  ["a grip in the middle of the top was counted to the right end", 20000233],
  ["a grip in the middle of the back was counted to the right end", 20004083],
  ["two screws met behind a panel, and were told as under a head", 20000728],
  ["a bolt and an insert met, and were told as under a head", 20001894],
  ["a batten was glued when its section stood, though it could lie flat", 20002257],
  ["of two sides alike the left one was always closed last", 20003016],
])("before, %s: random case %i and its mirror image answer alike", (_, seed) => {
  expect(faultsOf(randomCase(seed), { mirrored: true, bent: false })).toEqual([]);
});
