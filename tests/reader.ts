/** A reader of pages: opens them in a browser and notes all that goes wrong. */
import { readdir, stat } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import axe from "axe-core";
import type { Browser, Page } from "playwright-core";
import { noChromium, startChromium } from "./chromium.js";

/** A screen on a bench, and one in a pocket. */
export const desktop = { width: 1200, height: 900 };
export const phone = { width: 360, height: 740 };
/** The bench's screen at 200 %: half as wide to the page, each of its pixels two. */
export const zoomed = { width: 600, height: 450 };

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

/** Barriers of any weight, light and dark, each with its first place. Leaves the page light. */
export async function barriersOfAll(page: Page): Promise<string[]> {
  const found: string[] = [];
  await page.evaluate(axe.source);
  for (const colorScheme of ["dark", "light"] as const) {
    await page.emulateMedia({ colorScheme });
    const results = (await page.evaluate("axe.run({ resultTypes: ['violations'] })")) as axe.AxeResults;
    found.push(...results.violations.map(({ id, nodes }) => `${colorScheme}, ${id}: ${nodes[0]?.html}`));
  }
  return found;
}

/** What is wrong with the order of a page's headings: a title that is not one, and levels that are left out. */
export async function headingFaults(page: Page): Promise<string[]> {
  const headings = (await page.evaluate(`[...document.querySelectorAll("h1, h2, h3, h4, h5, h6")]
    .filter((one) => getComputedStyle(one).display !== "none" && !one.closest("[hidden]"))
    .map((one) => ({ level: Number(one.tagName[1]), text: one.textContent.trim().slice(0, 60) }))`)) as {
    level: number;
    text: string;
  }[];
  const titles = headings.filter(({ level }) => level === 1).length;
  const left = headings.filter(({ level }, i) => level > (headings[i - 1]?.level ?? 0) + 1);
  return [
    ...(titles === 1 ? [] : [`${titles} titles`]),
    ...left.map(({ level, text }) => `level ${level} comes too early: ${text}`),
  ];
}

/** What of the page reaches past its right side, but for what scrolls by itself. */
export async function cutAtTheSide(page: Page): Promise<string[]> {
  return (await page.evaluate(`[...document.querySelectorAll("main *")].filter((one) => {
    const { right, width } = one.getBoundingClientRect();
    const scrolls = one.closest(".cw-scroll, .cw-drawing, .cw-chart, .cw-equation, pre, svg, .cw-hidden, .lv-scroll");
    return width > 0 && right > innerWidth + 1 && !scrolls;
  }).map((one) => one.outerHTML.slice(0, 120))`)) as string[];
}

/** Controls as Tab comes to them, from the top of the page to its end, each with whether its focus is seen. */
export async function tabbed(
  page: Page,
): Promise<readonly { readonly name: string; readonly seen: boolean; readonly top: number }[]> {
  const controls: { name: string; seen: boolean; top: number }[] = [];
  await page.evaluate("document.activeElement?.blur()");
  for (;;) {
    await page.keyboard.press("Tab");
    const control = (await page.evaluate(`(() => {
      const one = document.activeElement;
      if (!one || one === document.body || one.dataset.reached) return undefined;
      one.dataset.reached = "yes";
      const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(one);
      const { top, height, width } = one.getBoundingClientRect();
      const outlined = outlineStyle !== "none" && parseFloat(outlineWidth) > 0;
      return { name: one.tagName + " " + (one.ariaLabel ?? one.textContent ?? "").trim().slice(0, 40), seen: (outlined || boxShadow !== "none") && height > 0 && width > 0, top: top + scrollY };
    })()`)) as { name: string; seen: boolean; top: number } | undefined;
    if (!control) return controls;
    controls.push(control);
  }
}

/** How many controls a page has in sight; of choices that exclude each other Tab stops at one. */
export async function controlsInSight(page: Page): Promise<number> {
  return (await page.evaluate(`[...document.querySelectorAll("a[href], button, input, select, summary, textarea, [tabindex='0']")]
    .filter((one) => one.checkVisibility({ contentVisibilityAuto: true, visibilityProperty: true }) && one.getClientRects().length > 0 && !one.disabled && (one.type !== "radio" || one.checked)).length`)) as number;
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

/**
 * Chapters of a book with more words in sight than a reader takes, or in a file that is slow to load.
 *
 * @param recipe most kilobytes of the recipe's chapter, where it is not as short yet as all others must be
 */
export async function longChapters(folder: string, recipe = 400): Promise<readonly unknown[]> {
  const chapters = (await readdir(folder)).filter((file) => /^\d\d-.*html$/.test(file));
  const browser = noChromium ? undefined : await startChromium();
  const long: unknown[] = [];
  for (const file of chapters) {
    const page = await browser?.newPage({ viewport: desktop });
    await page?.goto(pathToFileURL(join(folder, file)).href);
    const words = page ? await wordsInSight(page) : 0;
    const kilobytes = (await stat(join(folder, file))).size / 1024;
    if (words > 1500 || kilobytes > (file.startsWith("09-") ? recipe : 400))
      long.push({ file, words, kilobytes });
    await page?.close();
  }
  await browser?.close();
  return long;
}
