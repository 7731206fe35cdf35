/** Runs the notebooks on a job and builds its book; what `start` and `book` share. */
import { readFile } from "node:fs/promises";
import { basename, join, relative } from "node:path";
import {
  type BookNotebook,
  buildBook,
  type ExtraFile,
  type ExtraFolder,
  type Failure,
  liveFile,
  modulesFolder,
  type Notebook,
  type NotebookRun,
  NotebookRunner,
  type Progress,
  projectFolder,
  undrawnIn,
} from "../book/index.js";
import { triedRemedy } from "../improve/index.js";
import {
  firstPageOf,
  formulaIndex,
  labelsPage,
  labelsText,
  type Recipe,
  recipeMarkdown,
  recipeMime,
  recipeOf,
  recipePage,
  terms,
} from "../index.js";
import { demoJob, type Job } from "../job/index.js";
import type { DrawingFile } from "../true-scale/index.js";
import { problemReport, readNamed } from "./check.js";
import { drawingsOf } from "./drawings-of.js";
import { usageOf } from "./help.js";
import { bookFolder, notebooksOf, takenPlace } from "./places.js";
import { checksAside, type RunningChecks } from "./published-checks.js";

/** What to run, and where the book goes; each has its usual place. */
interface BookOfJob {
  /** Name of the job. Default: the demo job. */
  readonly job?: string | undefined;
  /** Notebook files. Default: all of notebooks/, in the order of their names. */
  readonly files?: readonly string[];
  /** Default: book/ with the job's name. */
  readonly outDir?: string;
  /** How long a cell may take, ms. Default: two minutes. */
  readonly timeout?: number;
}

/** A book that was built, with what of it failed; or why there is none: the previous one stays then. */
export type Built =
  | {
      /** Where it stands. */
      readonly folder: string;
      /** What failed, in words; absent when all is well. */
      readonly failed?: string;
    }
  | {
      /** In words. */
      readonly trouble: string;
    };

/**
 * npm run book -- [JOB] [--cell-time SECONDS]: builds the book of a job.
 *
 * @param args name of the job, the demo job when there is none; how long a cell may take
 * @returns exit code: 0 with all well, 1 with no book, 2 with a book of which something failed
 */
export async function book(args: readonly string[]): Promise<number> {
  const asked = bookArguments(args);
  if ("wrong" in asked) {
    console.error(`${asked.wrong}\n${usageOf("book")}`);
    return 1;
  }
  const [job] = asked.names;
  return exitCode(await bookOfJob({ job, ...asked.limits }));
}

/** 0 with all well, 1 with no book, 2 with a book of which something failed. */
export function exitCode(built: Built): number {
  if ("trouble" in built) return 1;
  return built.failed === undefined ? 0 : 2;
}

/** What `book` and `start` are asked for. */
type BookArguments =
  | {
      /** The job, and what follows it. */
      readonly names: readonly string[];
      /** How long a cell may take, where it was said. */
      readonly limits: Pick<BookOfJob, "timeout">;
    }
  | {
      /** What cannot be understood, and what was expected. */
      readonly wrong: string;
    };

/** Reads the arguments; `--cell-time` may stand anywhere, with a space or an equals sign before its seconds. */
export function bookArguments(args: readonly string[]): BookArguments {
  const words = args.flatMap((word) => (word.startsWith("--cell-time=") ? word.split("=") : [word]));
  const at = words.indexOf("--cell-time");
  const names = at < 0 ? words : words.toSpliced(at, 2);
  const stranger = names.find((name) => name.startsWith("-"));
  if (stranger !== undefined) return { wrong: `no option "${stranger}", expected --cell-time SECONDS` };
  if (at < 0) return { names, limits: {} };
  const said = words[at + 1] ?? "";
  const seconds = Number(said);
  return /^\d+(\.\d+)?$/.test(said) && seconds > 0
    ? { names, limits: { timeout: 1000 * seconds } }
    : { wrong: `--cell-time: found "${said}", expected seconds, such as --cell-time 300` };
}

