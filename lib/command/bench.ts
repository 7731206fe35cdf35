/** npm run bench -- [live [EDITS]]: how long the parts of a review, or the live page, take on this machine. Printed, never asserted. */
import { showNumber } from "../quantity/index.js";
import { bookBench } from "./bench/book-bench.js";
import { cuttingBench } from "./bench/cutting-bench.js";
import { demoBench, measuringBench } from "./bench/demo-bench.js";
import { editBench } from "./bench/edit-bench.js";
import { liveBench, usualEdits } from "./bench/live-bench.js";
import { solverBench } from "./bench/solvers/solver-bench.js";
import { costGrowth, stiffnessBench } from "./bench/stiffness-bench.js";
import type { Timed } from "./bench/stopwatch.js";
import { usageOf } from "./help.js";
import { textTable } from "./text-table.js";

const benches: readonly (() => readonly Timed[] | Promise<readonly Timed[]>)[] = [
  demoBench,
  editBench,
  bookBench,
  cuttingBench,
  measuringBench,
  stiffnessBench,
];

/**
 * Runs every bench and prints its times, or that of the live page alone.
 *
 * @param args nothing, or "live" and after how many edits to look at its memory
 * @returns exit code: 1 for any other argument
 */
export async function bench(args: readonly string[]): Promise<number> {
  const [only, count = String(usualEdits), ...more] = args;
  if (more.length > 0 || (only !== undefined && only !== "live") || !/^[1-9]\d*$/.test(count)) {
    console.error(usageOf("bench"));
    return 1;
  }
  if (only === undefined) {
    const rows: Timed[] = [];
    for (const run of benches) rows.push(...(await run()));
    console.log(timesTable(rows));
    console.log(`\n${costGrowth()}\n`);
    console.log(await solverBench(console.error));
  }
  console.log(timesTable(await liveBench(Number(count), console.error)));
  return 0;
}

function timesTable(rows: readonly Timed[]): string {
  return textTable(
    ["work", "median ms", "fastest", "slowest", "runs", "note"],
    rows.map(({ work, median, fastest, slowest, runs, note }) => [
      work,
      ...[median, fastest, slowest].map((time) => showNumber(time, 3)),
      String(runs),
      note,
    ]),
  );
}
