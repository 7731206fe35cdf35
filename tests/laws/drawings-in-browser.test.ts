/**
 * Every drawing of every test job as a browser sets it, wide and on a phone: no words lie on other words, none are cut off,
 * all can be read, and what must be scrolled says so.
 */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Design } from "../../lib/design/index.js";
import { type Review, reviewCase } from "../../lib/findings/index.js";
import { openJob, readJob, recipeOf } from "../../lib/job/index.js";
import { type DrawingView, pageStyles, pictured, picturedView, renderView } from "../../lib/page/index.js";
import { noChromium, startChromium } from "../chromium.js";
import { crateJob } from "../design/crate-job.js";
import { lidAndDrawers } from "../design/lid-and-drawers-job.js";
import { designOf, rolling, smallJob } from "../design/small-job.js";
import { otherJob } from "../other-jobs.js";

const patient = { timeout: 1_800_000 };

/** What is drawn of a job. */
type Reviewed = Design & { readonly review: Review };

function reviewed(texts: Readonly<Record<string, string>>): Reviewed {
  const design = designOf(texts);
  return { ...design, review: reviewCase(design) };
}

async function other(name: "bare-box" | "tower-of-six"): Promise<Reviewed> {
  const read = readJob(await otherJob(name));
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return read.job;
}

/** The questions whose pictures need no joined boxes, which take minutes in a case of many sections. */
const quick = /^(travel|fit-out|strength|joints\.(?!box|seams))/;

function drawingsOf(job: Reviewed, asked: RegExp): readonly DrawingView[] {
  const findings = job.review.steps.filter(({ id }) => asked.test(id)).flatMap((step) => step.ask());
  const drawn = [...pictured(findings)].flatMap((finding) => picturedView(finding).drawing ?? []);
  const papers = recipeOf(job).sections.flatMap(({ blocks }) => blocks);
  return [...drawn, ...drawingsIn(papers)];
}

/** Drawings among blocks, and inside those that hold others. */
function drawingsIn(blocks: readonly unknown[]): readonly DrawingView[] {
  return blocks.flatMap((block): readonly DrawingView[] => {
    if (typeof block !== "object" || block === null) return [];
    if ("kind" in block && block.kind === "drawing") return [block as DrawingView];
    return Object.values(block).flatMap((one) => (Array.isArray(one) ? drawingsIn(one) : []));
  });
}

/** What is wrong with a drawing on a page so wide. */
interface Faults {
  /** The drawing's name. */
  readonly name: string;
  /** Words that lie on others. */
  readonly meeting: readonly string[];
  /** Words that reach out of the drawing. */
  readonly cut: readonly string[];
  /** The least height of letters, px. */
  readonly letter: number;
  /** Whether some of it is out of sight and nothing says so. */
  readonly hidden: boolean;
  /** Whether it has a name for who cannot see it. */
  readonly unnamed: boolean;
}

let browser: Browser;

beforeAll(async () => {
  if (!noChromium) browser = await startChromium();
}, 600_000);

afterAll(async () => {
  await browser?.close();
});

/** Reads every drawing of a page, in the browser. */
const measure = `[...document.querySelectorAll(".cw-drawing")].map((box) => {
  const svg = box.querySelector("svg");
  const frame = svg.getBoundingClientRect();
  const words = [...svg.querySelectorAll("text")].map((text) => ({
    text: text.textContent,
    at: text.getBoundingClientRect(),
  }));
  // A line box has a fifth of its height above and below what is written.
  const lap = (a, b) => {
    const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
    const up = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
    return across > 1 && up > 1 && Math.min(across, up) > 0.35 * Math.min(a.height, b.height, a.width, b.width);
  };
  const out = ({ at }) =>
    at.left < frame.left - 1 || at.right > frame.right + 1 || at.top < frame.top - 1 || at.bottom > frame.bottom + 1;
  const says = getComputedStyle(box).backgroundImage.includes("gradient") && box.tabIndex === 0;
  const size = parseFloat(getComputedStyle(svg).fontSize) * (frame.width / svg.viewBox.baseVal.width);
  return {
    name: box.getAttribute("aria-label"),
    meeting: words.flatMap((one, i) =>
      words.slice(i + 1).flatMap((other) => (lap(one.at, other.at) ? [one.text + " | " + other.text] : [])),
    ),
    cut: words.filter(out).map(({ text }) => text),
    letter: Math.round(10 * size) / 10,
    hidden: box.scrollWidth > box.clientWidth + 1 && !says,
    unnamed: !svg.getAttribute("aria-label") || svg.getAttribute("role") !== "img",
  };
})`;

async function faultsAt(width: number, drawings: readonly DrawingView[]): Promise<readonly Faults[]> {
  const page = await browser.newPage({ viewport: { width, height: 900 } });
  const views = drawings.map(renderView).join("");
  await page.setContent(
    `<!doctype html><html lang="en"><meta name="viewport" content="width=device-width"><title>t</title><style>${pageStyles}</style><main>${views}</main></html>`,
  );
  const measured = (await page.evaluate(measure)) as readonly Faults[];
  const wide = Number(await page.evaluate("document.documentElement.scrollWidth"));
  expect(wide).toBeLessThanOrEqual(width);
  await page.close();
  return measured;
}

/** At arm's length on a phone. */
const leastLetter = 10.5;

const jobs: readonly (readonly [string, () => Promise<Reviewed>, RegExp])[] = [
  ["soil-lab", async () => openJob("soil-lab"), /./],
  ["soil-lab-draft", async () => openJob("soil-lab-draft"), quick],
  ["bare-box", () => other("bare-box"), quick],
  ["tower-of-six", () => other("tower-of-six"), quick],
  ["small box", async () => reviewed(rolling(smallJob)), /./],
  ["crate", async () => reviewed(crateJob), quick],
  ["lid and drawers", async () => reviewed(lidAndDrawers), quick],
];

describe.skipIf(noChromium)("the drawings of", () => {
  describe.each(jobs)("%s", (_, open, asked) => {
    let drawings: readonly DrawingView[];

    beforeAll(async () => {
      drawings = drawingsOf(await open(), asked);
    }, 1_800_000);

    test.each([1200, 390])("can be read at %i px", patient, async (width) => {
      expect(drawings.length).toBeGreaterThan(5);
      const faults = await faultsAt(width, drawings);
      expect(faults).toHaveLength(drawings.length);
      const wrong = faults.filter(
        ({ meeting, cut, letter, hidden, unnamed }) =>
          meeting.length > 0 || cut.length > 0 || letter < leastLetter || hidden || unnamed,
      );
      expect(wrong).toEqual([]);
    });
  });
});
