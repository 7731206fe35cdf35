/** The one sentence of a finding has the number that matters beside its limit: on the demo and five other jobs. */
import { expect, test } from "vitest";
import type { Design } from "../../lib/design/index.js";
import { type Finding, reviewCase, styleOf } from "../../lib/findings/index.js";
import { openJob } from "../../lib/job/index.js";
import { findingView } from "../../lib/page/index.js";
import { mostWords, shortAnswer } from "../../lib/page/short-answer.js";
import { crateJob } from "../design/crate-job.js";
import { lidAndDrawers } from "../design/lid-and-drawers-job.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf } from "../design/small-job.js";
import { otherJob } from "../other-jobs.js";

type Reviewed = Pick<Design, "case"> & { readonly review: { readonly findings: readonly Finding[] } };

const reviewed = (design: Design): Reviewed => ({ ...design, review: reviewCase(design) });

const jobs: readonly (readonly [string, () => Promise<Reviewed> | Reviewed])[] = [
  ["the demo", () => openJob("soil-lab")],
  ["its draft", () => openJob("soil-lab-draft")],
  ["a bare box", async () => openJob(await otherJob("bare-box"))],
  ["a crate", () => reviewed(designOf(crateJob))],
  ["a trunk", () => reviewed(designOf(plainTrunk))],
  ["a chest with a lid and drawers", () => reviewed(designOf(lidAndDrawers))],
];

/** Numbers of a sentence: "13-1/2", "1 450", "0.5 %" as a share. */
function numbersIn(text: string): readonly number[] {
  return [...text.matchAll(/(?:(\d+)-)?(\d+)\/(\d+)|(\d[\d\u202f]*(?:\.\d+)?)([ \u00a0]%)?/g)].map(
    ([, whole = "0", over, under, plain = "", share]) =>
      over === undefined
        ? Number(plain.replaceAll("\u202f", "")) / (share ? 100 : 1)
        : Number(whole) + Number(over) / Number(under),
  );
}

/** Whether two of the numbers, or one that is a share, tell how much of the limit is used. */
function tellsUse(numbers: readonly number[], used: number): boolean {
  // Of a small use the words are rounded to what anybody measures.
  const near = (one: number): boolean => Math.abs(one - used) <= Math.max(0.06 * used, 0.03);
  return numbers.some(near) || numbers.some((a) => numbers.some((b) => b !== 0 && near(a / b)));
}

test.each(jobs)("of %s", { timeout: 600_000 }, async (_, job) => {
  const { review, case: described } = await job();
  const silent = review.findings.flatMap((finding) => {
    const view = findingView(finding, styleOf(described));
    const short = shortAnswer(view);
    const tooLong = short.split(" ").length > mostWords ? [`too long: ${short}`] : [];
    const { ratio, demand } = view;
    const isAsked = ratio !== undefined && ratio > 0 && demand !== undefined;
    return isAsked && !tellsUse(numbersIn(short), ratio)
      ? [...tooLong, `${finding.id} (${ratio.toPrecision(3)}): ${short}`]
      : tooLong;
  });
  expect(silent.join("\n")).toBe("");
});
