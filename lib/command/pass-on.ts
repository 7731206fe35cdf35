/** npm run pass-on -- [JOB] [--out FILE]: the case with its answers as one file for somebody who has other sheets. */
import { liveFile } from "../book/index.js";
import type { Job } from "../job/index.js";
import { answerView, type PassedOn, totalsOf } from "../live/index.js";
import { writtenPage } from "./page-of-job.js";

/**
 * Writes a live page that shows at once what the case answered here, and works it out anew wherever it is opened.
 *
 * @param args name of the job, the demo job when there is none; where to write
 * @returns exit code: 1 when there is no file
 */
export function passOn(args: readonly string[]): Promise<number> {
  return writtenPage(args, {
    command: "pass-on",
    ending: "to-pass-on",
    told: "whoever opens it needs nothing else",
    pageOf: (job) => liveFile({ ...job, title: job.case.name }, { passedOn: answersOf(job) }),
  });
}

function answersOf(job: Job): PassedOn {
  const style = { system: job.case.units };
  return {
    answers: job.review.findings.map((one) => answerView(one, style)),
    totals: totalsOf(job, job.review),
  };
}
