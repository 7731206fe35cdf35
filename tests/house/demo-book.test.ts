/** The demo's own book, every page of it, as its reader meets it. */
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { type BookServer, projectFolder, serveBook } from "../../lib/book/index.js";
import { bookOfJob } from "../../lib/command/book-of-job.js";
import { noChromium, startChromium } from "../chromium.js";
import { barriers, countCharts, linePaths, openPage, phone, sidewaysScroll, unfold } from "../reader.js";

const notebooks = (await readdir(join(projectFolder(), "notebooks"))).filter((file) =>
  file.endsWith(".ipynb"),
).length;

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
  }, 300_000);
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

  test("every chapter answers its question on the first page", async () => {
    const { page } = await openPage(browser, server.url);
    expect(await page.locator(".cw-contents li").count()).toBe(notebooks);
    expect(await page.locator(".cw-contents .cw-question").count()).toBe(notebooks);
    expect(await page.locator(".cw-contents .cw-told").count()).toBe(notebooks);
    await page.close();
  });

  test("on a phone no page has trouble, leaves a chart undrawn, or scrolls sideways", {
    timeout: 120_000,
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

  test("no page has a serious or critical barrier", { timeout: 300_000 }, async () => {
    const found: Record<string, string[]> = {};
    for (const file of files) {
      const { page } = await openPage(browser, server.url + file);
      const here = await barriers(page);
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
