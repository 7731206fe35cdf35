/** Times the cutting plans on published cases, and bars against one plain integer program. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type BarJob, planBars, planSheets } from "../../index.js";
import { openJob } from "../../job/index.js";
import { barJobs, sheetJobs } from "../../review/index.js";
import { barJobOf } from "../reference/bar-cases.js";
import { casesOf, nameOf } from "../reference/cutting-values.js";
import { sheetOutcomes } from "../reference/sheet-cases.js";
import { plainBars } from "./plain-integer-program.js";
import { type Timed, timed } from "./stopwatch.js";

/** A second or two for each set; a plain program is stopped after this many seconds. */
const patience = 10;

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
    ...sheetRows(),
    ...(await plainRows(sets.map((set) => cases.find((one) => setOf(nameOf(one)) === set) ?? {}))),
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

async function plainRows(cases: readonly Parameters<typeof barJobOf>[0][]): Promise<Timed[]> {
  const rows: Timed[] = [];
  for (const one of cases) {
    const solve = await plainBars(barJobOf(one), patience);
    rows.push(timed(`${nameOf(one)} as one plain integer program`, solve, 1));
  }
  return rows;
}
