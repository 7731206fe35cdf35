/** At the bench in Chromium: from disk on a phone, and from the server, which saves what was measured. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type BookServer, liveFile, serveBook } from "../../../lib/book/index.js";
import { openJob, readJob } from "../../../lib/job/index.js";
import { noChromium, startChromium } from "../../chromium.js";
import { barriers } from "../../reader.js";

const jobs = resolve(import.meta.dirname, "../../jobs");
const patient = { timeout: 120_000 };
let folder = "";
let server: BookServer;
let browser: Browser;
let page: Page;
const errors: string[] = [];
const asked: string[] = [];

/** Shows the first step that a test fits. */
async function showStep(heading: string, words = ""): Promise<void> {
  await page.click('[data-do="list"]');
  await page.locator(`.lv-bench-list button:has-text("${heading}")`).first().click();
  for (let tries = 0; tries < 60; tries++) {
    if ((await page.textContent("#bench-step"))?.includes(words)) return;
    await page.click('[data-do="next"]');
  }
  throw new Error(`no step "${words}" under "${heading}"`);
}

async function opened(address: string): Promise<void> {
  page = await browser.newPage({ viewport: { width: 390, height: 800 }, hasTouch: true });
  page.setDefaultTimeout(patient.timeout);
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("pageerror", (error) => errors.push(String(error)));
  page.on("request", (request) => asked.push(request.url()));
  await page.goto(address);
  await page.waitForSelector("#bench-words");
}

const judgedAs = (i: number): Promise<string | null> => page.textContent(`#bench-judged-${i}`);

beforeAll(async () => {
  if (noChromium) return;
  folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  browser = await startChromium();
}, patient.timeout);
afterAll(async () => {
  await browser?.close();
  await server?.close();
  if (folder) rmSync(folder, { recursive: true });
});

describe.skipIf(noChromium)("the bench from disk, on a phone", () => {
  beforeAll(async () => {
    const demo = openJob("soil-lab");
    writeFileSync(join(folder, "live.html"), liveFile({ ...demo, title: demo.case.name }));
    await opened(`file://${join(folder, "live.html")}#bench`);
  }, patient.timeout);
  afterAll(() => page.close());

  test(
    "begins with what can hurt, ticks with one touch and goes on, and takes a tick back",
    patient,
    async () => {
      expect(await page.textContent("#bench-step")).toContain("Cautions");
      expect(await page.textContent("#bench-count")).toMatch(/^1 of \d\d\d$/);
      await page.tap('[data-do="tick"]');
      expect(await page.textContent("#bench-count")).toMatch(/^2 of /);
      await page.keyboard.press("ArrowLeft");
      expect(await page.textContent("#bench-words")).toMatch(/^Done\. /);
      await page.tap('[data-do="tick"]');
      expect(await page.textContent("#bench-words")).not.toMatch(/^Done\. /);
    },
  );

  test(
    "has no text below 18 px and nothing to press below 44, fits a phone, and every reader",
    patient,
    async () => {
      for (const heading of ["Cut list", "Sheet 1", "wood glue", "Stage 2", "Measure lower"]) {
        await showStep(heading);
        const small = await page.evaluate(`[...document.querySelectorAll("#bench *")]
        .filter((one) => !one.closest("svg") && one.getClientRects().length > 0)
        .filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== ""))
        .filter((one) => Number.parseFloat(getComputedStyle(one).fontSize) < 18)
        .map((one) => one.outerHTML.slice(0, 90))`);
        expect(small, heading).toEqual([]);
        const tight =
          await page.evaluate(`[...document.querySelectorAll("#bench button, #bench input, #bench a, #bench label:has(input)")]
        .filter((one) => one.getClientRects().length > 0 && !one.closest("label:not(:scope)"))
        .filter((one) => one.getBoundingClientRect().height < 44)
        .map((one) => one.outerHTML.slice(0, 90))`);
        expect(tight, heading).toEqual([]);
        expect(await page.evaluate("document.documentElement.scrollWidth"), heading).toBeLessThanOrEqual(390);
        expect(await barriers(page), heading).toEqual([]);
      }
    },
  );

  test("judges a figure at once, leads to the step that made it and back", patient, async () => {
    await showStep("Measure lower");
    const here = await page.textContent("#bench-count");
    await page.fill('[data-measure="0"]', "31");
    await expect
      .poll(() => judgedAs(0), patient)
      .toMatch(/Out: 0\.205 in off the plan, 0\.079 in allowed\. Look for/);
    await page.fill('[data-measure="1"]', "24 3/4");
    await expect.poll(() => judgedAs(1), patient).toMatch(/Right: .* off the plan/);
    await page.fill('[data-measure="2"]', "wide");
    await expect.poll(() => judgedAs(2), patient).toMatch(/Found "wide", expected a number in in/);
    await page.fill('[data-measure="2"]', "");
    await page.tap("[data-see]");
    expect(await page.textContent("#bench-words")).toMatch(/^Dry fit/);
    await page.tap('#bench-step button:has-text("Back to step")');
    expect(await page.textContent("#bench-count")).toBe(here);
    expect(await page.inputValue('[data-measure="0"]')).toBe("31");
  });

  test(
    "keeps ticks, figures and clocks when the page is gone, clocks by the time of day",
    patient,
    async () => {
      await showStep("wood glue");
      await page.tap('[data-clock]:has-text("open time of wood glue")');
      expect(await page.textContent("#bench-clocks")).toMatch(/wood glue, open time: (8:00|7:5\d) min left/);
      await page.tap('[data-do="tick"]');
      const count = await page.textContent("#bench-count");
      await page.evaluate(`for (const [name, text] of Object.entries(localStorage)) {
      const notes = JSON.parse(text);
      if (notes.clocks) localStorage.setItem(name, JSON.stringify({ ...notes, clocks: notes.clocks.map((one) => ({ ...one, ends: one.ends - 600000 })) }));
    }`);
      await page.reload();
      await expect.poll(() => page.textContent("#bench-count"), patient).toBe(count);
      expect(await page.textContent("#bench-clocks")).toMatch(/wood glue, open time: over for [12]:\d\d min/);
      await page.click('[data-do="list"]');
      expect(await page.textContent("#bench-step")).toMatch(
        /1 of \d+ steps are done[\s\S]*changed \d+ minutes? ago[\s\S]*2 figures are measured/,
      );
      expect(await barriers(page)).toEqual([]);
      await page.tap("[data-away]");
      expect(await page.textContent("#bench-clocks")).toBe("");
    },
  );

  test(
    "opens from the case and leads back to it, with keys alone, and asked nothing of any network",
    patient,
    async () => {
      await page.focus("#bench-back");
      await page.keyboard.press("Enter");
      await expect.poll(() => page.isVisible("#picture")).toBe(true);
      expect(await page.isVisible("#bench")).toBe(false);
      await page.focus('a[href="#bench"]');
      await page.keyboard.press("Enter");
      await expect.poll(() => page.isVisible("#bench-words")).toBe(true);
      expect(asked.filter((url) => !/^(file|blob|data):/.test(url))).toEqual([]);
      expect(errors).toEqual([]);
    },
  );
});