/** Builds the book of a job, telling of every cell, and at the end of what failed, where and why. */
export async function bookOfJob(request: BookOfJob): Promise<Built> {
  const maker = new BookMaker(request, (progress) => console.log(progressLine(progress)));
  try {
    return reported(await maker.build());
  } finally {
    await maker.close();
  }
}

/** The same; tells what failed, or why there is no book. */
export function reported(built: Built): Built {
  const words = "trouble" in built ? built.trouble : built.failed;
  if (words !== undefined) console.error(words);
  return built;
}

/** Builds the book of one job, again and again: its kernels stay, and with them what they have worked out. */
export class BookMaker {
  readonly #request: BookOfJob;
  readonly #tell: (progress: Progress) => void;
  #checks: RunningChecks | undefined;
  #kernels: NotebookRunner | undefined;
  #closed = false;

  /** @param tell told of every cell that has run */
  constructor(request: BookOfJob, tell: (progress: Progress) => void) {
    this.#request = request;
    this.#tell = tell;
  }

  /** Builds the book as the files are now; once closed it builds none, and starts no kernel. */
  async build(): Promise<Built> {
    if (this.#closed) return { trouble: endedMeanwhile };
    const start = performance.now();
    const name = this.#request.job ?? demoJob;
    const read = readNamed(name);
    if ("problems" in read) return { trouble: problemReport(name, read.problems) };
    const outDir = this.#request.outDir ?? bookFolder(read.job);
    const taken = takenPlace(outDir);
    if (taken !== undefined) return { trouble: taken };
    const files = this.#request.files ?? (await notebooksOf(read.job));
    const resting = await restingOnTheBox(files);
    if (this.#closed) return { trouble: endedMeanwhile };
    if (files.length === 0) return { trouble: "no notebooks to run: notebooks/ is empty" };
    this.#checks ??= checksAside();
    this.#kernels ??= this.#newKernels(read.job);
    const runs = await this.#kernels.run(files, resting);
    if (this.#closed) return { trouble: endedMeanwhile };
    const failures = runs.flatMap((run) => run.failures);
    if (runs.every((run) => run.failures.some(({ cell }) => cell === undefined))) {
      return { trouble: [...failures.map(failureLine), noBook].join("\n") };
    }
    const lacking = await write(read.job, files, runs, this.#checks.outcomes, outDir);
    const place = relative(process.cwd(), outDir) || outDir;
    console.log(`built ${place} in ${seconds(performance.now() - start)}`);
    const failed = [...failures.map(failureLine), ...lacking];
    if (failed.length === 0) return { folder: outDir };
    return { folder: outDir, failed: [...failed, "all else is in the book"].join("\n") };
  }

  /** Ends what still runs. */
  async close(): Promise<void> {
    this.#closed = true;
    await Promise.all([this.#kernels?.close(), this.#checks?.stop()]);
  }

  #newKernels({ folder }: Job): NotebookRunner {
    const { timeout = 120_000 } = this.#request;
    return new NotebookRunner({
      concurrency: 2,
      keepKernels: true,
      cwd: join(projectFolder(), "notebooks"),
      env: { ...process.env, NODE_PATH: modulesFolder(), CASEWRIGHT_JOB: folder, CASEWRIGHT_BOOK: "1" },
      onProgress: this.#tell,
      timeout,
    });
  }
}

/** Why there is no book when its maker was closed. */
const endedMeanwhile = "the book was ended before it was built";

const asksOfTheBox =
  /(review\.(stiffness|strength|joints|box)|job\.(findings|worst|about|released))\b|\b(stiffnessTable|loadCaseTable|recipeOf)\b/;

/** The notebooks that ask of the case as joined boxes, which takes longest and which each kernel works out for itself. */
async function restingOnTheBox(files: readonly string[]): Promise<readonly string[]> {
  const texts = await Promise.all(files.map((file) => readFile(file, "utf8").catch(() => "")));
  return files.filter((_, i) => asksOfTheBox.test(texts[i] ?? ""));
}

/** Writes the book; what it then lacks, a sentence each. */
async function write(
  job: Job,
  files: readonly string[],
  runs: readonly NotebookRun[],
  running: RunningChecks["outcomes"],
  outDir: string,
): Promise<readonly string[]> {
  const notebooks = runs.map(
    ({ notebook }, i): BookNotebook => ({ name: basename(files[i] ?? "", ".ipynb"), notebook }),
  );
  const checks = await had("The page of published checks is left out", () => running);
  const recipe = await had("The recipe is left out", () => recipeOfBook(job, notebooks));
  const live = await had("The page to change the case is left out", () =>
    liveFile({ ...job, title: job.case.name }, { book: "index.html" }),
  );
  const drawn = await had("The drawings are left out", () => drawingsOf(job));
  const lacking = [checks, recipe, live, drawn].flatMap((part) => ("lacking" in part ? part.lacking : []));
  await buildBook({
    title: job.case.name,
    job: job.name,
    ...(job.case.invented ? { introduction: inventedNotice } : {}),
    lacking,
    firstPage: (findings) => firstPageOf(job, findings, triedRemedy(job)),
    units: job.case.units,
    soldNames: soldNamesOf(job),
    notebooks,
    glossary: terms,
    formulas: [...formulaIndex().values()].map(({ declaration }) => declaration),
    checks: "lacking" in checks ? [] : checks.had,
    extraFiles: "lacking" in recipe ? [] : recipeFiles(recipe.had),
    ...("lacking" in live ? {} : { livePage: live.had }),
    extraFolders: "lacking" in drawn ? [] : [drawingsFolder(drawn.had)],
    outDir,
  });
  return [...lacking, ...undrawn(notebooks)];
}

/** Names of the stock tables that have a figure in them. */
function soldNamesOf({ stock }: Job): readonly string[] {
  const names = Object.values(stock).flatMap((rows: readonly { readonly name: string }[]) =>
    rows.map(({ name }) => name),
  );
  return [...new Set(names)].filter((name) => /\d/.test(name));
}

/** A part of the book, or a sentence that says why it is left out. */
async function had<Part>(
  without: string,
  work: () => Part | Promise<Part>,
): Promise<{ readonly had: Part } | { readonly lacking: string }> {
  try {
    return { had: await work() };
  } catch (error) {
    return { lacking: `${without}: ${(error as Error).message}` };
  }
}

function recipeOfBook(job: Job, notebooks: readonly BookNotebook[]): Recipe {
  return recipeShown(notebooks.map(({ notebook }) => notebook)) ?? recipeOf(job);
}

/** What cells gave and no page could draw. */
function undrawn(notebooks: readonly BookNotebook[]): string[] {
  return notebooks.flatMap((one) => undrawnIn(one).map((fault) => `${one.name}: ${fault}`));
}

const inventedNotice =
  "This case, its prices and its measurements are invented, to show what the notebooks do. Put your own in before you cut anything.";

/** A recipe to print and to edit, as files of the book. */
function recipeFiles(recipe: Recipe): ExtraFile[] {
  return [
    { file: "recipe-to-print.html", title: "The recipe, to print", text: recipePage(recipe) },
    { file: "recipe.md", title: "The recipe as text, to edit", text: recipeMarkdown(recipe) },
    {
      file: "labels-to-print.html",
      title: "Labels for the pieces, to print",
      text: labelsPage(recipe.title, recipe.labels),
    },
    {
      file: "labels.txt",
      title: "Labels for the pieces, as text",
      text: labelsText(recipe.title, recipe.labels),
    },
    { file: "as-built.csv", title: "What you measure, to fill in", text: recipe.asBuilt },
  ];
}

/** The drawings at true scale, as a folder of the book. */
function drawingsFolder(files: readonly DrawingFile[]): ExtraFolder {
  return { folder: "drawings", title: "Drawings at true scale: SVG, PDF, DXF", files };
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

const noBook = "no cell could be run, so there is no new book; a book built before is still there";

function failureLine({ notebook, cell, message }: Failure): string {
  const place = cell ? `${notebook}, cell ${cell.number} (${cell.id})` : notebook;
  return `${place} failed:\n  ${message.replaceAll("\n", "\n  ")}`;
}

function seconds(milliseconds: number): string {
  return `${(milliseconds / 1000).toFixed(1)} s`;
}
