/** How long the book of the demo takes, at first and again after one edit. */
import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { openJob } from "../../job/index.js";
import { BookMaker } from "../book-of-job.js";
import { edits, raise } from "./edit-bench.js";
import { type Timed, timesOf } from "./stopwatch.js";

/** Each edit is made this often. */
const rounds = 3;

/**
 * Builds the book of a copy of the demo in new kernels, then again in those after one edit at a time, and after none.
 * Compiled cells are kept on disk from one run to the next; without node_modules/.cache the first book is from cold.
 */
export async function bookBench(): Promise<readonly Timed[]> {
  const folder = mkdtempSync(join(tmpdir(), "casewright-bench-"));
  const job = join(folder, "job");
  cpSync(openJob("soil-lab").folder, job, { recursive: true });
  const maker = new BookMaker({ job, outDir: join(folder, "book") }, () => {});
  const built = async (prepare: () => void): Promise<number> => {
    prepare();
    const start = performance.now();
    await maker.build();
    return performance.now() - start;
  };
  try {
    const rows = [timesOf("book, in new kernels", [await built(() => {})], "nine chapters")];
    for (const edit of edits) {
      const times: number[] = [];
      for (let round = 0; round < rounds; round++) times.push(await built(() => raise(job, edit)));
      rows.push(timesOf(`book, edited ${edit.what}`, times, "in the kernels it has"));
    }
    return rows;
  } finally {
    await maker.close();
    rmSync(folder, { recursive: true });
  }
}
