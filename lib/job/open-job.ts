/** From a job's folder to its design and review: the only place where its files are read. */
import { readdirSync, readFileSync, statSync } from "node:fs";
import { basename, join, resolve } from "node:path";
import { caseFile, type Design, readDesign, tableFiles } from "../design/index.js";
import { type Problem, ProblemsError } from "../problem.js";
import { type Review, reviewCase } from "../review/index.js";
import { dataFolder, isJobName, jobNameExpected } from "./job-name.js";

/** A job, read: its case, what can be bought, what was measured, every part, and what a review says. */
export interface Job extends Design {
  readonly name: string;
  /** Absolute path. */
  readonly folder: string;
  /** Worked out part by part, when first asked for. */
  readonly review: Review;
}

/** The job that is opened when none is named. */
export const demoJob = "soil-lab";

/**
 * Opens a job: the same one again while its files have not changed.
 *
 * @param name a folder of data/, or a path to a folder (anything with a slash in it); default is what
 * CASEWRIGHT_JOB names, else the demo job
 * @throws ProblemsError with every problem of its files
 * @example const { case: soilLab, parts } = openJob("soil-lab");
 */
export function openJob(name: string = process.env.CASEWRIGHT_JOB || demoJob): Job {
  const folder = jobFolder(name);
  const said = saidIn(folder);
  const before = lastOpened.get(folder);
  if (before?.said === said) return before.job;
  const read = readJob(folder);
  if ("problems" in read) throw new ProblemsError(read.problems);
  lastOpened.set(folder, { said, job: read.job });
  return read.job;
}

/** Jobs as last opened, with what their folders said: while they say the same, what was worked out stands. */
const lastOpened = new Map<string, { readonly said: string; readonly job: Job }>();

/** The names of a folder's files, and what those of a job say. */
function saidIn(folder: string): string {
  return isFolder(folder) ? JSON.stringify([readdirSync(folder), textsIn(folder)]) : "";
}

const jobFiles: readonly string[] = [caseFile, ...Object.values(tableFiles)];

function textsIn(folder: string): Record<string, string> {
  const present = jobFiles.filter((file) => isFile(join(folder, file)));
  return Object.fromEntries(present.map((file) => [file, readFileSync(join(folder, file), "utf8")]));
}

/** Reads and checks a job's folder: the job, or every problem. */
export function readJob(folder: string): { readonly job: Job } | { readonly problems: readonly Problem[] } {
  if (!isFolder(folder)) {
    return { problems: [{ file: folder, expected: "a folder with case.yaml and its tables" }] };
  }
  const read = readDesign(textsIn(folder));
  const strangers = strangeTables(folder);
  if ("problems" in read) return { problems: [...read.problems, ...strangers] };
  if (strangers.length > 0) return { problems: strangers };
  const { design } = read;
  return { job: { name: basename(folder), folder, ...design, review: reviewCase(design) } };
}

function isFolder(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
}

function isFile(path: string): boolean {
  return statSync(path, { throwIfNoEntry: false })?.isFile() ?? false;
}

/** A table under a name that nothing reads is most likely misspelt. */
function strangeTables(folder: string): Problem[] {
  return readdirSync(folder)
    .filter((file) => /\.(csv|ya?ml)$/i.test(file) && !jobFiles.includes(file))
    .map((file) => ({ file, expected: `a file among ${jobFiles.join(", ")}` }));
}

/**
 * The folder of a job.
 *
 * @throws ProblemsError for a name that could lead out of data/
 */
export function jobFolder(name: string): string {
  if (/[\\/]/.test(name)) return resolve(name);
  if (isJobName(name)) return join(dataFolder(), name);
  throw new ProblemsError([{ file: "data", column: "job", value: name, expected: jobNameExpected }]);
}
