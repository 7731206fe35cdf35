/** npm run live -- [JOB] [--out FILE]: the live page of a job as one file that opens from disk. */
import { liveFile } from "../book/index.js";
import { writtenPage } from "./page-of-job.js";

/**
 * Writes the live page of a job.
 *
 * @param args name of the job, the demo job when there is none; where to write
 * @returns exit code: 1 when there is no page
 */
export function live(args: readonly string[]): Promise<number> {
  return writtenPage(args, {
    command: "live",
    ending: "live",
    told: "it opens from disk and asks nothing of any network",
    pageOf: (job) => liveFile({ ...job, title: job.case.name }),
  });
}
