import { openBrowser, serveBook } from "../book/index.js";
import { bookOfJob } from "./book-of-job.js";

/**
 * npm start -- JOB: builds the book of a job, serves it to this machine, and opens it where there is a
 * browser. Runs until it is stopped.
 *
 * @param args name of the job; the demo job when there is none
 * @returns exit code: 1 when the book could not be built
 */
export async function start([job]: readonly string[]): Promise<number> {
  const folder = await bookOfJob({ job });
  if (folder === undefined) return 1;
  const server = await serveBook(folder);
  console.log(`\nread it at ${server.url}\n(Ctrl+C stops)`);
  openBrowser(server.url);
  await stopped();
  await server.close();
  return 0;
}

function stopped(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => resolve());
  });
}
