import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { cleanNotebook, parseNotebook, printNotebook } from "../../lib/book/index.js";
import { notebookFiles, notebooks } from "../../lib/command/notebooks.js";

let folder = "";
const said: string[] = [];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
  said.length = 0;
  for (const way of ["log", "error"] as const)
    vi.spyOn(console, way).mockImplementation((line) => said.push(line));
});
afterEach(async () => {
  vi.restoreAllMocks();
  await rm(folder, { recursive: true });
});

const cell = {
  ...{ cell_type: "code" as const, id: "inputs", metadata: { collapsed: true }, source: "1" },
  ...{
    execution_count: 4,
    outputs: [{ output_type: "stream" as const, name: "stdout" as const, text: "1\n" }],
  },
};
const used = printNotebook({ nbformat: 4, nbformat_minor: 5, metadata: {}, cells: [cell] });
const clean = printNotebook(cleanNotebook(parseNotebook(used, "used")));

async function file(name: string, text: string): Promise<string> {
  await writeFile(join(folder, name), text);
  return join(folder, name);
}

describe("npm run notebooks", () => {
  test("check tells which files are not in normal form, and changes none", async () => {
    const files = [await file("a.ipynb", clean), await file("b.ipynb", used), await file("c.ipynb", used)];
    expect(await notebooks(["check", ...files])).toBe(1);
    expect(said).toEqual([
      `${files[1]}: not in normal form; "npm run notebooks -- clean" mends it`,
      `${files[2]}: not in normal form; "npm run notebooks -- clean" mends it`,
    ]);
    expect(await readFile(files[1] ?? "", "utf8")).toBe(used);
  });

  test("check is content with files in normal form", async () => {
    expect(await notebooks(["check", await file("a.ipynb", clean)])).toBe(0);
    expect(said).toEqual([]);
  });

  test("clean brings files into normal form, and says which", async () => {
    const files = [await file("a.ipynb", clean), await file("b.ipynb", used)];
    expect(await notebooks(["clean", ...files])).toBe(0);
    expect(said).toEqual([`${files[1]}: brought into normal form`]);
    expect(await readFile(files[1] ?? "", "utf8")).toBe(clean);
    expect(await notebooks(["check", ...files])).toBe(0);
  });

  test("a file that is no notebook is reported and left alone, and the others are still cleaned", async () => {
    const files = [await file("a.ipynb", "{"), await file("b.ipynb", used)];
    expect(await notebooks(["clean", ...files])).toBe(1);
    expect(said[0]).toMatch(/a\.ipynb: expected a notebook in JSON/);
    expect(await readFile(files[0] ?? "", "utf8")).toBe("{");
    expect(await readFile(files[1] ?? "", "utf8")).toBe(clean);
  });

  test.each([[[]], [["tidy"]]])("says how it is used when asked for %j", async (args) => {
    expect(await notebooks(args)).toBe(1);
    expect(said).toEqual(["usage: npm run notebooks -- clean|check [FILE...]"]);
  });
});

test("the project's own notebooks are in normal form", async () => {
  expect(await notebooks(["check", ...(await notebookFiles())])).toBe(0);
});
