/** Laws of proposals: on generated boxes each holds again from its written files, and what is locked stays. */
import { mkdtemp, readFile, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { graveTiers, improve, mayFail, textsWith } from "../../lib/improve/index.js";
import { type Job, openJob } from "../../lib/job/index.js";
import { otherJob } from "../other-jobs.js";

/** A bare box of other sizes, pushed more or less hard, the same for the same seed. */
async function generatedBox(seed: number, more = ""): Promise<Job> {
  const between = (low: number, high: number, step: number): number =>
    low + Math.round(((high - low) * ((seed * step) % 11)) / 10);
  const folder = await otherJob("bare-box");
  const file = join(folder, "case.yaml");
  const size = `{ width: ${between(450, 700, 3)}, depth: ${between(350, 500, 5)}, height: ${between(400, 550, 7)} }`;
  const text = (await readFile(file, "utf8"))
    .replace("{ width: 600, depth: 400, height: 500 }", size)
    .replace("push: 100 N", `push: ${between(25, 60, 4)} N`);
  await writeFile(file, `${text}${more}`);
  return openJob(folder);
}

function failingOf({ review }: Job): readonly string[] {
  return review.findings.filter((one) => graveTiers.includes(one.tier) && mayFail(one)).map(({ id }) => id);
}

test("a proposal holds again in files that are written and read anew", async () => {
  const tried = [1, 2, 3].map(async (seed) => {
    const job = await generatedBox(seed);
    const { designs, failing } = await improve(job, { seconds: 60, most: 2 });
    expect(failing.map(({ id }) => id).sort()).toEqual([...failingOf(job)].sort());
    for (const { options, measures } of designs) {
      const folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
      const texts = Object.entries(textsWith(job, options));
      for (const [name, text] of texts) await writeFile(join(folder, name), text);
      const again = openJob(folder);
      expect([seed, failingOf(again)]).toEqual([seed, []]);
      expect(again.review.bill.total.amount).toBeCloseTo(measures.cost, 6);
    }
    return designs.length;
  });
  // A push that nothing known withstands leaves a box without a proposal.
  const counts = await Promise.all(tried);
  expect(counts.reduce((sum, count) => sum + count, 0)).toBeGreaterThan(1);
}, 900_000);

test("what is locked stays, in the nearest too", async () => {
  const job = await generatedBox(4, "keep: [demands, sections]\n");
  const { designs, nearest } = await improve(job, { seconds: 60, most: 2 });
  for (const design of [...designs, ...(nearest ? [nearest] : [])]) {
    expect(design.job.case.demands).toEqual(job.case.demands);
    expect(design.job.case.sections).toEqual(job.case.sections);
  }
}, 900_000);
