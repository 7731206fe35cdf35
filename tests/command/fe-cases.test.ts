/** The public finite-element cases; every value inside its band, deflections far inside. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { finiteElementOutcomes } from "../../lib/command/reference/fe/fe-outcomes.js";
import type { ReferenceOutcome } from "../../lib/command/reference/outcome.js";

const file = join(import.meta.dirname, "../reference/fe/public-cases.json");
const { cases } = JSON.parse(readFileSync(file, "utf8")) as {
  readonly cases: readonly { readonly id: string; readonly kind: string }[];
};
const panels = cases.filter(({ kind }) => kind === "panel");
const outcomes = new Map<string, readonly ReferenceOutcome[]>();

describe.each(panels)("$id", (found) => {
  test("every value is inside its band", () => {
    const rows = finiteElementOutcomes({ cases: [found] });
    outcomes.set(found.id, rows);
    expect(rows.length).toBeGreaterThan(10);
    expect(rows.filter(({ holds }) => !holds)).toEqual([]);
  });
});

test("the median error of the deflections is below 0.5 %", () => {
  const errors = [...outcomes.values()]
    .flat()
    .filter(({ result }) => result.startsWith("w"))
    .map(({ error }) => Math.abs(Number.parseFloat(error)))
    .sort((a, b) => a - b);
  expect(errors.length).toBeGreaterThan(30);
  expect(errors[errors.length >> 1]).toBeLessThan(0.5);
});
