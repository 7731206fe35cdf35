/** Cases unlike the demo, each through all chapters: a whole book, in their own words and units. */
import { readdir, readFile, stat } from "node:fs/promises";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { describe, expect, test, vi } from "vitest";
import { bookOfJob } from "../../lib/command/book-of-job.js";
import { openJob } from "../../lib/job/index.js";
import { noChromium, startChromium } from "../chromium.js";
import { otherJob } from "../other-jobs.js";
import { desktop, wordsInSight } from "../reader.js";

/** What a reader reads of a page: no cells, no drawings, no workings, no sources. */
function wordsOf(page: string): string {
  const main = page.slice(page.indexOf("<main"), page.indexOf("</main>"));
  return main
    .replace(/<details class="cw-(workings|how)">[\s\S]*?<\/details>/g, " ")
    .replace(/<(svg|script|math)[\s\S]*?<\/\1>/g, " ")
    .replace(/<[^>]+>/g, "\n")
    .replaceAll("\u00a0", " ");
}

/** Chapters with more words in sight than a reader takes, or in a file that is slow to load. */
async function longOf(folder: string, chapters: readonly string[]): Promise<readonly unknown[]> {
  const browser = noChromium ? undefined : await startChromium();
  const long: unknown[] = [];
  for (const file of chapters) {
    const page = await browser?.newPage({ viewport: desktop });
    await page?.goto(pathToFileURL(join(folder, file)).href);
    const words = page ? await wordsInSight(page) : 0;
    const kilobytes = (await stat(join(folder, file))).size / 1024;
    if (words > 1500 || kilobytes > 400) long.push({ file, words, kilobytes });
    await page?.close();
  }
  await browser?.close();
  return long;
}

describe.each(["bare-box", "tower-of-six"] as const)("the book of %s", (name) => {
  test("is whole and speaks of this case alone", { timeout: 900_000 }, async () => {
    const job = await otherJob(name);
    const outDir = join(job, "../book");
    const quiet = vi.spyOn(console, "log").mockReturnValue(undefined);
    expect(await bookOfJob({ job, outDir })).toEqual({ folder: outDir });
    quiet.mockRestore();
    const chapters = (await readdir(outDir)).filter((file) => /^\d\d-.*html$/.test(file));
    expect(chapters).toHaveLength(10);
    expect(await longOf(outDir, chapters.slice(0, 9))).toEqual([]);
    const first = await readFile(join(outDir, "index.html"), "utf8");
    expect(first).toContain(`<p>${openJob(job).review.findings.length} questions: `);
    for (const file of [...chapters, "index.html"]) {
      const words = wordsOf(await readFile(join(outDir, file), "utf8"));
      expect([
        file,
        words.match(/fair\b|fairground|exhibit|soil|spectrometer|upper\.|third of a face/i),
      ]).toEqual([file, null]);
      expect([
        file,
        words.match(/NaN|undefined|Infinity|please report|\b1 (sheets|bars|people|things)\b/),
      ]).toEqual([file, null]);
      // A metric case has no inches and no pounds.
      expect([file, words.match(/\d (lb|lbf|ft|psi|°F)\b|\d in[.,;)]/)]).toEqual([file, null]);
    }
  });
});
