/** The made-up book in a real browser, from a server and from disk. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildBook } from "../../lib/book/build-book.js";
import { type BookServer, serveBook } from "../../lib/book/serve-book.js";
import { noChromium, startChromium } from "../chromium.js";
import { nasty, sampleBook } from "./sample-book.js";

const files = [
  "index.html",
  "01-stiffness.html",
  "02-buying.html",
  "recipe.html",
  "formulas.html",
  "checks.html",
];
const phone = { width: 360, height: 740 };
const desktop = { width: 1200, height: 900 };

describe.skipIf(noChromium)("the book in a browser", () => {
  let folder = "";
  let server: BookServer;
  let browser: Browser;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    await buildBook({ ...sampleBook, outDir: join(folder, "book") });
    server = await serveBook(join(folder, "book"));
    browser = await startChromium();
  }, 60_000);
  afterAll(async () => {
    await browser?.close();
    await server?.close();
    await rm(folder, { recursive: true });
  });

  /** Opens a page and notes everything that goes wrong on it, and every request that leaves the book. */
  async function opened(address: string, viewport = desktop): Promise<{ page: Page; troubles: string[] }> {
    const page = await browser.newPage({ viewport });
    const troubles: string[] = [];
    const own = address.slice(0, address.lastIndexOf("/") + 1);
    page.on("console", (message) => {
      if (["error", "warning"].includes(message.type())) troubles.push(message.text());
    });
    page.on("pageerror", (error) => troubles.push(error.message));
    page.on("request", (request) => {
      if (!request.url().startsWith(own) && !/^(data|about):/.test(request.url()))
        troubles.push(request.url());
    });
    await page.goto(address);
    return { page, troubles };
  }

  async function chartsDrawn(page: Page): Promise<number> {
    await page.waitForFunction(
      `[...document.querySelectorAll("figure:has(.cw-spec)")].every((figure) => ["live", "failed"].includes(figure.dataset.drawn))`,
    );
    return page.locator('figure[data-drawn="live"] svg.marks').count();
  }

  test.each(files)("%s from a server: nothing goes wrong, nothing is asked from outside", async (file) => {
    const { page, troubles } = await opened(server.url + file);
    await chartsDrawn(page);
    expect(troubles).toEqual([]);
    await page.close();
  });

  test("charts are drawn, from a server and from disk, and replace their stills", async () => {
    const disk = `${pathToFileURL(join(folder, "book")).href}/`;
    for (const [file, charts] of [
      ["01-stiffness.html", 3],
      ["02-buying.html", 6],
    ] as const) {
      for (const place of [server.url, disk]) {
        const { page, troubles } = await opened(place + file);
        expect(await chartsDrawn(page)).toBe(charts);
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
    const { page } = await opened(`${server.url}01-stiffness.html`);
    await chartsDrawn(page);
    const lines = (): Promise<(string | null)[]> =>
      page
        .locator("figure")
        .first()
        .locator("svg .mark-line path")
        .evaluateAll((paths) =>
          paths.map((path) =>
            (path as unknown as { getAttribute(name: string): string | null }).getAttribute("d"),
          ),
        );
    const before = await lines();
    const slider = page.getByRole("slider", { name: "Ply thickness (mm)" });
    await slider.focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(lines).not.toEqual(before);
    const after = await lines();
    expect(after.length).toBe(before.length);
    expect(after.filter((path, i) => path !== before[i]).length).toBe(1);
    await page.close();
  });

  test.each(files)("%s on a phone: nothing scrolls the page sideways", async (file) => {
    const { page } = await opened(server.url + file, phone);
    await chartsDrawn(page);
    await page.locator("details").evaluateAll((parts) => {
      for (const part of parts) (part as unknown as { open: boolean }).open = true;
    });
    const width = await page.evaluate("document.documentElement.scrollWidth");
    expect(width).toBeLessThanOrEqual(phone.width);
    await page.close();
  });

  test.each([...files, "03-strangers.html"])("%s: no serious or critical barrier", async (file) => {
    for (const viewport of file === "01-stiffness.html" ? [desktop, phone] : [phone]) {
      const { page } = await opened(server.url + file, viewport);
      await chartsDrawn(page);
      await page.locator("details").evaluateAll((parts) => {
        for (const part of parts) (part as unknown as { open: boolean }).open = true;
      });
      // The page's own policy forbids a script put in, so the checker comes in by the debugger.
      await page.evaluate(axe.source);
      const { violations } = (await page.evaluate(
        "axe.run({ resultTypes: ['violations'] })",
      )) as axe.AxeResults;
      const barriers = violations
        .filter(({ impact }) => impact === "serious" || impact === "critical")
        .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
      expect(barriers).toEqual([]);
      await page.close();
    }
  });

  test("a script in a table, in text or in markup shows as text and never runs", async () => {
    const { page } = await opened(`${server.url}03-strangers.html`);
    expect(await page.locator("td").first().textContent()).toBe(nasty);
    expect(await page.locator("caption").first().textContent()).toBe(nasty);
    await page.frameLocator("iframe").locator("b").waitFor();
    await page.waitForLoadState("networkidle");
    expect(await page.evaluate("globalThis.ran")).toBeUndefined();
    expect(await page.title()).not.toBe("ran");
    await page.close();
  });

  test("in print every working is open and no control is left", async () => {
    const { page } = await opened(`${server.url}01-stiffness.html`);
    await chartsDrawn(page);
    await page.emulateMedia({ media: "print" });
    await page.evaluate("dispatchEvent(new Event('beforeprint'))");
    expect(await page.locator("details.cw-how:not([open])").count()).toBe(0);
    expect(
      await page
        .locator(".vega-bindings:visible, .cw-side:visible, .cw-turn:visible, summary:visible")
        .count(),
    ).toBe(0);
    await page.evaluate("dispatchEvent(new Event('afterprint'))");
    expect(await page.locator("details.cw-how[open]").count()).toBe(0);
    await page.close();
  });
});
