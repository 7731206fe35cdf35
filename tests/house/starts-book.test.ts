/** Each start becomes a whole book, with nothing broken in it, and no chapter too long. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test, vi } from "vitest";
import { bookOfJob } from "../../lib/command/book-of-job.js";
import { newJob } from "../../lib/command/new.js";
import { bookFolder } from "../../lib/command/places.js";
import { openJob } from "../../lib/job/index.js";
import { longChapters } from "../reader.js";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-starts-"));
  vi.spyOn(console, "log").mockImplementation(() => {});
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test.each([
  ["box", "--inch"],
  ["two-section", "--metric"],
  ["tall", "--inch"],
  ["trunk", "--metric"],
])("%s, %s", { timeout: 600_000 }, async (start, units) => {
  const job = join(folder, start);
  expect(await newJob([job, "--start", start, units])).toBe(0);
  const outDir = join(folder, "books", start);
  expect(await bookOfJob({ job, outDir, timeout: 300_000 })).toEqual({ folder: outDir });
  expect(await readFile(join(outDir, "index.html"), "utf8")).toContain("The recipe");
  expect(await longChapters(outDir)).toEqual([]);
});

test("two jobs of one name in different folders have a book each, beside them", async () => {
  const books = [join(folder, "a", "mine"), join(folder, "b", "mine")].map(async (job) => {
    await newJob([job]);
    return bookFolder(openJob(job));
  });
  expect(await Promise.all(books)).toEqual([
    join(folder, "a", "book", "mine"),
    join(folder, "b", "book", "mine"),
  ]);
});
