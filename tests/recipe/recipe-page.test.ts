/** The papers of the demo as they come out of a printer. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openJob, recipeOf } from "../../lib/job/index.js";
import { recipePage } from "../../lib/recipe/index.js";
import { noChromium, startChromium } from "../chromium.js";
import { noPoppler } from "../true-scale/measured.js";

/** Ink of US Letter between the margins of the page, px of 1/96 in: 215.9 mm less two margins of 11 mm. */
const paperWidth = Math.round((193.9 * 96) / 25.4);

describe.skipIf(noChromium)("the papers of the demo", () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await startChromium();
    page = await browser.newPage({ viewport: { width: paperWidth, height: 1000 } });
    await page.setContent(recipePage(recipeOf(openJob("soil-lab"))));
  });
  afterAll(() => browser?.close());

  test.skipIf(noPoppler).each(["Letter", "A4"])("are at most 32 pages of %s", async (format) => {
    const folder = mkdtempSync(join(tmpdir(), "casewright-papers-"));
    try {
      const file = join(folder, "papers.pdf");
      await page.pdf({ path: file, format, preferCSSPageSize: true });
      const told = execFileSync("pdfinfo", [file], { encoding: "utf8" });
      expect(Number(/Pages:\s+(\d+)/.exec(told)?.[1])).toBeLessThanOrEqual(32);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test("have no letters below 9 points, drawings and pictures included", async () => {
    await page.emulateMedia({ media: "print" });
    const small = await page.evaluate(`(() => {
      const found = [];
      const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      for (let node = walk.nextNode(); node; node = walk.nextNode()) {
        const element = node.parentElement;
        if (!node.textContent.trim() || !element.getClientRects().length) continue;
        const svg = element.closest("svg");
        const matrix = svg ? element.getScreenCTM() : undefined;
        const scale = matrix ? Math.hypot(matrix.a, matrix.b) : 1;
        const points = parseFloat(getComputedStyle(element).fontSize) * scale * 0.75;
        if (points < 8.95) found.push(points.toFixed(1) + ": " + node.textContent.trim().slice(0, 40));
      }
      return found;
    })()`);
    expect(small).toEqual([]);
  });
});
