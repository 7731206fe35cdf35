import { mkdtemp, readdir, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, test } from "vitest";
import { KeptOnDisk } from "../../../lib/book/kept-on-disk.js";
import { keptConverter } from "../../../lib/book/kernel/kept-cells.js";
import type { Converted, Converter } from "../../../lib/book/kernel/tslab-internals.js";

let folder = "";
let made = 0;
let compiled: string[] = [];
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
  made = 0;
  compiled = [];
});
afterEach(() => rm(folder, { recursive: true }));

/** A compiler that finds fault with "bad", and imports a file beside it for "side". */
function compiler(): Converter {
  made += 1;
  return {
    convert: (declared, code): Converted => {
      compiled.push(code);
      if (code === "bad") return { diagnostics: ["no"] };
      const side = code === "side" ? { sideOutputs: [{}] } : {};
      return { diagnostics: [], output: `run ${code}`, declOutput: `${declared} ${code}`, ...side };
    },
    addModule: () => [],
    inspect: () => undefined,
    complete: () => ({ start: 0, end: 0, candidates: [] }),
    close: () => {},
  };
}

/** A new kernel over the same folder. */
function kernel(): Converter {
  return keptConverter(compiler, new KeptOnDisk(folder));
}

test("a cell is compiled once for all kernels, and gives the same", () => {
  const first = kernel().convert("before", "a");
  expect(kernel().convert("before", "a")).toEqual(first);
  expect([compiled, made]).toEqual([["a"], 1]);
});

test("the same text after other declarations is another cell", () => {
  kernel().convert("const x: number", "x");
  kernel().convert("const x: string", "x");
  expect(compiled).toEqual(["x", "x"]);
});

test.each([
  ["found wrong", "", "bad"],
  ["that brought other files", "", "side"],
  ["that imports a file beside the notebook", "", 'import { f } from "./f"'],
  ["after such an import", 'import { f } from "../f"', "f()"],
])("a cell %s is compiled each time", (_, declared, code) => {
  kernel().convert(declared, code);
  kernel().convert(declared, code);
  expect(compiled).toEqual([code, code]);
});

test("what was kept and is damaged is compiled again", async () => {
  kernel().convert("", "a");
  for (const name of await readdir(folder)) await writeFile(join(folder, name), '{"diag');
  expect(kernel().convert("", "a")).toMatchObject({ output: "run a" });
  expect(compiled).toEqual(["a", "a"]);
});

test("without a folder, or with one that cannot be written, every cell is compiled", () => {
  for (const place of [undefined, join(folder, "missing")]) {
    const converter = keptConverter(compiler, new KeptOnDisk(place));
    expect(converter.convert("", "a")).toMatchObject({ output: "run a" });
    expect(converter.convert("", "a")).toMatchObject({ output: "run a" });
  }
  expect(compiled).toEqual(["a", "a", "a", "a"]);
});
