/** Runs the notebooks on a job and builds its book; what `start` and `book` share. */
import { basename, join, relative } from "node:path";
import {
  type BookNotebook,
  buildBook,
  type Failure,
  type NotebookRun,
  type Progress,
  projectFolder,
  runNotebooks,
} from "../book/index.js";
import { type CheckOutcome, formulaIndex, recipeOf } from "../index.js";
import { demoJob, type Job } from "../job/index.js";
import { problemReport, readNamed } from "./check.js";
import { checksAside } from "./checks-thread.js";
import { notebookFiles } from "./notebooks.js";
import { recipeFiles, recipeShown } from "./recipe-files.js";

/** What to run, and where the book goes; each has its usual place. */
export interface BookOfJob {
  /** Name of the job. Default: the demo job. */
  readonly job?: string | undefined;
  /** Notebook files. Default: all of notebooks/, in the order of their names. */
  readonly files?: readonly string[];
  /** Default: book/ with the job's name. */
  readonly outDir?: string;
  /** How long a cell may take, ms. Default: a minute. */
  readonly timeout?: number;
}

/**
 * Builds the book of a job, telling of every cell. When a file or a cell is wrong it says where and why,
 * and the previous book stays.
 *
 * @returns the book's folder; undefined when it could not be built
 */
export async function bookOfJob(request: BookOfJob): Promise<string | undefined> {
  const job = openedJob(request.job ?? demoJob);
  if (!job) return undefined;
  const files = request.files ?? (await notebookFiles());
  if (files.length === 0) return void console.error("no notebooks to run: notebooks/ is empty");
  const start = performance.now();
  const checks = checksAside();
  try {
    const runs = await runAll(job, files, request.timeout);
    const failures = runs.flatMap(({ failure }) => failure ?? []);
    if (failures.length > 0) return void console.error(failureReport(failures));
    const outDir = request.outDir ?? join(projectFolder(), "book", job.name);
    await build(job, files, runs, await checks.outcomes, outDir);
    console.log(
      `built ${relative(process.cwd(), outDir) || outDir} in ${seconds(performance.now() - start)}`,
    );
    return outDir;
  } finally {
    await checks.stop();
  }
}

function runAll(job: Job, files: readonly string[], timeout: number | undefined): Promise<NotebookRun[]> {
  return runNotebooks(files, {
    concurrency: 2,
    keepKernels: true,
    cwd: join(projectFolder(), "notebooks"),
    env: { ...process.env, CASEWRIGHT_JOB: job.folder, CASEWRIGHT_BOOK: "1" },
    onProgress: (progress) => console.log(progressLine(progress)),
    ...(timeout === undefined ? {} : { timeout }),
  });
}

function openedJob(name: string): Job | undefined {
  const read = readNamed(name);
  if ("job" in read) return read.job;
  console.error(problemReport(name, read.problems));
  return undefined;
}

async function build(
  job: Job,
  files: readonly string[],
  runs: readonly NotebookRun[],
  checks: readonly CheckOutcome[],
  outDir: string,
): Promise<void> {
  const notebooks = files.flatMap((file, i): BookNotebook[] => {
    const notebook = runs[i]?.notebook;
    return notebook ? [{ name: basename(file, ".ipynb"), notebook }] : [];
  });
  await buildBook({
    title: job.case.name,
    job: job.name,
    ...(job.case.invented ? { introduction: inventedNotice } : {}),
    notebooks,
    formulas: [...formulaIndex().values()].map(({ declaration }) => declaration),
    checks,
    extraFiles: recipeFiles(recipeShown(notebooks.map(({ notebook }) => notebook)) ?? recipeOf(job)),
    outDir,
  });
}

const inventedNotice =
  "This case, its prices and its measurements are invented, to show what the notebooks do. Put your own in before you cut anything.";

function progressLine({ notebook, cell, of, ms }: Progress): string {
  return `${basename(notebook)}: cell ${cell} of ${of}, ${seconds(ms)}`;
}

function failureReport(failures: readonly Failure[]): string {
  const reports = failures.map(({ notebook, cell, message }) => {
    const place = cell ? `${notebook}, cell ${cell.number} (${cell.id})` : notebook;
    return `${place} failed:\n  ${message.replaceAll("\n", "\n  ")}`;
  });
  return [...reports, "the book was not built; a book built before is still there"].join("\n");
}

function seconds(milliseconds: number): string {
  return `${(milliseconds / 1000).toFixed(1)} s`;
}
