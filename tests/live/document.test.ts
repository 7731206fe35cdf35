/** The live page in Chromium, opened from disk: the answers of Node.js, three ways to one change, nothing asked of any network. */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { liveFile } from "../../lib/book/index.js";
import { openJob, readJob } from "../../lib/job/index.js";
import type { Told } from "../../lib/live/index.js";
import { noChromium, startChromium } from "../chromium.js";

const project = resolve(import.meta.dirname, "../..");
const patient = { timeout: 400_000 };

/** Listens to the page's workers; runs before the page's own script. */
const eavesdrop = `
window.told = []; window.workers = [];
window.Worker = class extends Worker {
  constructor(address) { super(address); window.workers.push(this); this.addEventListener("message", ({ data }) => window.told.push(data)); }
};`;

interface Listening {
  readonly told: Told[];
  readonly workers: { postMessage(message: unknown): void }[];
}

/** The parts of a page used here; tests are compiled without a browser's types. */
interface Tab {
  readonly document: {
    readonly body: { readonly dataset: Readonly<Record<string, string>> };
    getElementById(id: string): { readonly textContent: string };
  };
}

type Texts = Readonly<Record<string, string>>;

function filesIn(folder: string): Texts {
  const names = readdirSync(folder).filter((name) => statSync(join(folder, name)).isFile());
  return Object.fromEntries(names.map((name) => [name, readFileSync(join(folder, name), "utf8")]));
}

let browser: Browser;
let page: Page;
let folder = "";
const asked: string[] = [];
const errors: string[] = [];

async function settled(edit: number): Promise<void> {
  await page.waitForFunction(
    (number) => (globalThis as unknown as Tab).document.body.dataset.settled === number,
    String(edit),
    patient,
  );
}

/** The newest edit's number. */
async function edits(): Promise<number> {
  return Number(await page.evaluate("document.body.dataset.edit"));
}

/** What was answered for an edit, in the order of ids. */
async function answered(edit: number): Promise<string[]> {
  const told = await page.evaluate(() => (globalThis as unknown as Listening).told);
  return told
    .flatMap((one) => (one.kind === "answers" && one.edit === edit ? one.answers : []))
    .map(({ id, verdict, ratio }) => line(id, verdict, ratio))
    .sort();
}

/** Nine figures: the browser's sine and cosine differ from those of Node.js in the last. */
function line(id: string, verdict: string, ratio: number | undefined): string {
  return `${id} ${verdict} ${ratio === undefined ? "" : ratio.toPrecision(7)}`;
}

function fresh(texts: Texts): string[] {
  const job = join(folder, `job-${Math.random().toString(36).slice(2)}`);
  mkdirSync(job);
  for (const [name, text] of Object.entries(texts)) writeFileSync(join(job, name), text);
  const read = readJob(job);
  if ("problems" in read) throw new Error(JSON.stringify(read.problems));
  return read.job.review.findings.map(({ id, verdict, ratio }) => line(id, verdict, ratio)).sort();
}

/** Opens a part of the page. */
async function open(id: string): Promise<void> {
  await page.evaluate(`document.getElementById("${id}").open = true`);
}

/** Takes a thing with the pointer and moves it; begins again where the page moved below the pointer meanwhile. */
async function takeUp(thing: string, right: number): Promise<void> {
  const held = page.locator(`[data-thing="${thing}"]`);
  for (let tries = 0; tries < 20; tries++) {
    await held.hover();
    const box = await held.boundingBox();
    if (!box) throw new Error(`no ${thing} on the face`);
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + right, y, { steps: 4 });
    if ((await page.textContent("#hand-size"))?.startsWith(`${thing}:`)) return;
    await page.mouse.up();
  }
  throw new Error(`${thing} was not taken in twenty tries`);
}

