/** The first page of cases of many kinds: how many words it has, and how many screens it takes. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bookStyles } from "../../lib/book/book-styles.js";
import { contentsPage } from "../../lib/book/contents-page.js";
import { chapterAnswers } from "../../lib/command/reference/cases/chapter-answers.js";
import type { Design } from "../../lib/design/index.js";
import { reviewCase, styleOf } from "../../lib/findings/index.js";
import { triedRemedy } from "../../lib/improve/index.js";
import { type Job, openJob } from "../../lib/index.js";
import { findingView, firstPageOf, pageStyles } from "../../lib/page/index.js";
import { noChromium, startChromium } from "../chromium.js";
import { crateJob } from "../design/crate-job.js";
import { lidAndDrawers } from "../design/lid-and-drawers-job.js";
import { plainTrunk } from "../design/plain-trunk.js";
import { designOf } from "../design/small-job.js";
import { trayJob } from "../design/tray-job.js";
import { otherJob } from "../other-jobs.js";
import { barriersOfAll, cutAtTheSide, headingFaults, sidewaysScroll, unfold, zoomed } from "../reader.js";

function jobOf(design: Design): Job {
  const review = reviewCase(design);
  const job: Job = { ...design, name: "job", folder: "job", texts: {}, review, with: () => job };
  return job;
}

/** Of the chapters, in their order. */
const titles: readonly string[] = [
  "Measure your stock",
  "Will thin ply stay stiff?",
  "Will the joints hold?",
  "Which adhesive and laminate?",
  "What to buy, and how to cut it",
  "Can we lift, roll, tip and carry it?",
  "Does what is inside stay put, cool and powered?",
  "What it costs, and when it pays",
  "The recipe",
];

/** The first page of a job as its book has it, with a line for each chapter. */
function pageOf(job: Job): string {
  const style = styleOf(job.case);
  const findings = job.review.findings.map((finding) => findingView(finding, style));
  const chapters = chapterAnswers(job).map(([name, answer], i) => ({
    name,
    title: titles[i] ?? name,
    question: undefined,
    answer: { kind: "answer" as const, text: answer() },
    findings: i === 0 ? findings : [],
    faults: [],
  }));
  const frame = { title: job.case.name, job: "job", chapters: [], others: [] };
  // A job without files cannot be changed.
  const tried = "case.yaml" in job.texts ? triedRemedy(job) : undefined;
  const firstPage = (): ReturnType<typeof firstPageOf> => firstPageOf(job, findings, tried);
  const content = contentsPage(frame, chapters, { firstPage, livePage: "yes" });
  return `<!doctype html><html lang="en"><title>A case</title><meta name="viewport" content="width=device-width"><style>${pageStyles}${bookStyles}</style><body><main>${content}</main>`;
}

const jobs: readonly (readonly [string, () => Promise<Job> | Job])[] = [
  ["the demo", () => openJob("soil-lab")],
  ["its draft", () => openJob("soil-lab-draft")],
  ["a bare box", async () => openJob(await otherJob("bare-box"))],
  ["a tower of six", async () => openJob(await otherJob("tower-of-six"))],
  ["a crate", () => jobOf(designOf(crateJob))],
  ["a tray", () => jobOf(designOf(trayJob))],
  ["a trunk", () => jobOf(designOf(plainTrunk))],
  ["a chest with a lid and drawers", () => jobOf(designOf(lidAndDrawers))],
];

describe.skipIf(noChromium)("the first page above everything that was asked", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startChromium();
  }, 600_000);
  afterAll(() => browser?.close());

  test.each(jobs)(
    "of %s has no barrier light or dark, unfolded at 200 %, its headings in order, and nothing cut",
    async (_, job) => {
      const page = await browser.newPage({ viewport: zoomed });
      await page.setContent(pageOf(await job()));
      await unfold(page);
      expect(await headingFaults(page)).toEqual([]);
      expect(await sidewaysScroll(page)).toBe(0);
      expect(await cutAtTheSide(page)).toEqual([]);
      expect(await barriersOfAll(page)).toEqual([]);
      await page.close();
    },
    900_000,
  );

  test.each(jobs)(
    "of %s has at most 350 words, and stands on two screens or three of a phone",
    async (_, job) => {
      const page = await browser.newPage();
      await page.setContent(pageOf(await job()));
      const texts = await page.locator("h1, .cw-first, .cw-chapters").allInnerTexts();
      expect(texts.length).toBeGreaterThanOrEqual(3);
      expect(texts.join(" ").trim().split(/\s+/).length).toBeLessThanOrEqual(350);
      for (const [width, height, screens] of [
        [1200, 900, 2],
        [390, 844, 3],
      ] as const) {
        await page.setViewportSize({ width, height });
        const begins = (await page.locator(".cw-chapters").boundingBox())?.y ?? Number.POSITIVE_INFINITY;
        expect(begins / height).toBeLessThan(screens);
      }
      await page.close();
    },
    900_000,
  );
});