describe.skipIf(noChromium)("the bench from the server", () => {
  const box = (): string => join(folder, "box");
  beforeAll(async () => {
    cpSync(join(jobs, "tables"), box(), { recursive: true });
    cpSync(join(jobs, "bare-box.yaml"), join(box(), "case.yaml"));
    server = await serveBook(box(), {
      live: { built: 1 },
      job: { name: "box", folder: box(), title: "Box" },
    });
    await opened(`${server.url}live#bench`);
  }, patient.timeout);
  afterAll(() => page.close());

  test("gives back as-built.csv, which check reads with the answers of the bench", patient, async () => {
    await expect.poll(() => page.evaluate("document.body.dataset.settled"), patient).toBe("0");
    await showStep("Measure", "outside width");
    await page.fill('[data-measure="0"]', "100");
    await expect.poll(() => judgedAs(0), patient).toMatch(/Out: /);
    const words = await judgedAs(0);
    await page.click('[data-do="list"]');
    const [download] = await Promise.all([page.waitForEvent("download"), page.click('[data-do="download"]')]);
    expect(download.suggestedFilename()).toBe("as-built.csv");
    const text = readFileSync(await download.path(), "utf8");
    await page.click('[data-do="save"]');
    await expect.poll(() => readFileSync(join(box(), "as-built.csv"), "utf8"), patient).toBe(text);
    const read = readJob(box());
    if ("problems" in read) throw new Error(JSON.stringify(read.problems));
    const found = read.job.review.findings.filter(({ id }) => id.startsWith("assembly.as-built"));
    expect(found.map(({ verdict }) => verdict)).toEqual(["fails"]);
    const off = found[0]?.demand?.show({ system: "metric" }) ?? "no figure";
    expect(words).toContain(off);
    expect(await page.isEnabled("#undo")).toBe(true);
    expect(errors).toEqual([]);
  });

  test("writes over no table that changed in the folder meanwhile", patient, async () => {
    const theirs = `${readFileSync(join(box(), "as-built.csv"), "utf8")}# theirs\n`;
    writeFileSync(join(box(), "as-built.csv"), theirs);
    await showStep("Measure", "outside width");
    await page.fill('[data-measure="1"]', "200");
    await page.click('[data-do="list"]');
    await page.click('[data-do="save"]');
    await page.waitForSelector("#conflict pre");
    expect(readFileSync(join(box(), "as-built.csv"), "utf8")).toBe(theirs);
    expect(await page.isVisible("#conflict")).toBe(true);
  });
});
