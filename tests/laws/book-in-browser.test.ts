/** The made-up book in a real browser, from a server and from disk. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildBook } from "../../lib/book/build-book.js";
import { type BookServer, serveBook } from "../../lib/book/serve-book.js";
import { nasty, sampleBook } from "../book/sample-book.js";
import { noChromium, startChromium } from "../chromium.js";
import { sampleCharts } from "../notebook/sample-charts.js";
import {
  barriers,
  barriersOfAll,
  controlsInSight,
  countCharts,
  cutAtTheSide,
  desktop,
  headingFaults,
  linePaths,
  openPage,
  phone,
  sidewaysScroll,
  tabbed,
  unfold,
  zoomed,
} from "../reader.js";

const files = [
  "index.html",
  "01-stiffness.html",
  "02-buying.html",
  "recipe.html",
  "formulas.html",
  "checks.html",
];

describe.skipIf(noChromium)("the book in a browser", () => {
  let folder = "";
  let server: BookServer;
  let browser: Browser;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    await buildBook({ ...sampleBook, units: "metric", outDir: join(folder, "book") });
    server = await serveBook(join(folder, "book"));
    browser = await startChromium();
  }, 600_000);
  afterAll(async () => {
    await browser?.close();
    await server?.close();
    await rm(folder, { recursive: true });
  });

  test.each(files)("%s from a server: nothing goes wrong, nothing is asked from outside", async (file) => {
    const { page, troubles } = await openPage(browser, server.url + file);
    expect(troubles).toEqual([]);
    await page.close();
  });

  test("charts are drawn, from a server and from disk, and replace their stills", async () => {
    const disk = `${pathToFileURL(join(folder, "book")).href}/`;
    for (const [file, charts] of [
      ["01-stiffness.html", 3],
      ["02-buying.html", Object.keys(sampleCharts).length - 3],
    ] as const) {
      for (const place of [server.url, disk]) {
        const { page, troubles } = await openPage(browser, place + file);
        expect(await countCharts(page)).toEqual({ all: charts, drawn: charts });
        expect(await page.locator(".cw-chart img").count()).toBe(0);
        expect(troubles).toEqual([]);
        await page.close();
      }
    }
  });

  test("without scripts every chart is there as a still picture", async () => {
    const context = await browser.newContext({ javaScriptEnabled: false });
    const page = await context.newPage();
    await page.goto(`${server.url}01-stiffness.html`);
    const sizes = await page
      .locator(".cw-chart img")
      .evaluateAll((images) =>
        images.map((image) => (image as unknown as { naturalWidth: number }).naturalWidth),
      );
    expect(sizes.length).toBe(3);
    expect(Math.min(...sizes)).toBeGreaterThan(300);
    await context.close();
  });

  test("the slider has a name, and moving it redraws the chosen line and only that", async () => {
    const { page } = await openPage(browser, `${server.url}01-stiffness.html`);
    const before = await linePaths(page);
    const slider = page.getByRole("slider", { name: "Ply thickness (mm)" });
    await slider.focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(() => linePaths(page)).not.toEqual(before);
    const after = await linePaths(page);
    expect(after.length).toBe(before.length);
    expect(after.filter((path, i) => path !== before[i]).length).toBe(1);
    await page.close();
  });

  test.each(files)("%s on a phone: nothing scrolls the page sideways", async (file) => {
    const { page } = await openPage(browser, server.url + file, phone);
    await unfold(page);
    expect(await sidewaysScroll(page)).toBe(0);
    await page.close();
  });

  test.each([...files, "03-strangers.html"])("%s: no serious or critical barrier", async (file) => {
    for (const viewport of file === "01-stiffness.html" ? [desktop, phone] : [phone]) {
      const { page } = await openPage(browser, server.url + file, viewport);
      await unfold(page);
      expect(await barriers(page)).toEqual([]);
      await page.close();
    }
  });

  test.each(files)(
    "%s, unfolded at 200 %: no barrier light or dark, headings in order, nothing cut",
    async (file) => {
      const { page } = await openPage(browser, server.url + file, zoomed);
      await unfold(page);
      expect(await headingFaults(page)).toEqual([]);
      expect(await sidewaysScroll(page)).toBe(0);
      expect(await cutAtTheSide(page)).toEqual([]);
      expect(await barriersOfAll(page)).toEqual([]);
      await page.close();
    },
  );

  test.each(["index.html", "01-stiffness.html", "02-buying.html"])(
    "%s by keyboard: Tab comes to every control, seen, from above to below",
    async (file) => {
      const { page } = await openPage(browser, server.url + file);
      const all = await controlsInSight(page);
      const reached = await tabbed(page);
      expect(reached.length).toBe(all);
      expect(reached.filter(({ seen }) => !seen)).toEqual([]);
      const inMain = reached.slice(reached.findIndex(({ name }) => name.startsWith("SUMMARY")));
      expect(inMain.every(({ top }, i) => top >= (inMain[i - 1]?.top ?? 0) - 60)).toBe(true);
      await page.close();
    },
  );

  test("by keyboard a fold opens, a filter chooses, and the units switch", async () => {
    const { page } = await openPage(browser, `${server.url}01-stiffness.html`);
    const folds = page.locator("main details.cw-workings");
    await folds.first().locator("> summary").focus();
    await page.keyboard.press("Enter");
    expect(await folds.first().getAttribute("open")).not.toBeNull();
    await page.getByRole("button", { name: "inch" }).focus();
    await page.keyboard.press("Space");
    expect(await page.getByRole("button", { name: "inch" }).getAttribute("aria-pressed")).toBe("true");
    await expect.poll(() => page.locator(".cw-chart svg").first().textContent()).toContain("(in)");
    await page.goto(`${server.url}index.html`);
    await unfold(page);
    const filter = page.getByRole("radio", { name: "fit-out" });
    const rows = page.locator("main tbody tr").filter({ visible: true });
    const all = await rows.count();
    await page.locator('input[name="cw-topic"]').first().focus();
    for (let i = 0; i < 12 && !(await filter.isChecked()); i++) await page.keyboard.press("ArrowRight");
    expect(await filter.isChecked()).toBe(true);
    expect(await rows.count()).toBeLessThan(all);
    await page.close();
  });

  test("a script in a table, in text or in markup shows as text and never runs", async () => {
    const { page } = await openPage(browser, `${server.url}03-strangers.html`);
    const shown = async (part: string): Promise<string | undefined> =>
      (await page.locator(part).first().textContent())?.replaceAll("\u00a0", " ");
    expect(await shown("td")).toBe(nasty);
    expect(await shown("caption")).toBe(nasty);
    await page.frameLocator("iframe").locator("b").waitFor();
    await page.waitForLoadState("networkidle");
    expect(await page.evaluate("globalThis.ran")).toBeUndefined();
    expect(await page.title()).not.toBe("ran");
    await page.close();
  });

  test("in print every working is open and no control is left", async () => {
    const { page } = await openPage(browser, `${server.url}01-stiffness.html`);
    await page.emulateMedia({ media: "print" });
    await page.evaluate("dispatchEvent(new Event('beforeprint'))");
    expect(await page.locator("details.cw-how:not([open])").count()).toBe(0);
    const controls = ".vega-bindings:visible, .cw-side:visible, .cw-turn:visible, summary:visible";
    expect(await page.locator(controls).count()).toBe(0);
    await page.evaluate("dispatchEvent(new Event('afterprint'))");
    expect(await page.locator("details.cw-how[open]").count()).toBe(0);
    await page.close();
  });
});
