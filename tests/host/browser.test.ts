/** The library with the browser's host, in a real browser: the same findings as under Node.js, from files in memory. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { rolldown } from "rolldown";
import { describe, expect, test } from "vitest";
import { dataFolder, demoJob, openJob } from "../../lib/job/index.js";
import { noChromium, startChromium } from "../chromium.js";

interface ToldFinding {
  readonly id: string;
  readonly verdict: string;
  readonly ratio: number | null;
}

const entry = `
import { openJob } from "../../lib/dist/index.js";
import { page } from "../../lib/dist/host/browser.js";
globalThis.review = (name, texts) => {
  page.jobs.set(name, texts);
  return openJob(name).review.findings.map(({ id, verdict, ratio }) => ({ id, verdict, ratio: ratio ?? null }));
};`;

/** The library as one script for a browser. */
async function bundled(): Promise<string> {
  const build = await rolldown({
    input: "entry",
    platform: "browser",
    plugins: [
      {
        name: "entry",
        resolveId: (name) => (name === "entry" ? join(import.meta.dirname, "entry.js") : null),
        load: (name) => (name.endsWith(join("host", "entry.js")) ? entry : null),
      },
    ],
    onLog: (level, log, handler) =>
      log.code === "UNRESOLVED_IMPORT" ? handler("error", log) : handler(level, log),
  });
  const { output } = await build.generate({ format: "iife", minify: true });
  await build.close();
  return output[0].code;
}

describe.skipIf(noChromium)("the library in a browser", () => {
  test("answers the demo as Node.js does", { timeout: 600_000 }, async () => {
    const script = await bundled();
    const folder = join(dataFolder(), demoJob);
    const texts = Object.fromEntries(
      readdirSync(folder).map((file) => [file, readFileSync(join(folder, file), "utf8")]),
    );
    const browser = await startChromium();
    try {
      const tab = await browser.newPage();
      await tab.addScriptTag({ content: script });
      const told: readonly ToldFinding[] = await tab.evaluate(
        ([name, files]) =>
          (globalThis as unknown as { review: (...given: unknown[]) => [] }).review(name, files),
        [demoJob, texts] as const,
      );
      const here = openJob(demoJob).review.findings;
      expect(told.map(({ id, verdict }) => `${id} ${verdict}`)).toEqual(
        here.map(({ id, verdict }) => `${id} ${verdict}`),
      );
      for (const [i, { ratio = null }] of here.entries()) {
        if (ratio === null) expect(told[i]?.ratio).toBeNull();
        else expect(told[i]?.ratio).toBeCloseTo(ratio, 6);
      }
    } finally {
      await browser.close();
    }
  });
});
