/** The kernel under the real Jupyter, a second implementation of the protocol. */
import { mkdtemp, readFile, rm, symlink, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  type Cell,
  cleanNotebook,
  parseNotebook,
  printNotebook,
  projectFolder,
} from "../../../lib/book/index.js";
import { jupyter, needJupyter } from "../../jupyter.js";
import { printed } from "./kernel.js";

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
  // A notebook finds the library as one in the project does.
  await symlink(join(projectFolder(), "node_modules"), join(folder, "node_modules"), "junction");
});
afterAll(() => rm(folder, { recursive: true }));

/** Runs code cells in Jupyter. The notebook's name says which kernel it wants, as for all notebooks here. */
async function executed(...sources: string[]): Promise<readonly Cell[]> {
  const cells = sources.map((source, i) => ({
    ...{ cell_type: "code" as const, id: `c${i}`, metadata: {}, source },
    ...{ execution_count: null, outputs: [] },
  }));
  const notebook = cleanNotebook({ nbformat: 4, nbformat_minor: 5, metadata: {}, cells });
  const file = join(folder, "in.ipynb");
  await writeFile(file, printNotebook(notebook));
  const args = ["nbconvert", "--to", "notebook", "--execute", file, "--output", "out.ipynb"];
  await jupyter(args, "my-case");
  const out = join(folder, "out.ipynb");
  return parseNotebook(await readFile(out, "utf8"), out).cells;
}

describe("under Jupyter", () => {
  test("the project's kernel is found", async (context) => {
    await needJupyter(context);
    const { spec } = JSON.parse(await jupyter(["kernelspec", "list", "--json"], "my-case")).kernelspecs
      .casewright;
    expect(spec).toMatchObject({ display_name: "TypeScript (Casewright)", language: "typescript" });
  });

  test("cells run with the library, numbered, and no line is lost", async (context) => {
    await needJupyter(context);
    const cells = await executed(
      'import { Length, mm } from "casewright"; Length.show(mm(12))',
      'for (let i = 0; i < 2000; i++) console.log("line " + i);',
      'process.env["CASEWRIGHT_JOB"]',
      'import { display } from "tslab"; display.html("<b>3</b>")',
    );
    expect(cells.map((cell) => cell.cell_type === "code" && cell.execution_count)).toEqual([1, 2, 3, 4]);
    const outputs = cells.map((cell) => (cell.cell_type === "code" ? cell.outputs : []));
    expect(outputs.slice(0, 3).map(printed)).toEqual([
      "12 mm\n",
      Array.from({ length: 2000 }, (_, i) => `line ${i}\n`).join(""),
      "my-case\n",
    ]);
    expect(outputs[3]).toEqual([
      { output_type: "display_data", data: { "text/html": "<b>3</b>" }, metadata: {} },
    ]);
  });

  test("a cell that leaves a rejected promise fails the run, with its message", async (context) => {
    await needJupyter(context);
    await expect(executed('Promise.reject(new Error("glue")); 1')).rejects.toThrow(
      "Error: glue (in a promise nobody awaited)",
    );
  });
});
