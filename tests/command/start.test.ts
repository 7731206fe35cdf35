/** The whole command, as a builder runs it: its own process, real kernels, a real browser. */
import { type ChildProcess, spawn } from "node:child_process";
import { cp, mkdtemp, readFile, rename, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { printNotebook } from "../../lib/book/notebook-file.js";
import { projectFolder } from "../../lib/book/project-folders.js";
import { noChromium, startChromium } from "../chromium.js";
import { openPage } from "../reader.js";

const notebook = printNotebook({
  nbformat: 4,
  nbformat_minor: 5,
  metadata: {},
  cells: [
    { cell_type: "markdown", id: "title", metadata: {}, source: "# What does one cost ready made?" },
    {
      cell_type: "code",
      id: "answer",
      metadata: {},
      execution_count: null,
      outputs: [],
      source:
        'import { answer, openJob, show } from "casewright";\nshow(answer("It costs " + openJob().case.business.readyMade.amount + " today."));',
    },
  ],
});

describe.skipIf(noChromium)("npm start", () => {
  let folder = "";
  let job = "";
  let process_: ChildProcess;
  let printed = "";
  let browser: Browser;
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
    job = join(folder, "followed-job");
    await cp(join(projectFolder(), "data/soil-lab"), job, { recursive: true });
    await writeFile(join(folder, "one.ipynb"), notebook);
    browser = await startChromium();
    const program = join(projectFolder(), "lib/dist/command/main.js");
    process_ = spawn(process.execPath, [program, "start", job, join(folder, "one.ipynb")], {
      env: { ...process.env, CASEWRIGHT_NO_BROWSER: "1" },
    });
    for (const stream of [process_.stdout, process_.stderr]) {
      stream?.setEncoding("utf8").on("data", (text: string) => {
        printed += text;
      });
    }
    await vi.waitFor(() => expect(printed).toContain("Ctrl+C stops"), { timeout: 600_000 });
  }, 600_000);
  afterAll(async () => {
    process_?.kill("SIGKILL");
    await browser?.close();
    await rm(folder, { recursive: true });
  });

  /** Writes the case with another price, as an editor does that writes beside and moves into place. */
  async function savePrice(price: string): Promise<void> {
    const file = join(job, "case.yaml");
    const text = await readFile(file, "utf8");
    await writeFile(`${file}.new`, text.replace(/ready made: \S+/, `ready made: ${price}`));
    await rename(`${file}.new`, file);
  }

  test("follows an edit, tells a mistake and forgets it when it is mended, and ends cleanly", {
    timeout: 240_000,
  }, async () => {
    const address = /http:\/\/127\.0\.0\.1:\d+\//.exec(printed)?.[0] ?? "";
    const { page, troubles } = await openPage(browser, address);
    const told = async (): Promise<string | undefined> =>
      (await page.locator(".cw-told").first().textContent())?.replaceAll("\u00a0", " ");
    const soon = { timeout: 600_000 };
    expect(await told()).toBe("It costs 2400 today.");

    await savePrice("3120");
    await expect.poll(told, soon).toBe("It costs 3120 today.");

    await savePrice("dear");
    const alert = page.getByRole("alert");
    await alert.waitFor(soon);
    expect(await alert.textContent()).toMatch(/1 problem[\s\S]*business\.ready made\s+found +dear/);
    expect(await told()).toBe("It costs 3120 today.");

    await savePrice("3120");
    await expect.poll(() => alert.count(), soon).toBe(0);

    await writeFile(
      join(folder, "one.ipynb"),
      notebook.replace("today", "tomorrow").replace("answer(", "answr("),
    );
    const failed = page.locator(".cw-failed");
    await failed.waitFor(soon);
    expect(await failed.textContent()).toBe("1 part failed");
    expect(await alert.count()).toBe(0);
    expect(printed).toMatch(/one\.ipynb, cell 1 \(answer\) failed:[\s\S]*answr/);

    await writeFile(join(folder, "one.ipynb"), notebook.replace("today", "tomorrow"));
    await expect.poll(told, soon).toBe("It costs 3120 tomorrow.");
    expect([await alert.count(), await failed.count()]).toEqual([0, 0]);
    expect(troubles).toEqual([]);

    const ended = new Promise((resolve) => process_.once("close", (code) => resolve(code)));
    process_.kill("SIGINT");
    expect(await ended).toBe(0);
    await expect(fetch(address)).rejects.toThrow();
  });
});
