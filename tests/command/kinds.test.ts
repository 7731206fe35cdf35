/** The published set of plates and shells, each at a mesh of at most 3000 unknowns. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { kindOf, referenceKinds } from "../../lib/command/reference/kinds.js";

const file = join(import.meta.dirname, "../reference/published-shells.json");
const content: unknown = JSON.parse(readFileSync(file, "utf8"));
const run = referenceKinds[kindOf(content)]!;

test("every published value is met within 2 % with at most 3000 unknowns", { timeout: 600_000 }, () => {
  const rows = run(content);
  expect(rows.length).toBeGreaterThan(20);
  expect(rows.filter(({ holds }) => !holds)).toEqual([]);
  for (const { result, tolerance, meshError } of rows) {
    expect(Number(/(\d+) unknowns/.exec(result)?.[1])).toBeLessThanOrEqual(3000);
    expect(Number.parseFloat(tolerance)).toBeLessThanOrEqual(2);
    expect(meshError).toMatch(/^[\d.]+ %$/);
  }
});

test("a problem that is not known is named", () => {
  const row = { problem: "bell", mesh: [1, 1], expect: 1, tolerance: 1, where: "", known: "derived" };
  expect(() => run({ kind: "shell", rows: [row] })).toThrow(
    'no problem "bell", expected one of straight bar',
  );
});

test("results come nearer to their limit as fast as theory promises", { timeout: 600_000 }, () => {
  const orders: unknown = JSON.parse(
    readFileSync(join(import.meta.dirname, "../reference/convergence-orders.json"), "utf8"),
  );
  const rows = referenceKinds[kindOf(orders)]!(orders);
  expect(rows.map(({ item }) => item)).toContain("re-entrant corner");
  expect(rows.filter(({ holds }) => !holds)).toEqual([]);
});

test("an order that is not known is named", () => {
  const row = { problem: "bell", result: "tone", order: 1, below: 0, known: "derived" };
  expect(() => referenceKinds.convergence!({ kind: "convergence", rows: [row] })).toThrow(
    'no order of "bell", "tone", expected hinged square, clamped square, re-entrant corner with deflection',
  );
});
