/** One page of a job, written as a file: what the live page and the page to pass on have in common. */
import { mkdir, writeFile } from "node:fs/promises";
import { dirname, join, relative, resolve } from "node:path";
import { demoJob, type Job } from "../job/index.js";
import { problemReport, readNamed } from "./check.js";
import { fileArguments } from "./file-arguments.js";
import { usageOf } from "./help.js";
import { bookFolder } from "./places.js";

/** Which page is written. */
interface PageOfJob {
  /** The command that was typed. */
  readonly command: string;
  /** What the file is called after the job, where nobody says where to write. */
  readonly ending: string;
  /** What is told of the file once it is written. */
  readonly told: string;
  /** The page as text. */
  pageOf(job: Job): string;
}

/**
 * Writes a page of a job.
 *
 * @param args name of the job, the demo job when there is none; where to write
 * @returns exit code: 1 when there is no page
 */
export async function writtenPage(
  args: readonly string[],
  { command, ending, told, pageOf }: PageOfJob,
): Promise<number> {
  const asked = fileArguments(args);
  if (!asked) {
    console.error(usageOf(command));
    return 1;
  }
  const { name = demoJob, out } = asked;
  const read = readNamed(name);
  if ("problems" in read) {
    console.error(problemReport(name, read.problems));
    return 1;
  }
  const { job } = read;
  const file =
    out === undefined ? join(dirname(bookFolder(job)), `${job.name}-${ending}.html`) : resolve(out);
  await mkdir(dirname(file), { recursive: true });
  await writeFile(file, pageOf(job));
  console.log(`wrote ${relative(process.cwd(), file)}; ${told}`);
  return 0;
}
