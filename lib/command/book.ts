import { bookOfJob } from "./book-of-job.js";

/**
 * npm run book -- JOB: builds the book of a job.
 *
 * @param args name of the job; the demo job when there is none
 * @returns exit code: 1 when it could not be built
 */
export async function book([job]: readonly string[]): Promise<number> {
  return (await bookOfJob({ job })) === undefined ? 1 : 0;
}
