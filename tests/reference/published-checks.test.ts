import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import "../../lib/index.js";
import { type CheckTable, formulaIndex, runChecks } from "../../lib/index.js";

const here = import.meta.dirname;
const tables = readdirSync(here)
  .filter((name) => name.endsWith(".json"))
  .map((name) => ({ name, table: JSON.parse(readFileSync(join(here, name), "utf8")) as CheckTable }))
  .filter(({ table }) => table.kind === "formula");

describe.each(tables)("published checks in $name", ({ table }) => {
  test.each(
    runChecks(table).map((outcome) => [outcome.formula, outcome.result, outcome.where, outcome] as const),
  )("%s %s: %s", (_formula, _result, _where, { ours, expected, error, tolerance }) => {
    expect(error, `expected ${expected}, ours ${ours}`).toBeLessThanOrEqual(tolerance);
  });
});

test("every row says where it comes from and how it is known", () => {
  const rows = tables.flatMap(({ table }) => table.rows);
  expect(rows.filter(({ where }) => where.trim() === "")).toEqual([]);
  expect(
    rows.filter(({ known }) => !["seen", "derived", "memory", "common practice"].includes(known)),
  ).toEqual([]);
  expect(tables.filter(({ table }) => table.source.trim() === "")).toEqual([]);
});

test("every formula has a published check", () => {
  const checked = new Set(tables.flatMap(({ table }) => table.rows.map(({ formula }) => formula)));
  expect([...formulaIndex().keys()].filter((id) => !checked.has(id))).toEqual([]);
});
