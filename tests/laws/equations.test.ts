/** Every formula of the library as its worked line is shown. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import katex from "katex";
import { expect, test } from "vitest";
import { type CheckRow, type CheckTable, formulaIndex, resultSymbols } from "../../lib/index.js";
import { workedView } from "../../lib/page/index.js";

const tables = join(import.meta.dirname, "..", "reference");
const rows = readdirSync(tables)
  .filter((file) => file.endsWith(".json"))
  .flatMap((file) => JSON.parse(readFileSync(join(tables, file), "utf8")) as CheckTable | CheckTable[])
  .filter(({ kind }) => kind === "formula")
  .flatMap((table): readonly CheckRow[] => table.rows);

/** One published row a formula is enough to put numbers into its equation. */
const oneEach = [...new Map(rows.map((row) => [row.formula, row])).values()];

/** What the equation setter says against it; nothing when it reads. */
function unreadable(tex: string): string[] {
  try {
    katex.renderToString(tex, { output: "mathml", strict: "ignore", throwOnError: true });
    return [];
  } catch (error) {
    return [`${tex}: ${(error as Error).message}`];
  }
}

test("every equation and every symbol reads", () => {
  const texts = [...formulaIndex().values()].flatMap(({ declaration }) => [
    declaration.equation,
    ...Object.values(declaration.inputs).map((input) => (input as { symbol: string }).symbol),
    ...resultSymbols(declaration).map(([, { symbol }]) => symbol),
  ]);
  expect(texts.length).toBeGreaterThan(100);
  expect(texts.flatMap(unreadable)).toEqual([]);
});

test("every equation still reads with numbers in it", { timeout: 600_000 }, () => {
  const substituted = oneEach.flatMap(({ formula, inputs }) => {
    const called = formulaIndex().get(formula);
    return called ? workedView(called.worked(called.read(inputs))).substituted : [];
  });
  expect(substituted.length).toBeGreaterThan(40);
  expect(substituted.flatMap(unreadable)).toEqual([]);
});
