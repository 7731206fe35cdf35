/** The live page from the server, in Chromium: it saves to the folder, follows it, and shows two versions side by side. */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type BookServer, serveBook } from "../../../lib/book/index.js";
import { noChromium, startChromium } from "../../chromium.js";
import { barriers } from "../../reader.js";

const jobs = resolve(import.meta.dirname, "../../jobs");
let folder = "";
let server: BookServer;
let browser: Browser;
let page: Page;
const file = (): string => join(folder, "case.yaml");
const stands = (): string => readFileSync(file(), "utf8");
const shown = (): Promise<string> => page.inputValue("#text");
const soon = { timeout: 20_000 };

/** Types into the case file, as a builder does. */
async function type(text: string): Promise<void> {
  await page.fill("#text", text);
  await expect.poll(() => page.isEnabled("#save"), soon).toBe(true);
}

/** Somebody else saves the case file. */
function saveOutside(text: string): void {
  writeFileSync(file(), text);
  server.tellSaved();
}

beforeAll(async () => {
  if (noChromium) return;
  folder = mkdtempSync(join(tmpdir(), "casewright-test-"));
  cpSync(join(jobs, "tables"), folder, { recursive: true });
  cpSync(join(jobs, "bare-box.yaml"), file());
  server = await serveBook(folder, { live: { built: 1 }, job: { name: "box", folder, title: "Box" } });
  browser = await startChromium();
  page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  await page.goto(`${server.url}live`);
  await page.evaluate('document.getElementById("texts").open = true');
});
afterAll(async () => {
  await browser?.close();
  await server?.close();
  if (folder) rmSync(folder, { recursive: true });
});

describe.skipIf(noChromium)("the live page from the server", () => {
  test("has nothing to save at first, and saves what was changed with the keyboard", async () => {
    await expect.poll(shown, soon).toBe(stands());
    expect(await page.isEnabled("#save")).toBe(false);
    const changed = `# mine\n${stands()}`;
    await type(changed);
    await page.keyboard.press("Control+s");
    await expect.poll(stands, soon).toBe(changed);
    await expect.poll(() => page.isEnabled("#save"), soon).toBe(false);
  });

  test("follows a file that changed in the folder while nothing was changed here", async () => {
    const changed = `# theirs\n${stands()}`;
    saveOutside(changed);
    await expect.poll(shown, soon).toBe(changed);
    expect(await page.isEnabled("#save")).toBe(false);
  });

  test("keeps its own files when the same file changed on both sides, and saves them once that was chosen", async () => {
    const before = stands();
    await type(`# here\n${before}`);
    saveOutside(`# there\n${before}`);
    await page.waitForSelector("#conflict pre", soon);
    expect(await page.locator("#conflict pre").allInnerTexts()).toEqual([
      expect.stringContaining("# here"),
      expect.stringContaining("# there"),
    ]);
    expect(await barriers(page)).toEqual([]);
    await page.click("#save");
    expect(stands()).toBe(`# there\n${before}`);
    await page.click('[data-take="mine"]');
    await page.click("#save");
    await expect.poll(stands, soon).toBe(`# here\n${before}`);
  });

  test("refuses to save over a file that changed unnoticed, and takes the folder's when that is chosen", async () => {
    const before = stands();
    await type(`# again here\n${before}`);
    writeFileSync(file(), `# unnoticed\n${before}`);
    await page.click("#save");
    await page.waitForSelector("#conflict pre", soon);
    expect(stands()).toBe(`# unnoticed\n${before}`);
    await page.click('[data-take="theirs"]');
    await expect.poll(shown, soon).toBe(`# unnoticed\n${before}`);
    expect(await page.isEnabled("#save")).toBe(false);
    expect(await page.locator("#conflict pre").count()).toBe(0);
  });
});
