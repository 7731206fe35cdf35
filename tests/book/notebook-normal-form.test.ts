import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Cell, cleanNotebook, type Notebook, printNotebook } from "../../lib/book/index.js";
import { schemaProblems } from "./json-schema.js";

const schema = JSON.parse(readFileSync(join(import.meta.dirname, "nbformat.v4.5.schema.json"), "utf8"));

const code = (id: string, source: string): Cell => ({
  cell_type: "code",
  id,
  metadata: { collapsed: true, tags: ["inputs"], vscode: { languageId: "typescript" } },
  source,
  execution_count: 7,
  outputs: [{ output_type: "stream", name: "stdout", text: "12\n" }],
});
const notebook = (...cells: Cell[]): Notebook => ({
  nbformat: 4,
  nbformat_minor: 5,
  metadata: { kernelspec: { name: "other" }, toc: {} },
  cells,
});
const ids = (...cells: Cell[]): string[] => cleanNotebook(notebook(...cells)).cells.map(({ id }) => id);

describe("the normal form of a notebook", () => {
  test("drops outputs, counts and what editors leave behind, and names the project's kernel", () => {
    expect(cleanNotebook(notebook(code("one", "1")))).toEqual({
      nbformat: 4,
      nbformat_minor: 5,
      metadata: {
        kernelspec: { display_name: "TypeScript (Casewright)", language: "typescript", name: "casewright" },
        language_info: { file_extension: ".ts", mimetype: "text/typescript", name: "typescript" },
      },
      cells: [
        {
          cell_type: "code",
          id: "one",
          metadata: { tags: ["inputs"] },
          source: "1",
          execution_count: null,
          outputs: [],
        },
      ],
    });
  });

  test("fits the notebook schema", () => {
    const clean = cleanNotebook(notebook(code("one", "1"), code("9f3c2a10", "2\n3")));
    expect(schemaProblems(schema, JSON.parse(printNotebook(clean)))).toEqual([]);
  });

  test("is its own normal form", () => {
    const once = cleanNotebook(notebook(code("one", "1"), code("9f3c2a10", "2"), code("last", "")));
    expect(cleanNotebook(once)).toEqual(once);
  });

  test("keeps ids written by hand", () => {
    expect(ids(code("inputs", "1"), code("will-it-hold", "2"))).toEqual(["inputs", "will-it-hold"]);
  });

  test("gives cells with a random id one that depends on their text alone", () => {
    const [first] = ids(code("9f3c2a10", "mm(3)"), code("b", "2"));
    const [, second] = ids(code("b", "2"), code("0b5e6c1d-6d1c-4f6e-9a64-1f2d3c4b5a69", "mm(3)"));
    expect(first).toMatch(/^c-[0-9a-f]{8}$/);
    expect(second).toBe(first);
  });

  test("tells cells of equal text apart", () => {
    const [first = "", second] = ids(code("9f3c2a10", "1"), code("9f3c2a11", "1"));
    expect(second).toBe(`${first}-2`);
  });

  test("drops the empty cell that editors leave at the end, and only that", () => {
    expect(ids(code("a", " \n"), code("b", "1"), code("c", "\n"))).toEqual(["a", "b"]);
  });
});
