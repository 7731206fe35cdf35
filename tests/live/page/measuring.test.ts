/** Measurements typed row by row in Chromium: written into the table with remarks kept, fitted as they come, undone. */
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { liveFile } from "../../../lib/book/index.js";
import { measuringView } from "../../../lib/live/measuring/measuring-view.js";
import { noChromium, startChromium } from "../../chromium.js";
import { barriers } from "../../reader.js";
import { boxTexts, designIn } from "../bench/job.js";

const patient = { timeout: 60_000 };
const whole = { timeout: 240_000 };
const remark = "# read by lamplight\n";
const header = "strip,sheet,direction,faced,span (mm),width (mm),thickness (mm),load (N),sag (mm)\n";
let folder = "";
let browser: Browser;
let page: Page;
const errors: string[] = [];

const told = (): Promise<string | null> => page.textContent("#measuring-rows .lv-told");

/** The table as the page has it now. */
async function table(): Promise<string> {
  await page.selectOption("#file", "bend-tests.csv");
  return page.inputValue("#text");
}

/** Types the next reading with the keyboard alone: the first new field has the focus. */
async function read(load: string, sag: string, rows: number): Promise<void> {
  await page.keyboard.type(load);
  await page.keyboard.press("Tab");
  await page.keyboard.type(sag);
  await page.keyboard.press("Enter");
  await expect.poll(() => page.locator("#measuring-rows tbody tr").count(), patient).toBe(rows);
  await expect.poll(() => page.evaluate("document.activeElement.dataset.column"), patient).toBe("load");
}

beforeAll(async () => {
  if (noChromium) return;
  folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  for (const [name, text] of Object.entries({ ...boxTexts, "bend-tests.csv": remark + header }))
    writeFileSync(join(folder, name), text);
  writeFileSync(join(folder, "live.html"), liveFile({ name: "box", folder, title: "Box" }));
  browser = await startChromium();
  page = await browser.newPage({ viewport: { width: 390, height: 800 } });
  page.setDefaultTimeout(patient.timeout);
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("pageerror", (error) => errors.push(String(error)));
  await page.goto(`file://${join(folder, "live.html")}`);
  for (const id of ["texts", "measuring-part"])
    await page.evaluate(`document.getElementById("${id}").open = true`);
  await page.waitForSelector("#measuring-new [data-column]");
}, 120_000);
afterAll(async () => {
  await browser?.close();
  if (folder) rmSync(folder, { recursive: true });
});

describe.skipIf(noChromium)("the measuring form", () => {
  test("takes a bend test row by row by keyboard, and fits it from the third load on", whole, async () => {
    const sheet = designIn(boxTexts).stock.sheets[0]?.name ?? "";
    await page.fill('[data-column="strip"]', "A1");
    await page.selectOption('[data-column="sheet"]', sheet);
    for (const [name, value] of [
      ["span", "600"],
      ["width", "50"],
      ["thickness", "9"],
    ] as const)
      await page.fill(`[data-column="${name}"]`, value);
    await page.focus('[data-column="load"]');
    await read("5", "0.9", 1);
    expect(await told()).toContain("at least 3 different loads on a strip, got 1");
    await read("10", "1.7", 2);
    await read("15", "2.6", 3);
    await expect.poll(told, patient).toMatch(/A1: [\d.]+ GPa, between/);
    await read("20", "3.4", 4);
    await read("25", "4.2", 5);
    await read("30", "6.3", 6);
    await expect.poll(told, patient).toContain("Read row 8 again");
    expect(await page.locator("#measuring-rows tr.lv-odd").count()).toBe(1);
    const text = await table();
    expect(text).toBe(
      `${remark}${header}${[
        ["5", "0.9"],
        ["10", "1.7"],
        ["15", "2.6"],
        ["20", "3.4"],
        ["25", "4.2"],
        ["30", "6.3"],
      ]
        .map(([load, sag]) => `A1,${sheet},along,bare,600,50,9,${load},${sag}\n`)
        .join("")}`,
    );
  });

  test("takes another figure in a row, and says what check says of it", whole, async () => {
    await page.fill('#measuring-rows [data-line="8"][data-cell="sag"]', "5.1");
    await page.keyboard.press("Tab");
    await expect.poll(told, patient).not.toContain("Read row 8 again");
    const texts = { ...boxTexts, "bend-tests.csv": await table() };
    const design = designIn(texts);
    const [bends] = measuringView(texts, design, design.stock).tables;
    expect(await page.locator("#measuring-rows .lv-told li").allTextContents()).toEqual(bends?.told);
  });

  test("says what is wrong in a row, and takes it away; undo brings each step back", whole, async () => {
    const good = await table();
    await page.fill('#measuring-rows [data-line="8"][data-cell="load"]', "heavy");
    await page.keyboard.press("Tab");
    await page.waitForSelector("#measuring-rows .lv-problem");
    expect(await page.textContent("#measuring-rows .lv-problem")).toContain('Row 8, load (N): found "heavy"');
    await page.click('[data-away="8"]');
    await expect.poll(() => page.locator("#measuring-rows tbody tr").count(), patient).toBe(5);
    expect(await page.locator("#measuring-rows .lv-problem").count()).toBe(0);
    await page.click("#undo");
    await page.click("#undo");
    await expect.poll(table, patient).toBe(good);
  });

  test("fits a phone, and every reader", whole, async () => {
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(390);
    expect(await barriers(page)).toEqual([]);
    expect(errors).toEqual([]);
  });
});
