/** npm start -- [JOB] [NOTEBOOK...]: builds the book of a job, serves it to this machine and follows the builder. */
import { basename, dirname, join } from "node:path";
import { type LiveJob, openBrowser, projectFolder, serveBook } from "../book/index.js";
import { demoJob, jobFolder } from "../job/index.js";
import { BookMaker, type Built, bookArguments, exitCode, progressLine, reported } from "./book-of-job.js";
import { readNamed } from "./check.js";
import { follow } from "./follow.js";
import { usageOf } from "./help.js";

/**
 * Builds the book, serves it, and opens it where there is a browser. Whenever a file of the job or a notebook
 * is saved it builds anew, and open pages change where they stand. Runs until it is stopped.
 *
 * @param args name of the job, the demo job when there is none; notebooks, when not all are wanted; how long a cell
 * may take, such as --cell-time 300
 * @returns exit code: 1 when there was no book at first, 2 when something of the last one failed
 */
export async function start(args: readonly string[]): Promise<number> {
  const asked = bookArguments(args);
  if ("wrong" in asked) {
    console.error(`${asked.wrong}\n${usageOf("start")}`);
    return 1;
  }
  const [job = demoJob, ...files] = asked.names;
  let silent = false;
  const request = { job, ...asked.limits, ...(files.length > 0 && { files }) };
  const maker = new BookMaker(request, (progress) => silent || console.log(progressLine(progress)));
  try {
    const first = reported(await maker.build());
    if ("trouble" in first) return exitCode(first);
    silent = true;
    const notebooks = files.length > 0 ? files.map(dirname) : [join(projectFolder(), "notebooks")];
    const folder = jobFolder(job);
    const served = { name: basename(folder), folder, title: titleOf(job) };
    const last = await serveAndFollow(maker, first, served, [folder, ...new Set(notebooks)]);
    return exitCode(last);
  } finally {
    await maker.close();
  }
}

/** The name of a case that was read a moment ago, or else of its folder. */
function titleOf(name: string): string {
  const read = readNamed(name);
  return "job" in read ? read.job.case.name : name;
}

/** A book, and where it stands. */
type Book = Extract<Built, { readonly folder: string }>;

/** Until it is stopped; the last book then. */
async function serveAndFollow(
  maker: BookMaker,
  first: Book,
  job: LiveJob,
  sources: readonly string[],
): Promise<Book> {
  const stop = stopped();
  let built = 1;
  let book = first;
  const server = await serveBook(first.folder, { live: { built }, job });
  const rebuild = oneAtATime(async () => {
    const now = await maker.build().catch((error: Error): Built => ({ trouble: error.message }));
    reported(now);
    if ("folder" in now) {
      built += 1;
      book = now;
    }
    server.tell({ built, ...("trouble" in now && { trouble: now.trouble }) });
  });
  const following = await follow(sources, () => {
    server.tellSaved();
    return rebuild();
  });
  console.log(
    `\nread it at ${server.url}; it follows what you save\nchange the case at ${server.url}live\n(Ctrl+C stops)`,
  );
  openBrowser(server.url);
  await stop;
  following.stop();
  await server.close();
  return book;
}

/** Does work again when it is asked for while it is done, but once for all that ask meanwhile. */
function oneAtATime(work: () => Promise<void>): () => Promise<void> {
  let wanted = false;
  let running = false;
  return async () => {
    wanted = true;
    if (running) return;
    running = true;
    while (wanted) {
      wanted = false;
      await work();
    }
    running = false;
  };
}

function stopped(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
  });
}
