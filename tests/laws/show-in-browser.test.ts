/** What a notebook gets to see, in a real browser whose page has a module loader of its own. */
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { screenBundle, withStills } from "../../lib/notebook/bundle.js";
import { toViews } from "../../lib/page/index.js";
import { noChromium, startChromium } from "../chromium.js";
import { sampleCharts } from "../notebook/sample-charts.js";
import { sampleFindings } from "../page/sample-views.js";

const loader =
  "<script>window.define = Object.assign(() => { window.grabbed = true; }, { amd: {} });</script>";
const views = withStills(toViews([...Object.values(sampleCharts).slice(0, 2), ...sampleFindings]));
const first = String(screenBundle(views.slice(0, 1), true)["text/html"]);
const later = String(screenBundle(views.slice(1), false)["text/html"]);

describe.skipIf(noChromium)("a notebook's output in a browser", () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await startChromium();
  }, 600_000);
  afterAll(() => browser?.close());

  test.each([
    ["in order", first + later],
    ["out of order", later + first],
  ])("charts draw beside a module loader, outputs %s", async (_, outputs) => {
    const page = await browser.newPage();
    const troubles: string[] = [];
    page.on("pageerror", (error) => troubles.push(error.message));
    page.on("request", (request) => {
      if (!/^(data|about|blob):/.test(request.url())) troubles.push(request.url());
    });
    await page.setContent(`<!doctype html>${loader}<body>${outputs}`);
    await page.locator('figure[data-drawn="live"] svg.marks').nth(1).waitFor();
    expect(await page.locator(".cw-chart img").count()).toBe(0);
    expect(await page.evaluate("window.grabbed")).toBeUndefined();
    expect(troubles).toEqual([]);
    await page.close();
  });

  test("where scripts are taken out, as in a notebook not trusted, the still pictures stay", async () => {
    const page = await browser.newPage();
    await page.setContent(`<body>${(first + later).replace(/<script[\s\S]*?<\/script>/g, "")}`);
    expect(await page.locator(".cw-chart img").count()).toBe(2);
    await page.close();
  });
});
