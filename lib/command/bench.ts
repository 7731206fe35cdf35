/** npm run bench: how long the parts of a review take on this machine. Timings are printed, never asserted. */
import { showNumber } from "../quantity/index.js";
import { bookBench } from "./bench/book-bench.js";
import { cuttingBench } from "./bench/cutting-bench.js";
import { demoBench, measuringBench } from "./bench/demo-bench.js";
import { editBench } from "./bench/edit-bench.js";
import { solverBench } from "./bench/solvers/solver-bench.js";
import { costGrowth, stiffnessBench } from "./bench/stiffness-bench.js";
import type { Timed } from "./bench/stopwatch.js";
import { textTable } from "./text-table.js";

const benches: readonly (() => readonly Timed[] | Promise<readonly Timed[]>)[] = [
  demoBench,
  editBench,
  bookBench,
  cuttingBench,
  measuringBench,
  stiffnessBench,
];

/** Runs every bench and prints its times. */
export async function bench(): Promise<number> {
  const rows: Timed[] = [];
  for (const run of benches) rows.push(...(await run()));
  console.log(
    textTable(
      ["work", "median ms", "fastest", "slowest", "runs", "note"],
      rows.map(({ work, median, fastest, slowest, runs, note }) => [
        work,
        ...[median, fastest, slowest].map((time) => showNumber(time, 3)),
        String(runs),
        note,
      ]),
    ),
  );
  console.log(`\n${costGrowth()}\n`);
  console.log(await solverBench(console.error));
  return 0;
}
