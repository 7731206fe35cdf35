/** Open pages that follow the book while it is served. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { type BookRequest, buildBook } from "../../lib/book/build-book.js";
import { type BookServer, serveBook } from "../../lib/book/serve-book.js";
import { noChromium, startChromium } from "../chromium.js";
import { countCharts, desktop, openPage } from "../reader.js";
import { sampleBook } from "./sample-book.js";

/** The sample book with one text in place of another, wherever it stands in its notebooks. */
function bookWith(before: string, after: string): Pick<BookRequest, "notebooks"> {
  const text = JSON.stringify(sampleBook.notebooks);
  expect(text).toContain(before);
  return { notebooks: JSON.parse(text.replaceAll(before, after)) };
}

describe.skipIf(noChromium)("a page that follows the book", () => {
  let folder = "";
  let outDir = "";
  let server: BookServer;
  let browser: Browser;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    outDir = join(folder, "book");
    await buildBook({ ...sampleBook, outDir });
    server = await serveBook(outDir, { live: { built: 1 } });
    browser = await startChromium();
  }, 600_000);
  afterAll(async () => {
    await browser?.close();
    await server?.close();
    await rm(folder, { recursive: true });
  });

  let built = 1;
  beforeEach(async () => {
    await buildBook({ ...sampleBook, outDir });
    built += 1;
    server.tell({ built });
  });

  /** Builds the book again and waits until the page has it. */
  async function rebuild(page: Page, changed: Pick<BookRequest, "notebooks">): Promise<void> {
    await buildBook({ ...sampleBook, ...changed, outDir });
    built += 1;
    server.tell({ built });
    await expect.poll(() => page.locator("html").getAttribute("data-built")).toBe(String(built));
  }

  test("changes where it stands, without being loaded anew, and asks for nothing outside", async () => {
    const { page, troubles } = await openPage(browser, server.url);
    await page.evaluate("globalThis.stayed = true");
    const [title = ""] = await page.locator(".cw-chapters li a").allTextContents();
    await rebuild(page, bookWith(title, "What of the other ply?"));
    expect(await page.locator(".cw-chapters li a").first().textContent()).toBe("What of the other ply?");
    expect(await page.locator(".cw-side").textContent()).toContain("What of the other ply?");
    expect(await page.evaluate("globalThis.stayed")).toBe(true);
    expect(troubles).toEqual([]);
    await page.close();
  });

  test("keeps the place where one reads, open workings and drawn charts of what did not change", async () => {
    const { page, troubles } = await openPage(browser, `${server.url}01-stiffness.html`, {
      ...desktop,
      height: 300,
    });
    await page.evaluate('document.querySelectorAll("details").forEach((part) => { part.open = true; })');
    const last = page.locator("main > section").last();
    await last.evaluate((piece) => (piece as unknown as { scrollIntoView(): void }).scrollIntoView());
    const place = (): Promise<number> =>
      last.evaluate((piece) =>
        Math.round(
          (piece as unknown as { getBoundingClientRect(): { top: number } }).getBoundingClientRect().top,
        ),
      );
    const before = await place();
    const charts = await countCharts(page);
    await page.evaluate(
      'document.querySelectorAll("figure svg.marks").forEach((mark) => { mark.dataset.seen = "1"; })',
    );
    const question = (await page.locator("main h1").first().textContent()) ?? "";
    await rebuild(page, bookWith(question, `${question} ${"And more words. ".repeat(60)}`));
    expect(await page.locator("main h1").first().textContent()).toContain("And more words.");
    expect(Math.abs((await place()) - before)).toBeLessThanOrEqual(2);
    expect(await page.locator("details:not([open])").count()).toBe(0);
    expect(await countCharts(page)).toEqual(charts);
    expect(await page.locator('figure svg.marks[data-seen="1"]').count()).toBe(charts.drawn);
    expect(troubles).toEqual([]);
    await page.close();
  });

  test("draws a chart that changed", async () => {
    const { page } = await openPage(browser, `${server.url}01-stiffness.html`);
    const charts = await countCharts(page);
    await page.evaluate(
      'document.querySelectorAll("figure svg.marks").forEach((mark) => { mark.dataset.seen = "1"; })',
    );
    await rebuild(page, bookWith("Ply thickness", "Thickness of the ply"));
    await expect.poll(() => countCharts(page)).toEqual(charts);
    expect(await page.locator('figure svg.marks:not([data-seen="1"])').count()).toBeGreaterThan(0);
    expect(await page.getByRole("slider", { name: "Thickness of the ply" }).count()).toBeGreaterThan(0);
    await page.close();
  });

  test("shows a mistake at its top over greyed answers, also when it is opened later, until it is mended", async () => {
    const { page, troubles } = await openPage(browser, server.url);
    const answers = await page.locator("main").textContent();
    server.tell({ built, trouble: "soil-lab: 1 problem\n\ncase.yaml  328 <script>" });
    const late = await openPage(browser, `${server.url}01-stiffness.html`);
    for (const each of [page, late.page]) {
      const alert = each.getByRole("alert");
      await alert.waitFor();
      expect(await alert.textContent()).toContain("case.yaml  328 <script>");
      expect((await alert.boundingBox())?.y).toBe(0);
      expect(
        await each
          .locator("main")
          .evaluate(
            (main) =>
              (
                globalThis as unknown as { getComputedStyle(element: unknown): { filter: string } }
              ).getComputedStyle(main).filter,
          ),
      ).toContain("grayscale");
    }
    expect(await page.locator("main").textContent()).toBe(answers);
    server.tell({ built });
    await expect.poll(() => page.getByRole("alert").count()).toBe(0);
    expect(await page.locator("html.cw-stale").count()).toBe(0);
    expect([...troubles, ...late.troubles]).toEqual([]);
    await late.page.close();
    await page.close();
  });
});