/** The files that the page has now, by its own zip. */
async function zipped(): Promise<Texts> {
  await open("keep");
  const [download] = await Promise.all([page.waitForEvent("download"), page.click("#zip-out")]);
  const bytes = readFileSync(await download.path());
  const files = Object.entries(unzipSync(bytes)).map(
    ([name, content]) => [name.replace(/^.*\//, ""), content] as const,
  );
  return Object.fromEntries(files.map(([name, content]) => [name, strFromU8(content)]));
}

beforeAll(async () => {
  if (noChromium) return;
  execFileSync(process.execPath, [join(project, "lib/bundle.mjs")], { stdio: "inherit" });
  folder = mkdtempSync(join(tmpdir(), "casewright-live-"));
  const demo = openJob("soil-lab");
  writeFileSync(join(folder, "live.html"), liveFile({ ...demo, title: demo.case.name }));
  browser = await startChromium();
  page = await browser.newPage({ viewport: { width: 390, height: 800 } });
  page.setDefaultTimeout(patient.timeout);
  page.on("request", (request) => asked.push(request.url()));
  page.on("console", (message) => message.type() === "error" && errors.push(message.text()));
  page.on("pageerror", (error) => errors.push(String(error)));
  await page.addInitScript(eavesdrop);
  await page.goto(`file://${join(folder, "live.html")}`);
  await settled(0);
}, patient.timeout);
afterAll(async () => {
  await browser?.close();
  if (folder) rmSync(folder, { recursive: true });
});

describe.skipIf(noChromium)("the live page", () => {
  test("answers the demo as Node.js does", patient, async () => {
    expect(await answered(0)).toEqual(fresh(filesIn(join(project, "data/soil-lab"))));
    const sizes = (await page.locator("#picture svg text").allTextContents()).filter((one) =>
      / in$/.test(one),
    );
    expect(sizes).toHaveLength(3);
    expect(await page.textContent("#verdict")).toContain(`Size over metal${sizes.join(" × ")}`);
  });

  test("sets the equations of a working as soon as it is opened", patient, async () => {
    const working = '[data-working="stiffness.upper.front"]';
    await page.evaluate(`document.querySelector('${working}').open = true`);
    await page.waitForSelector(`${working} math`, { state: "attached", timeout: 60_000 });
    expect(await page.locator("[data-tex]").count()).toBe(0);
  });

  test("comes to the same text by hand, by form and by typing, and undoes each", patient, async () => {
    const given = await zipped();
    await page.selectOption("#face", "upper.front");
    await page.focus('[data-thing="display window"]');
    await page.keyboard.press("Shift+ArrowRight");
    await settled(1);
    const byHand = await zipped();
    await page.click("#undo");
    // until then the form shows the value from before
    await settled(2);
    await open("fields");
    for (const block of ["", ".upper", ".upper.panels", ".upper.panels.front"].map(
      (one) => `sections${one}`,
    )) {
      await page.click(`[data-key="block ${block}"] > summary`);
    }
    const opening = "sections.upper.panels.front.openings";
    await page.click(`[data-key="block ${opening}"] > summary`);
    await page.click(`[data-key="block ${opening}.display window"] > summary`);
    await page.fill(`[data-place="${opening}.display window.across"]`, "4");
    await page.keyboard.press("Tab");
    await settled(3);
    const byForm = await zipped();
    await page.click("#undo");
    expect(await zipped()).toEqual(given);
    await settled(4);
    await open("texts");
    const text = given["case.yaml"] ?? "";
    await page.fill(
      "#text",
      text.replace("across: 3\n            up: 8-1/4", "across: 4\n            up: 8-1/4"),
    );
    await settled(5);
    const typed = await zipped();
    expect(byHand["case.yaml"]).not.toBe(text);
    expect(byHand).toEqual(typed);
    expect(byForm).toEqual(typed);
    expect(await answered(5)).toEqual(fresh(typed));
    expect(await page.textContent("#changed")).toMatch(/upper, off the middle between the handles: .* to /);
  });

  test("tries what mends an answer, takes a change, and locks what must not move", patient, async () => {
    const worst = "joints.drop-corner.lower.ball corner";
    const button = (what: string) => page.locator(`[data-id="${worst}"] [data-${what}]`).first();
    const tried = page.locator(`[data-id="${worst}"] .lv-mendings`, { hasNotText: "Trying what" });
    const before = await edits();
    await tried.waitFor({ timeout: 120_000 });
    const lock = await button("lock").getAttribute("data-lock");
    await button("mends").click();
    await settled(before + 1);
    expect((await answered(before + 1)).find((one) => one.startsWith(worst))).toContain(" holds ");
    await page.click("#undo");
    await settled(before + 2);
    await tried.waitFor({ timeout: 120_000 });
    await button("lock").click();
    await settled(before + 3);
    expect((await zipped())["case.yaml"]).toContain(`keep: ["${lock}"]`);
    await page.click("#undo");
    await settled(before + 4);
  });

  test("drags a thing with the pointer to where the keys would put it", patient, async () => {
    const before = await edits();
    await takeUp("sample port", -8);
    await page.waitForFunction(() =>
      /sag about .* in, worked out roughly; .* is allowed/.test(
        (globalThis as unknown as Tab).document.getElementById("hand-sag").textContent,
      ),
    );
    expect(await page.textContent("#hand-size")).toMatch(/^sample port: \d+(-\d+\/\d+)? in across/);
    await page.mouse.up();
    await settled(before + 1);
    const { "case.yaml": moved = "" } = await zipped();
    const said = /sample port:[\s\S]*?across: (\S+)\n/.exec(moved)?.[1];
    expect(said).toMatch(/^[6-9](-\d+\/\d+)?$/);
    await page.click("#undo");
  });

  test("tells at once what makes the files wrong, and keeps the answers from before", patient, async () => {
    const before = await edits();
    const text = await page.inputValue("#text");
    await page.fill("#text", text.replace("push: 30 lbf", "push: 30 lbz"));
    await settled(before + 1);
    expect(await page.textContent("#notice")).toContain("demands.push");
    expect(await page.locator("#answers article.lv-stale").count()).toBeGreaterThan(100);
    await page.click("#undo");
    await page.waitForFunction(
      () => (globalThis as unknown as Tab).document.getElementById("notice").textContent === "",
    );
  });

  test("opens another case from a zip, and answers it as Node.js does", patient, async () => {
    const jobs = join(project, "tests/jobs");
    const tables = filesIn(join(jobs, "tables"));
    const texts = { ...tables, "case.yaml": readFileSync(join(jobs, "bare-box.yaml"), "utf8") };
    const packed = zipSync(
      Object.fromEntries(Object.entries(texts).map(([name, one]) => [`box/${name}`, strToU8(one)])),
    );
    const edit = 1 + (await edits());
    await page.setInputFiles("#zip-in", {
      name: "box.zip",
      mimeType: "application/zip",
      buffer: Buffer.from(packed),
    });
    await settled(edit);
    expect(await answered(edit)).toEqual(fresh(texts));
    const open = page.locator("#answers > .lv-box").first().locator(".lv-answer");
    expect(await open.locator('> details[data-key^="answer "]').count()).toBe((await open.count()) - 3);
    await open.locator('> details[data-key^="answer "] > summary').first().focus();
    await page.keyboard.press("Enter");
    expect(
      await open.locator('> details[data-key^="answer "]').first().locator("> p").first().isVisible(),
    ).toBe(true);
    await page.click("#undo");
    await settled(edit + 1);
  });

  test(
    "takes another price of a sheet from the rack, and shows how the sheets are cut",
    patient,
    async () => {
      const edit = 1 + (await edits());
      await open("rack-part");
      await page.fill('[data-file="sheet-stock.csv"][data-column^="price"] >> nth=0', "75");
      await page.keyboard.press("Tab");
      await settled(edit);
      const { "sheet-stock.csv": table = "" } = await zipped();
      expect(table).toContain(",75,timber yard,");
      expect(await page.locator("#rack svg").count()).toBeGreaterThan(1);
      await page.click("#undo");
      const next = page.locator('[data-file="sheet-stock.csv"][data-column^="price"]').nth(1);
      await next.fill("95");
      await settled(edit + 1);
      expect(await next.inputValue()).toBe("95");
      await page.keyboard.press("Tab");
      await settled(edit + 2);
      expect((await zipped())["sheet-stock.csv"]).toContain(",95,timber yard,");
      await page.click("#undo");
      await settled(edit + 3);
    },
  );

  test("begins a worker again that stopped, and says when no draft can be kept", patient, async () => {
    await page.evaluate(() => {
      (globalThis as unknown as Listening).workers[0]?.postMessage({ kind: "files", edit: 1e6, texts: null });
    });
    await page.waitForFunction(() => (globalThis as unknown as Listening).workers.length === 3);
    await page.evaluate(
      'Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError"); }',
    );
    const before = await edits();
    await page.selectOption("#face", "upper.front");
    await page.focus('[data-thing="display window"]');
    await page.keyboard.press("ArrowLeft");
    await page.waitForFunction(() =>
      (globalThis as unknown as Tab).document.getElementById("state").textContent.includes("keeps no draft"),
    );
    await settled(before + 1);
  });

  test("fits a phone, has no fault for a reader with other means, and asked nothing of any network", async () => {
    expect(await page.evaluate("document.documentElement.scrollWidth")).toBeLessThanOrEqual(390);
    const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
    await page.evaluate(axe);
    const faults = await page.evaluate(async () => {
      const run = (
        globalThis as unknown as {
          axe: { run(): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
        }
      ).axe;
      return (await run.run()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 120)}`);
    });
    expect(faults).toEqual([]);
    expect(asked.filter((url) => !/^(file|blob|data):/.test(url))).toEqual([]);
    expect(errors.filter((one) => !/null|undefined/.test(one))).toEqual([]);
  });
});

test.skipIf(noChromium)("its scripts stay small: 1.6 MB of library, 0.7 MB of page", () => {
  const size = (name: string): number => statSync(join(project, `lib/dist/live/${name}.bundle.js`)).size;
  expect(size("worker")).toBeLessThan(1_600_000);
  expect(size("page")).toBeLessThan(700_000);
});
