/** Every notebook, executed by the real Jupyter on the demo job. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { basename, join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { parseNotebook } from "../../lib/book/index.js";
import { notebookFiles } from "../../lib/command/notebooks.js";
import { jupyter, needJupyter } from "../jupyter.js";

const files = await notebookFiles();

let folder = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "casewright-test-"));
});
afterAll(() => rm(folder, { recursive: true }));

test.for(files)("%s runs in Jupyter and ends in its answer", { timeout: 240_000 }, async (file, context) => {
  await needJupyter(context);
  const limit = "--ExecutePreprocessor.timeout=200";
  await jupyter(
    ["nbconvert", "--to", "notebook", "--execute", limit, file, "--output-dir", folder],
    "soil-lab",
  );
  const executed = join(folder, basename(file));
  const cells = parseNotebook(await readFile(executed, "utf8"), executed).cells;
  const outputs = cells.map((cell) => (cell.cell_type === "code" ? cell.outputs : []));
  expect(
    outputs.flat().filter(({ output_type }) => output_type === "error" || output_type === "stream"),
  ).toEqual([]);
  expect(JSON.stringify(outputs.at(-1))).toContain("cw-answer");
});
