/** A reader of pages: opens them in a browser and notes all that goes wrong. */
import axe from "axe-core";
import type { Browser, Page } from "playwright-core";

/** A screen on a bench, and one in a pocket. */
export const desktop = { width: 1200, height: 900 };
export const phone = { width: 360, height: 740 };

/** A page opened. */
export interface OpenedPage {
  readonly page: Page;
  /** Errors and warnings of the page, and every request that leaves the folder of the page. */
  readonly troubles: string[];
}

/** Opens a page and waits until its charts are drawn. */
export async function openPage(browser: Browser, address: string, viewport = desktop): Promise<OpenedPage> {
  const page = await browser.newPage({ viewport });
  const troubles: string[] = [];
  const own = address.slice(0, address.lastIndexOf("/") + 1);
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) troubles.push(message.text());
  });
  page.on("pageerror", (error) => troubles.push(error.message));
  page.on("request", (request) => {
    if (!request.url().startsWith(own) && !/^(data|about|blob):/.test(request.url()))
      troubles.push(request.url());
  });
  await page.goto(address);
  await page.waitForFunction(
    `[...document.querySelectorAll("figure:has(.cw-spec)")].every((figure) => ["live", "failed"].includes(figure.dataset.drawn))`,
  );
  return { page, troubles };
}

/** How many charts stand on the page, and how many of them were drawn. */
export async function countCharts(page: Page): Promise<{ readonly all: number; readonly drawn: number }> {
  return {
    all: await page.locator("figure:has(.cw-spec)").count(),
    drawn: await page.locator('figure[data-drawn="live"] svg.marks').count(),
  };
}

/** Opens every disclosure. */
export async function unfold(page: Page): Promise<void> {
  await page.locator("details").evaluateAll((parts) => {
    for (const part of parts) (part as unknown as { open: boolean }).open = true;
  });
}

/** How far the page itself scrolls sideways, px. */
export async function sidewaysScroll(page: Page): Promise<number> {
  return (await page.evaluate("document.documentElement.scrollWidth - innerWidth")) as number;
}

/** Serious and critical barriers for readers with assistive technology, each with its first place. */
export async function barriers(page: Page): Promise<string[]> {
  // The page's own policy forbids a script put in, so the checker comes in by the debugger.
  await page.evaluate(axe.source);
  const results = (await page.evaluate("axe.run({ resultTypes: ['violations'] })")) as axe.AxeResults;
  return results.violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
}

/** The outlines of a chart's lines, to see whether they move. */
export async function linePaths(page: Page, chart = 0): Promise<(string | null)[]> {
  const lines = page.locator("figure:has(.cw-spec)").nth(chart).locator("svg .mark-line path");
  await lines.first().waitFor({ state: "attached" });
  return lines.evaluateAll((paths) =>
    paths.map((path) => (path as unknown as { getAttribute(name: string): string | null }).getAttribute("d")),
  );
}

/** Words in sight: those of closed disclosures, pictures and charts do not count, their summaries do. */
export async function wordsInSight(page: Page): Promise<number> {
  return (await page.evaluate(`(() => {
    const main = document.querySelector("main").cloneNode(true);
    for (const part of main.querySelectorAll("svg, script, style, img, .cw-hidden, .cw-print-only")) part.remove();
    for (const part of main.querySelectorAll("details:not([open])")) part.replaceChildren(part.querySelector("summary"));
    for (const part of main.querySelectorAll("*")) part.append(" ");
    return main.textContent.trim().split(/\\s+/).length;
  })()`)) as number;
}
