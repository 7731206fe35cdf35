/** Times the cutting plans on published cases, and bars against one plain integer program. */

import { readFileSync } from "node:fs";
import { join } from "node:path";
import type highs from "highs";
import { type BarJob, planBars, planSheets, Time } from "../../index.js";
import { openJob } from "../../job/index.js";
import { barJobs, sheetJobs } from "../../plan/index.js";
import { barJobOf, casesOf, nameOf, sheetJobOf, sheetOutcomes } from "../reference/cutting-cases.js";
import { randomBarCase, randomSheetCase } from "./random-sets.js";
import { type Timed, timed } from "./stopwatch.js";

type LoadSolver = typeof highs.default;

/**
 * The same bars as one plain integer program: bar j is bought or not, piece i is cut from bar j so many times.
 * Given to a general solver, for comparison only; nothing in the library uses it.
 *
 * @param patience s, after which the solver is stopped
 * @returns solves it and says what came of it
 * @throws Error when the solver, which only the bench needs, is not installed
 */
async function plainBars(job: BarJob, patience: number): Promise<() => string> {
  const solver = await generalSolver();
  const model = modelOf(job);
  return () => {
    const { Status, ObjectiveValue } = solver.solve(model, { time_limit: patience });
    return `${Status}, ${Math.round(ObjectiveValue)} bars`;
  };
}

/**
 * Its types describe the CommonJS build; Node loads the ES module, whose default is the loader itself.
 *
 * @throws Error when it is not installed
 */
async function generalSolver(): Promise<Awaited<ReturnType<LoadSolver>>> {
  const found = await import("highs").catch((cause: unknown) => {
    throw new Error('bench: the solver "highs" is not installed; run "npm ci" in the whole project', {
      cause,
    });
  });
  return (found.default as unknown as LoadSolver)();
}

/** In the text format of linear programs. The bars of our own plan are as many as it may buy. */
function modelOf(job: BarJob): string {
  const [stock] = job.stock;
  const bars = [...Array(planBars(job).bars.length + 1).keys()];
  const pieces = [...job.pieces.entries()];
  const size = (length: number): number => Math.round((length + job.kerf) * 1e7) / 1e4;
  const room = size((stock?.length ?? 0) - 2 * (job.endTrim ?? 0));
  const counts = pieces.flatMap(([i]) => bars.map((j) => `x${i}_${j}`));
  return [
    "Minimize",
    ` obj: ${bars.map((j) => `y${j}`).join(" + ")}`,
    "Subject To",
    ...pieces.map(([i, { count }]) => ` d${i}: ${bars.map((j) => `x${i}_${j}`).join(" + ")} >= ${count}`),
    ...bars.map(
      (j) =>
        ` c${j}: ${pieces.map(([i, { length }]) => `${size(length)} x${i}_${j}`).join(" + ")} - ${room} y${j} <= 0`,
    ),
    "Bounds",
    ...bars.map((j) => ` 0 <= y${j} <= 1`),
    "General",
    ` ${[...counts, ...bars.map((j) => `y${j}`)].join(" ")}`,
    "End",
  ].join("\n");
}

/** A second or two for each set; a plain program is stopped after this many seconds. */
const patience = 10;
const sheetPatience = Time.of(4, "s");

/** Times every set of published cases, the demo, and one case of each set as a plain integer program. */
export async function cuttingBench(): Promise<readonly Timed[]> {
  const job = openJob("soil-lab");
  const cases = casesOf(stored("bars"));
  const sets = [...new Set(cases.map((one) => setOf(nameOf(one))))];
  return [
    timed("demo: bars", () => plans(barJobs(job).map((one) => one.job))),
    timed(
      "demo: sheets",
      () =>
        sheetJobs(job)
          .map((one) => sheetNote(planSheets(one.job)))
          .join("; "),
      1,
    ),
    ...sets.map((set) =>
      timed(
        `bars ${set}, all`,
        () => plans(cases.filter((one) => setOf(nameOf(one)) === set).map(barJobOf)),
        1,
      ),
    ),
    ...randomBarRows(),
    ...sheetRows(),
    ...randomSheetRows(),
    ...(await plainRows([
      ...sets.map((set) => cases.find((one) => setOf(nameOf(one)) === set) ?? {}),
      ...barKinds.map(([name, range, bar, pieces]) => randomBarCase(name, range, bar, pieces, 1)),
    ])),
  ];
}

function stored(name: string): unknown {
  const folder = join(import.meta.dirname, "..", "..", "..", "..", "tests", "cutting");
  return JSON.parse(readFileSync(join(folder, `public-${name}.json`), "utf8"));
}

/** u120_07 belongs to u120. */
function setOf(name: string): string {
  return name.split("_")[0] ?? name;
}

function plans(jobs: readonly BarJob[]): string {
  const done = jobs.map((job) => planBars(job));
  return `${done.reduce((sum, { bars }) => sum + bars.length, 0)} bars, ${done.filter(({ proof }) => proof.proven).length} of ${done.length} proven`;
}

function sheetNote({ sheets, bound, proof }: ReturnType<typeof planSheets>): string {
  return `${sheets.length} sheets${proof.proven ? ", proven" : `, at least ${bound.count}`}`;
}

function sheetRows(): Timed[] {
  const cases = casesOf(stored("sheets"));
  return [...new Set(cases.map(({ task }) => String(task)))].map((task) =>
    timed(
      `sheets: ${task}, all`,
      () => {
        const outcomes = sheetOutcomes({ cases: cases.filter((one) => one.task === task) });
        return `${outcomes.filter(({ holds }) => holds).length} of ${outcomes.length} within tolerance, ${outcomes.filter(({ ours }) => ours.includes("proven")).length} proven`;
      },
      1,
    ),
  );
}

/** Harder kinds of bars, drawn by a seeded generator. */
const barKinds: readonly (readonly [string, readonly [number, number], number, number])[] = [
  ["u250", [20, 100], 150, 250],
  ["Scholl 1: 1..100 in 150", [1, 100], 150, 200],
  ["Scholl 1: 30..100 in 120", [30, 100], 120, 200],
  ["Scholl 2: 167..499 in 1000", [167, 499], 1000, 100],
];
const barSeeds = [1, 2, 3, 4, 5];

function randomBarRows(): Timed[] {
  return barKinds.map(([name, range, bar, pieces]) =>
    timed(
      `bars ${name}, ${pieces} pieces, ${barSeeds.length} drawn`,
      () => plans(barSeeds.map((seed) => barJobOf(randomBarCase(name, range, bar, pieces, seed)))),
      1,
    ),
  );
}

/** All ten classes of random sheets, by the number of pieces. */
function randomSheetRows(): Timed[] {
  return [20, 40, 60].map((pieces) =>
    timed(
      `sheets: ten classes drawn, ${pieces} pieces`,
      () => {
        const cases = Array.from({ length: 10 }, (_, i) => randomSheetCase(i + 1, pieces, 1));
        const found = cases.map((one) => planSheets(sheetJobOf(one, sheetPatience)));
        const over = found.map(({ sheets, bound }) => sheets.length - bound.count);
        return `${found.filter(({ proof }) => proof.proven).length} of ${found.length} proven, at most ${Math.max(...over)} over the bound`;
      },
      1,
    ),
  );
}

async function plainRows(cases: readonly Parameters<typeof barJobOf>[0][]): Promise<Timed[]> {
  const rows: Timed[] = [];
  for (const one of cases) {
    const solve = await plainBars(barJobOf(one), patience);
    rows.push(timed(`${nameOf(one)} as one plain integer program`, solve, 1));
  }
  return rows;
}
