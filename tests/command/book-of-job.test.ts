/** From notebook files to a book, through real kernels. */
import { existsSync } from "node:fs";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { printNotebook } from "../../lib/book/index.js";
import { bookArguments, bookOfJob, exitCode } from "../../lib/command/book-of-job.js";

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
test("every notebook becomes a chapter, told of cell by cell", { timeout: 600_000 }, async () => {
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
  expect(await bookOfJob({ files, outDir })).toEqual({ folder: outDir });
  expect(complained).toEqual([]);
  expect(
    said.filter((line) => line.startsWith("one.ipynb")).map((line) => line.replace(/[\d.]+ s$/, "T s")),
  ).toEqual(["one.ipynb: cell 1 of 3, T s", "one.ipynb: cell 2 of 3, T s", "one.ipynb: cell 3 of 3, T s"]);
  expect(said.at(-1)).toMatch(/^built .*good in [\d.]+ s$/);
  const contents = await readFile(join(outDir, "index.html"), "utf8");
  expect(contents).toMatch(/<a href="one\.html">one\?<\/a><span class="cw-verdict cw-holds">/);
  expect(contents).toContain("are invented");
  const chapter = await readFile(join(outDir, "one.html"), "utf8");
  expect(chapter).toContain("It is soil-lab.");
  expect(chapter).toContain('class="cw-spec"');
  expect(chapter).toContain('src="data:image/svg+xml,%3Csvg');
  expect(contents).toContain('href="drawings/index.html"');
  for (const file of [
    "two.html",
    "formulas.html",
    "checks.html",
    "recipe-to-print.html",
    "recipe.md",
    "drawings/index.html",
    "drawings/P1-lower.front.dxf",
  ]) {
    expect([file, existsSync(join(outDir, file))]).toEqual([file, true]);
  }
});

test("what fails stands in its place, is told, and takes nothing along", { timeout: 600_000 }, async () => {
  const outDir = join(folder, "book", "partly");
  const files = [
    await notebookOf(
      "failing",
      'throw new RangeError("no such ply")',
      'const a: number = "b";',
      "await new Promise(() => {});",
      'void Promise.reject(new Error("late"));',
      'console.log("the last cell")',
    ),
    await notebookOf(
      "drawing",
      `import { answer, openJob, show } from "casewright";
const [first, ...others] = openJob().review.money;
const broken = { ...first!, demand: { meaning: "load", show: () => { throw new Error("no scale") } } };
show([broken as unknown as (typeof others)[number], ...others], answer("Drawn."));`,
    ),
    await notebookOf("sound", 'import { answer, show } from "casewright"; show(answer("Sound."));'),
  ];
  const built = await bookOfJob({ files, outDir, timeout: 40_000 });
  expect(exitCode(built)).toBe(2);
  const told = complained.join("\n");
  expect(told).toMatch(/failing\.ipynb, cell 1 \(c1\) failed:\n {2}RangeError: no such ply/);
  expect(told).toMatch(/cell 2 \(c2\) failed:\n {2}TypeScript: .*not assignable/);
  expect(told).toMatch(/cell 3 \(c3\) failed:\n {2}the cell ran longer than 40 s.*--cell-time 80/);
  expect(told).toMatch(/cell 4 \(c4\) failed:\n {2}.*late/);
  expect(told).toMatch(/drawing\.ipynb, cell 1 \(c1\) failed:\n {2}Error: no scale/);
  const page = async (name: string): Promise<string> => readFile(join(outDir, `${name}.html`), "utf8");
  const failing = await page("failing");
  expect(failing).toContain("<b>4 parts of this chapter failed.</b>");
  for (const words of ["no such ply", "not assignable", "ran longer than 40 s", "late", "the last cell"]) {
    expect(failing).toContain(words);
  }
  const drawing = await page("drawing");
  expect(drawing).toContain("<b>1 part of this chapter failed.</b>");
  expect(drawing).toContain("Drawn.");
  expect(drawing).toMatch(/id="money\.[\w-]+"/);
  expect(await page("sound")).not.toContain("failed");
  const contents = await page("index");
  expect(contents).toContain("4 parts failed");
  expect(contents).toContain("Sound.");
});

test("where no cell can be run there is no book, and the previous one stays", {
  timeout: 600_000,
}, async () => {
  const outDir = join(folder, "book", "kept");
  await mkdir(outDir, { recursive: true });
  await writeFile(join(outDir, "index.html"), "before");
  const file = join(folder, "no-notebook.ipynb");
  await writeFile(file, "{}");
  expect(exitCode(await bookOfJob({ files: [file], outDir }))).toBe(1);
  expect(complained.join("\n")).toContain("a book built before is still there");
  expect(await readFile(join(outDir, "index.html"), "utf8")).toBe("before");
  expect(await readdir(outDir)).toEqual(["index.html"]);
});

test.each([
  [[], { names: [], limits: {} }],
  [["my-case", "--cell-time", "300"], { names: ["my-case"], limits: { timeout: 300_000 } }],
  [["--cell-time=2.5", "my-case"], { names: ["my-case"], limits: { timeout: 2_500 } }],
  [["--cell-time"], { wrong: '--cell-time: found "", expected seconds, such as --cell-time 300' }],
  [
    ["--cell-time", "soon"],
    { wrong: '--cell-time: found "soon", expected seconds, such as --cell-time 300' },
  ],
  [["--cell-time", "0"], { wrong: '--cell-time: found "0", expected seconds, such as --cell-time 300' }],
  [["--fast"], { wrong: 'no option "--fast", expected --cell-time SECONDS' }],
])("the arguments %j are read", (args, expected) => {
  expect(bookArguments(args)).toEqual(expected);
});

test("a job with problems is reported before any notebook runs", async () => {
  expect(exitCode(await bookOfJob({ job: "no-such-job" }))).toBe(1);
  expect(complained.join("\n")).toContain("no-such-job: 1 problem");
  expect(said).toEqual([]);
});
