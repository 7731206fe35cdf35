/** The demo's own book, every page of it, as its reader meets it. */
import { mkdtemp, readdir, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { type BookServer, projectFolder, serveBook } from "../../lib/book/index.js";
import { bookOfJob } from "../../lib/command/book-of-job.js";
import { openJob } from "../../lib/job/index.js";
import { noChromium, startChromium } from "../chromium.js";
import {
  barriersOfAll,
  countCharts,
  headingFaults,
  linePaths,
  openPage,
  phone,
  sidewaysScroll,
  unfold,
  wordsInSight,
} from "../reader.js";

const folders = ["notebooks", "data/soil-lab"].map((folder) => readdir(join(projectFolder(), folder)));
const notebooks = (await Promise.all(folders)).flat().filter((file) => file.endsWith(".ipynb")).length;

describe.skipIf(noChromium)("the demo's book", () => {
  let folder = "";
  let server: BookServer;
  let browser: Browser;
  let files: string[] = [];
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    const progress = vi.spyOn(console, "log").mockReturnValue(undefined);
    const book = await bookOfJob({ outDir: join(folder, "book") });
    progress.mockRestore();
    if ("trouble" in book) throw new Error(book.trouble);
    if (book.failed !== undefined) throw new Error(book.failed);
    files = (await readdir(book.folder)).filter((file) => file.endsWith(".html")).sort();
    server = await serveBook(book.folder);
    browser = await startChromium();
  }, 900_000);
  afterAll(async () => {
    await browser?.close();
    await server?.close();
    await rm(folder, { recursive: true });
  });

  test("has a page for every notebook, the formulas, the checks and the recipe", () => {
    expect(files.filter((file) => /^\d\d-/.test(file)).length).toBe(notebooks);
    expect(files).toEqual(
      expect.arrayContaining(["checks.html", "formulas.html", "index.html", "recipe-to-print.html"]),
    );
  });

  test("the first page has a line for every chapter", async () => {
    const { page } = await openPage(browser, server.url);
    expect(await page.locator(".cw-chapters li").count()).toBe(notebooks);
    expect(await page.locator(".cw-chapters li .cw-verdict").count()).toBeGreaterThan(notebooks / 2);
    await page.close();
  });

  test("the first page lists every question that the review asks", async () => {
    const { page } = await openPage(browser, server.url);
    const ids = await page
      .locator(".cw-tier tbody a")
      .evaluateAll((links) => links.map((one) => decodeURIComponent(one.getAttribute("href") ?? "")));
    const listed = ids.map((href) => href.slice(href.indexOf("#") + 1));
    const { findings } = openJob("soil-lab").review;
    expect([...listed].sort()).toEqual(findings.map(({ id }) => id).sort());
    await page.close();
  });

  test("the first page is short before its chapters end, and filters what was asked without a script", async () => {
    const { page } = await openPage(browser, server.url);
    const words = await page.locator(".cw-first, .cw-chapters, h1").allInnerTexts();
    expect(words.join(" ").split(/\s+/).length).toBeLessThanOrEqual(350);
    const end = async (): Promise<number> =>
      (await page.locator(".cw-chapters").boundingBox())?.y ?? Infinity;
    await page.setViewportSize({ width: 1200, height: 900 });
    expect(await end()).toBeLessThan(2 * 900);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await end()).toBeLessThan(3 * 844);
    await unfold(page);
    const rows = page.locator(".cw-asked tbody tr");
    const all = await rows.filter({ visible: true }).count();
    await page.locator('.cw-asked input[value="travel"]').check();
    const travel = await rows.filter({ visible: true }).count();
    expect(travel).toBeLessThan(all);
    expect(travel).toBe(await page.locator(".cw-asked tr.cw-about-travel").count());
    await page.close();
  });

  test("a chapter begins with its answer and a picture, is short in sight, and its file small", async () => {
    const found: unknown[] = [];
    for (const file of files.filter((name) => /^0\d-/.test(name))) {
      const { page } = await openPage(browser, server.url + file);
      const words = await wordsInSight(page);
      const kilobytes = (await stat(join(folder, "book", file))).size / 1024;
      const begins = await page.locator("main .cw-short, main #lead").count();
      if (words > 1500 || kilobytes > 400 || begins < 2) found.push({ file, words, kilobytes, begins });
      await page.close();
    }
    expect(found).toEqual([]);
  });

  test("on a phone no page has trouble, leaves a chart undrawn, or scrolls sideways", {
    timeout: 600_000,
  }, async () => {
    const found: unknown[] = [];
    for (const file of files) {
      const { page, troubles } = await openPage(browser, server.url + file, phone);
      const { all, drawn } = await countCharts(page);
      await unfold(page);
      const sideways = await sidewaysScroll(page);
      if (troubles.length > 0 || all !== drawn || sideways > 0)
        found.push({ file, troubles, all, drawn, sideways });
      await page.close();
    }
    expect(found).toEqual([]);
  });

  test("no page has a barrier, light or dark, or leaves out a level of headings", {
    timeout: 900_000,
  }, async () => {
    const found: Record<string, string[]> = {};
    for (const file of files) {
      const { page } = await openPage(browser, server.url + file);
      const here = [...(await barriersOfAll(page)), ...(await headingFaults(page))];
      if (here.length > 0) found[file] = here;
      await page.close();
    }
    expect(found).toEqual({});
  });

  test("a choice of thickness changes what is drawn", async () => {
    const { page } = await openPage(browser, `${server.url}02-will-thin-ply-stay-stiff.html`);
    const before = await linePaths(page);
    await page.getByRole("combobox").first().selectOption({ index: 2 });
    await expect.poll(() => linePaths(page)).not.toEqual(before);
    await page.close();
  });
});
