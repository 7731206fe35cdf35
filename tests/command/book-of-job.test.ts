/** From notebook files to a book, through real kernels. */
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { printNotebook } from "../../lib/book/index.js";
import { bookOfJob } from "../../lib/command/book-of-job.js";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
});
afterAll(() => rm(folder, { recursive: true }));

let said: string[] = [];
let complained: string[] = [];
beforeEach(() => {
  said = [];
  complained = [];
  vi.spyOn(console, "log").mockImplementation((line) => void said.push(String(line)));
  vi.spyOn(console, "error").mockImplementation((line) => void complained.push(String(line)));
});
afterEach(() => vi.restoreAllMocks());

/** Writes a notebook with these code cells, named c1, c2 and so on. */
async function notebookOf(name: string, ...sources: string[]): Promise<string> {
  const cells = sources.map((source, i) => ({
    cell_type: "code" as const,
    id: `c${i + 1}`,
    metadata: {},
    source,
    execution_count: null,
    outputs: [],
  }));
  const title = {
    cell_type: "markdown" as const,
    id: "title",
    metadata: {},
    source: `# ${name}?\n\nIs it so?`,
  };
  const file = join(folder, `${name}.ipynb`);
  await writeFile(
    file,
    printNotebook({ nbformat: 4, nbformat_minor: 5, metadata: {}, cells: [title, ...cells] }),
  );
  return file;
}

// Runs every published check and writes the whole recipe, so it takes its time on a busy machine.
test("every notebook becomes a chapter, told of cell by cell", { timeout: 120_000 }, async () => {
  const files = [
    await notebookOf(
      "one",
      'import { answer, lineChart, openJob, show } from "casewright";',
      `const rows = [1, 2, 3].map((a) => ({ a, b: a * a }));
show(lineChart({ title: "Squares", description: "d", rows, x: { field: "a", title: "A" }, y: { field: "b", title: "B" } }));`,
      'show(answer("It is " + openJob().name + ".", "holds"));',
    ),
    await notebookOf("two", "console.log(1 + 1)"),
  ];
  const outDir = join(folder, "book", "good");
  expect(await bookOfJob({ files, outDir })).toBe(outDir);
  expect(complained).toEqual([]);
  expect(
    said.filter((line) => line.startsWith("one.ipynb")).map((line) => line.replace(/[\d.]+ s$/, "T s")),
  ).toEqual(["one.ipynb: cell 1 of 3, T s", "one.ipynb: cell 2 of 3, T s", "one.ipynb: cell 3 of 3, T s"]);
  expect(said.at(-1)).toMatch(/^built .*good in [\d.]+ s$/);
  const contents = await readFile(join(outDir, "index.html"), "utf8");
  expect(contents).toContain("It is soil-lab.");
  expect(contents).toContain("are invented");
  const chapter = await readFile(join(outDir, "one.html"), "utf8");
  expect(chapter).toContain('class="cw-spec"');
  expect(chapter).toContain("data:image/svg+xml;base64,");
  for (const file of ["two.html", "formulas.html", "checks.html", "recipe-to-print.html", "recipe.md"]) {
    expect([file, existsSync(join(outDir, file))]).toEqual([file, true]);
  }
});

test.each([
  [
    "throws",
    ['throw new RangeError("no such ply")'],
    /failing\.ipynb, cell 2 \(c2\) failed:\n {2}RangeError: no such ply/,
  ],
  ["has a type error", ['const a: number = "b";'], /cell 2 \(c2\) failed:\n {2}TypeScript: .*not assignable/],
  [
    "hangs",
    ["await new Promise(() => {});"],
    /cell 2 \(c2\) failed:\n {2}.*1\.5 s|cell 2 \(c2\) failed:\n {2}.*1500/,
  ],
  [
    "leaves a rejected promise",
    ['void Promise.reject(new Error("late"));'],
    /cell 2 \(c2\) failed:\n {2}.*late/,
  ],
])(
  "a cell that %s is named, and the previous book stays",
  { timeout: 60_000 },
  async (what, sources, message) => {
    const outDir = join(folder, "book", "kept");
    await mkdir(outDir, { recursive: true });
    await writeFile(join(outDir, "index.html"), "before");
    const files = [await notebookOf("failing", "const fine = 1;", ...sources)];
    // Only the cell that hangs has to be stopped; the others wait for the compiler, which starts with the first new cell.
    const timeout = what === "hangs" ? 1500 : 30_000;
    expect(await bookOfJob({ files, outDir, timeout })).toBeUndefined();
    expect(complained.join("\n")).toMatch(message);
    expect(complained.join("\n")).toContain("a book built before is still there");
    expect(await readFile(join(outDir, "index.html"), "utf8")).toBe("before");
    expect(await readdir(outDir)).toEqual(["index.html"]);
  },
);

test("a job with problems is reported before any notebook runs", async () => {
  expect(await bookOfJob({ job: "no-such-job" })).toBeUndefined();
  expect(complained.join("\n")).toContain("no-such-job: 1 problem");
  expect(said).toEqual([]);
});
