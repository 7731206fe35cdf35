/** npm start -- JOB [NOTEBOOK...]: builds the book of a job, serves it to this machine and follows the builder. */
import { dirname, join } from "node:path";
import { openBrowser, projectFolder, serveBook } from "../book/index.js";
import { demoJob, jobFolder } from "../job/index.js";
import { BookMaker, type Built, progressLine, reported } from "./book-of-job.js";
import { follow } from "./follow.js";

/**
 * Builds the book, serves it, and opens it where there is a browser. Whenever a file of the job or a notebook
 * is saved it builds anew, and open pages change where they stand. Runs until it is stopped.
 *
 * @param args name of the job, the demo job when there is none; notebooks, when not all are wanted
 * @returns exit code: 1 when the book could not be built at first
 */
export async function start([job = demoJob, ...files]: readonly string[]): Promise<number> {
  let silent = false;
  const request = { job, ...(files.length > 0 && { files }) };
  const maker = new BookMaker(request, (progress) => silent || console.log(progressLine(progress)));
  try {
    const folder = reported(await maker.build());
    if (folder === undefined) return 1;
    silent = true;
    const notebooks = files.length > 0 ? files.map(dirname) : [join(projectFolder(), "notebooks")];
    await serveAndFollow(maker, folder, [jobFolder(job), ...new Set(notebooks)]);
    return 0;
  } finally {
    await maker.close();
  }
}

/** Until it is stopped. */
async function serveAndFollow(maker: BookMaker, folder: string, sources: readonly string[]): Promise<void> {
  const stop = stopped();
  let built = 1;
  const server = await serveBook(folder, { live: { built } });
  const rebuild = oneAtATime(async () => {
    const now = await maker.build().catch((error: Error): Built => ({ trouble: error.message }));
    if (reported(now) !== undefined) built += 1;
    server.tell({ built, ...("trouble" in now && { trouble: now.trouble }) });
  });
  const following = await follow(sources, rebuild);
  console.log(`\nread it at ${server.url}; it follows what you save\n(Ctrl+C stops)`);
  openBrowser(server.url);
  await stop;
  following.stop();
  await server.close();
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
