/** Runs the notebooks on a job and builds its book; what `start` and `book` share. */
import { basename, join, relative } from "node:path";
import {
  type BookNotebook,
  buildBook,
  type ExtraFile,
  type Failure,
  type Notebook,
  type NotebookRun,
  NotebookRunner,
  type Progress,
  projectFolder,
} from "../book/index.js";
import {
  type CheckOutcome,
  formulaIndex,
  type Recipe,
  recipeMarkdown,
  recipeMime,
  recipeOf,
  recipePage,
} from "../index.js";
import { demoJob, type Job } from "../job/index.js";
import { problemReport, readNamed } from "./check.js";
import { notebookFiles } from "./notebooks.js";
import { checksAside, type RunningChecks } from "./published-checks.js";

/** What to run, and where the book goes; each has its usual place. */
interface BookOfJob {
  /** Name of the job. Default: the demo job. */
  readonly job?: string | undefined;
  /** Notebook files. Default: all of notebooks/, in the order of their names. */
  readonly files?: readonly string[];
  /** Default: book/ with the job's name. */
  readonly outDir?: string;
  /** How long a cell may take, ms. Default: a minute. */
  readonly timeout?: number;
}

/** A book that was built, or why it was not: the previous one stays then. */
export type Built = { readonly folder: string } | { readonly trouble: string };

/**
 * npm run book -- JOB: builds the book of a job.
 *
 * @param args name of the job; the demo job when there is none
 * @returns exit code: 1 when it could not be built
 */
export async function book([job]: readonly string[]): Promise<number> {
  return (await bookOfJob({ job })) === undefined ? 1 : 0;
}

/**
 * Builds the book of a job, telling of every cell. When a file or a cell is wrong it says where and why,
 * and the previous book stays.
 *
 * @returns the book's folder; undefined when it could not be built
 */
export async function bookOfJob(request: BookOfJob): Promise<string | undefined> {
  const maker = new BookMaker(request, (progress) => console.log(progressLine(progress)));
  try {
    return reported(await maker.build());
  } finally {
    await maker.close();
  }
}

/** The folder of what was built; tells why there is none. */
export function reported(built: Built): string | undefined {
  return "folder" in built ? built.folder : void console.error(built.trouble);
}

/** Builds the book of one job, again and again: its kernels stay, and with them what they have worked out. */
export class BookMaker {
  readonly #request: BookOfJob;
  readonly #tell: (progress: Progress) => void;
  #checks: RunningChecks | undefined;
  #kernels: NotebookRunner | undefined;

  /** @param tell told of every cell that has run */
  constructor(request: BookOfJob, tell: (progress: Progress) => void) {
    this.#request = request;
    this.#tell = tell;
  }

  /**
   * Builds the book as the files are now.
   *
   * @throws Error when a published check cannot be run
   */
  async build(): Promise<Built> {
    const start = performance.now();
    const name = this.#request.job ?? demoJob;
    const read = readNamed(name);
    if ("problems" in read) return { trouble: problemReport(name, read.problems) };
    const files = this.#request.files ?? (await notebookFiles());
    if (files.length === 0) return { trouble: "no notebooks to run: notebooks/ is empty" };
    this.#checks ??= checksAside();
    this.#kernels ??= this.#newKernels(read.job);
    const runs = await this.#kernels.run(files);
    const failures = runs.flatMap(({ failure }) => failure ?? []);
    if (failures.length > 0) return { trouble: failureReport(failures) };
    const outDir = this.#request.outDir ?? join(projectFolder(), "book", read.job.name);
    await write(read.job, files, runs, await this.#checks.outcomes, outDir);
    const place = relative(process.cwd(), outDir) || outDir;
    console.log(`built ${place} in ${seconds(performance.now() - start)}`);
    return { folder: outDir };
  }

  /** Ends what still runs. */
  async close(): Promise<void> {
    await Promise.all([this.#kernels?.close(), this.#checks?.stop()]);
  }

  #newKernels({ folder }: Job): NotebookRunner {
    const { timeout } = this.#request;
    return new NotebookRunner({
      concurrency: 2,
      keepKernels: true,
      cwd: join(projectFolder(), "notebooks"),
      env: { ...process.env, CASEWRIGHT_JOB: folder, CASEWRIGHT_BOOK: "1" },
      onProgress: this.#tell,
      ...(timeout === undefined ? {} : { timeout }),
    });
  }
}

async function write(
  job: Job,
  files: readonly string[],
  runs: readonly NotebookRun[],
  checks: readonly CheckOutcome[],
  outDir: string,
): Promise<void> {
  const notebooks = runs.map(
    ({ notebook }, i): BookNotebook => ({ name: basename(files[i] ?? "", ".ipynb"), notebook }),
  );
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

/** A recipe to print and to edit, as files of the book. */
function recipeFiles(recipe: Recipe): ExtraFile[] {
  return [
    { file: "recipe-to-print.html", title: "The recipe, to print", text: recipePage(recipe) },
    { file: "recipe.md", title: "The recipe as text, to edit", text: recipeMarkdown(recipe) },
  ];
}

/** The recipe that one of the executed notebooks showed; nothing is worked out twice. */
function recipeShown(notebooks: readonly Notebook[]): Recipe | undefined {
  const outputs = notebooks.flatMap(({ cells }) =>
    cells.flatMap((cell) => (cell.cell_type === "code" ? cell.outputs : [])),
  );
  const shown = outputs.find((output) => "data" in output && recipeMime in output.data);
  return shown && "data" in shown ? (shown.data[recipeMime] as Recipe) : undefined;
}

/** One line for a cell that has run. */
export function progressLine({ notebook, cell, of, ms }: Progress): string {
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
