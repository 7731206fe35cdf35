/** How long the live page takes in Chromium to answer the demo, cold and after an edit, and how much room it needs. */
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import type { BrowserServer, Page } from "playwright-core";
import { liveFile } from "../../book/index.js";
import { openJob } from "../../job/index.js";
import { type Timed, timesOf } from "./stopwatch.js";

const program = process.env.CASEWRIGHT_CHROMIUM ?? "/usr/bin/chromium";

/** The page is opened anew this often, where there is time for the edits that are usually made. */
const usualRounds = 3;
/** After so many edits its memory is usually looked at. */
export const usualEdits = 200;
/** How long an opening is dragged to and fro, ms. */
const dragging = 3_000;

/** Notes when the page hears what from its workers; runs before the page's own script. */
const eavesdrop = `
window.heard = [];
window.Worker = class extends Worker {
  constructor(address) {
    super(address);
    this.addEventListener("message", ({ data: { kind, edit, question } }) => heard.push({ kind, edit, question, at: performance.now() }));
  }
};
addEventListener("DOMContentLoaded", () => requestAnimationFrame(() => { window.readable = performance.now(); }));`;

/** What the page heard. */
interface Heard {
  readonly kind: string;
  readonly edit?: number;
  readonly question?: string;
  /** ms since the page was opened. */
  readonly at: number;
}

/** Times of one round, ms, by what they are. */
type Round = Readonly<Record<string, number>>;

/**
 * Times the live page of the demo, where there is a Chromium.
 *
 * @param edits after so many edits its memory is looked at; the page is opened three times, or once for less than 200
 * @param say told why nothing is timed
 */
export async function liveBench(edits: number, say: (words: string) => void): Promise<readonly Timed[]> {
  const playwright = await import("playwright-core").catch(() => undefined);
  if (!playwright || !existsSync(program)) {
    say(`the live page is not timed: expected playwright-core and Chromium at ${program}`);
    return [];
  }
  const folder = mkdtempSync(join(tmpdir(), "casewright-bench-"));
  const file = join(folder, "live.html");
  const { name, folder: job, case: build } = openJob("soil-lab");
  writeFileSync(file, liveFile({ name, folder: job, title: build.name }));
  const args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage"];
  const server = await playwright.chromium.launchServer({ executablePath: program, args });
  const browser = await playwright.chromium.connect(server.wsEndpoint());
  try {
    const found: Round[] = [];
    const rounds = edits < usualEdits ? 1 : usualRounds;
    for (let round = 0; round < rounds; round++) {
      const page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
      await page.addInitScript(eavesdrop);
      found.push(await roundOf(page, pathToFileURL(file).href, server, round === rounds - 1 ? edits : 0));
      await page.close();
    }
    const works = [...new Set(found.flatMap((one) => Object.keys(one)))];
    return works.map((work) =>
      timesOf(
        work,
        found.flatMap((one) => one[work] ?? []),
        "live page",
      ),
    );
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true });
  }
}

async function roundOf(page: Page, address: string, server: BrowserServer, edits: number): Promise<Round> {
  await page.goto(address);
  await settled(page, 0);
  const cold = rendererOf(server).processor;
  const readable = (await page.evaluate("window.readable")) as number;
  const first = await heardOf(page, 0);
  await page.selectOption("#face", "upper.front");
  const edit = await edited(page, 1);
  const edit2 = await edited(page, 2);
  const follows = await dragged(page);
  const memory = edits > 0 ? await afterManyEdits(page, server, edits) : undefined;
  return {
    "page readable": readable,
    "first answers, cold": first.answers,
    "all answers, cold": first.all,
    "processor time of the page, cold": cold,
    "first answers after an edit": edit.answers,
    "a panel's own sag after an edit": edit.sag,
    "all answers after an edit": edit.all,
    "first answers after the next edit": edit2.answers,
    "all answers after the next edit": edit2.all,
    "between two sags while dragging": follows,
    ...(memory === undefined ? {} : { [`MB after ${edits} edits`]: memory }),
  };
}

/** The part of the page that is waited for; the library is compiled without a browser's types. */
interface Tab {
  readonly document: { readonly body: { readonly dataset: Readonly<Record<string, string>> } };
}

