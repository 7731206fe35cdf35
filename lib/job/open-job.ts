/** From a job's folder to its design and review: the only place where its files are read. */
import { host } from "#host";
import {
  applyChange,
  type Change,
  caseFile,
  type Design,
  designReader,
  readDesign,
  type Texts,
  tableFiles,
} from "../design/index.js";
import { type Review, reviewCase } from "../findings/index.js";
import type { FolderContents } from "../host/contract.js";
import { didYouMean, type Problem, ProblemsError } from "../problem.js";
import { isJobName, jobNameExpected } from "./job-name.js";

/** A job, read: its case, what can be bought, what was measured, every part, and what a review says. */
export interface Job extends Design {
  /** Name of its folder. */
  readonly name: string;
  /** Absolute path. */
  readonly folder: string;
  /** The texts of its files, by file name, as they were read or changed. */
  readonly texts: Texts;
  /** Worked out part by part, when first asked for. */
  readonly review: Review;
  /**
   * The job with its files changed one change after another, in memory: nothing is written.
   *
   * @throws RangeError for a place that is not there or not only one
   * @throws ProblemsError with every problem that the changed files have
   * @example job.with(set("upper.front.display window.width", "16")).review
   */
  with(...changes: readonly Change[]): Job;
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
export function openJob(name: string = host.files.named() ?? demoJob): Job {
  const folder = jobFolder(name);
  const files = filesIn(folder);
  const said = JSON.stringify(files);
  const before = lastOpened.get(folder);
  if (before && before.said === said) return before.job;
  const read = jobOf(folder, files, readerOf(folder));
  if ("problems" in read) throw new ProblemsError(read.problems);
  lastOpened.set(folder, { said, job: read.job });
  return read.job;
}

/** Jobs as last opened, with what their folders said: while they say the same, what was worked out stands. */
const lastOpened = new Map<string, { readonly said: string | undefined; readonly job: Job }>();

/** The reader of each folder: what an edit leaves as it was stays the same object. */
const readers = new Map<string, typeof readDesign>();

function readerOf(folder: string): typeof readDesign {
  const reader = readers.get(folder) ?? designReader();
  readers.set(folder, reader);
  return reader;
}

/** A job, or everything that is wrong with it. */
export type ReadJob = { readonly job: Job } | { readonly problems: readonly Problem[] };

/** Reads and checks a job's folder: the job, or every problem. */
export function readJob(folder: string): ReadJob {
  return jobOf(folder, filesIn(folder), readDesign);
}

/** Reads and checks texts as the files of a folder's job, whatever stands there: the job, or every problem. */
export function jobOfTexts(folder: string, texts: Texts): ReadJob {
  return jobOf(folder, { names: Object.keys(texts), texts, faults: {} }, readerOf(folder));
}

const ownFiles: readonly string[] = [caseFile, ...Object.values(tableFiles)];

function filesIn(folder: string): FolderContents | undefined {
  return host.files.read(folder, ownFiles);
}

/**
 * A job in memory, from the texts of its files.
 *
 * @param read what was read of the same job before stays the same object
 */
export function jobFromTexts(name: string, texts: Texts, read: typeof readDesign): ReadJob {
  return jobOf(name, { names: Object.keys(texts), texts, faults: {} }, read);
}

function jobOf(folder: string, files: FolderContents | undefined, read: typeof readDesign): ReadJob {
  if (!files) return { problems: [{ file: folder, expected: "a folder with case.yaml and its tables" }] };
  const given = read(files.texts);
  const ofFiles = [...unreadable(files), ...strangeTables(files.names)];
  if ("problems" in given) {
    return { problems: [...given.problems.filter(({ file }) => !(file in files.faults)), ...ofFiles] };
  }
  if (ofFiles.length > 0) return { problems: ofFiles };
  const { design } = given;
  const changed = (...changes: readonly Change[]): Job => {
    const { texts } = applyChange(files.texts, ...changes);
    const again = jobOf(folder, { ...files, texts }, read);
    if ("problems" in again) throw new ProblemsError(again.problems);
    return again.job;
  };
  const job = {
    name: host.files.nameOf(folder),
    folder,
    texts: files.texts,
    ...design,
    review: reviewCase(design),
    with: changed,
  };
  return { job };
}

function unreadable({ faults }: FolderContents): Problem[] {
  return Object.entries(faults).map(([file, expected]) => ({ file, expected }));
}

/** A table under a name that nothing reads is most likely misspelt, or was not saved as text. */
function strangeTables(names: readonly string[]): Problem[] {
  const own = ownFiles.map((file) => file.toLowerCase());
  return names
    .filter((file) => /^[^.~].*\.(csv|ya?ml|tsv|xlsx?|ods|numbers)$/i.test(file) && !ownFiles.includes(file))
    .map((file) => {
      const asText = ownFiles[own.indexOf(`${file.replace(/\.\w+$/, "").toLowerCase()}.csv`)];
      const expected =
        asText === undefined
          ? `a file among ${ownFiles.join(", ")}${didYouMean(file, ownFiles)}`
          : `this table as ${asText}, saved as CSV`;
      return { file, expected };
    });
}

/**
 * The folder of a job.
 *
 * @throws ProblemsError for a name that could lead out of data/
 */
export function jobFolder(name: string): string {
  if (/[\\/]/.test(name)) return host.files.resolve(name);
  if (isJobName(name)) return host.files.inside(dataFolder(), name);
  throw new ProblemsError([{ file: "data", column: "job", value: name, expected: jobNameExpected }]);
}

/** The folder in which jobs live: the project's data/, or where the library is installed the folder one stands in. */
export function dataFolder(): string {
  return host.files.home();
}