async function settled(page: Page, edit: number): Promise<void> {
  await page.waitForFunction(
    (number) => (globalThis as unknown as Tab).document.body.dataset.settled === number,
    String(edit),
    { timeout: 600_000 },
  );
}

/** When an edit's first answers, its panels' own sags and its last answer came, ms since the page was opened. */
async function heardOf(page: Page, edit: number): Promise<{ answers: number; sag: number; all: number }> {
  const heard = (await page.evaluate("window.heard")) as readonly Heard[];
  const own = heard.filter((one) => one.edit === edit);
  const firstOf = (kind: string): number => own.find((one) => one.kind === kind)?.at ?? Number.NaN;
  return { answers: firstOf("answers"), sag: firstOf("first"), all: own.at(-1)?.at ?? Number.NaN };
}

/** One opening moved by a key; times since the key. */
async function edited(page: Page, edit: number): ReturnType<typeof heardOf> {
  await page.focus('[data-thing="display window"]');
  const start = (await page.evaluate("performance.now()")) as number;
  await page.keyboard.press(edit % 2 === 1 ? "ArrowRight" : "ArrowLeft");
  await settled(page, edit);
  const { answers, sag, all } = await heardOf(page, edit);
  return { answers: answers - start, sag: sag - start, all: all - start };
}

/** Time from one sag to the next while an opening is dragged, ms. */
async function dragged(page: Page): Promise<number> {
  const thing = page.locator('[data-thing="display window"]');
  await thing.scrollIntoViewIfNeeded();
  const box = await thing.boundingBox();
  if (!box) return Number.NaN;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  const start = Date.now();
  for (let step = 0; Date.now() - start < dragging; step++) {
    await page.mouse.move(x + 15 * Math.sin(step / 10), y);
    await page.waitForTimeout(16);
  }
  await page.mouse.move(x, y);
  await page.mouse.up();
  const heard = (await page.evaluate("window.heard")) as readonly Heard[];
  return dragging / heard.filter(({ kind }) => kind === "held").length;
}

/** MB of the page with its workers after many edits, each of which is answered to its end. */
async function afterManyEdits(page: Page, server: BrowserServer, most: number): Promise<number> {
  const made = async (): Promise<number> => Number(await page.evaluate("document.body.dataset.edit"));
  await settled(page, await made());
  while ((await made()) < most) await edited(page, 1 + (await made()));
  return rendererOf(server).megabytes;
}

/** Processor time, ms, and memory of the process that runs the page and its workers: of those that wait for a page, the busiest. */
function rendererOf(server: BrowserServer): { readonly processor: number; readonly megabytes: number } {
  const root = server.process().pid;
  const parents = new Map(
    readdirSync("/proc")
      .filter(isNumber)
      .map((pid) => [Number(pid), statOf(pid)[1]]),
  );
  const isBelow = (pid: number | undefined): boolean =>
    pid !== undefined && pid > 1 && (pid === root || isBelow(parents.get(pid)));
  const pages = [...parents.keys()].filter(
    (pid) => isBelow(pid) && textOf(`${pid}/cmdline`).includes("--type=renderer"),
  );
  // a clock tick of Linux is 10 ms
  const all = pages.map((pid) => ({
    processor: 10 * ((statOf(String(pid))[11] ?? 0) + (statOf(String(pid))[12] ?? 0)),
    megabytes: Number(/VmRSS:\s+(\d+)/.exec(textOf(`${pid}/status`))?.[1] ?? 0) / 1024,
  }));
  return all.reduce((busiest, one) => (one.processor > busiest.processor ? one : busiest), {
    processor: 0,
    megabytes: 0,
  });
}

const isNumber = (name: string): boolean => /^\d+$/.test(name);

/** What Linux tells of a process after its name: state, parent and so on (proc(5)). */
function statOf(pid: string): readonly number[] {
  return textOf(`${pid}/stat`)
    .replace(/^.*\) /, "")
    .split(" ")
    .map(Number);
}

/** Empty for a process that has ended meanwhile. */
function textOf(path: string): string {
  try {
    return readFileSync(`/proc/${path}`, "utf8");
  } catch {
    return "";
  }
}
