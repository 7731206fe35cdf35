import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { barOutcomes, sheetOutcomes } from "../../lib/command/reference/cutting-cases.js";
import type { ReferenceOutcome } from "../../lib/command/reference/outcome.js";

const stored = (name: string): unknown =>
  JSON.parse(readFileSync(join(import.meta.dirname, "..", "cutting", `public-${name}.json`), "utf8"));
const failed = (outcomes: readonly ReferenceOutcome[]): ReferenceOutcome[] =>
  outcomes.filter(({ holds }) => !holds);

describe("published cutting cases", () => {
  test("bars: the proved fewest, and proven by us", () => {
    const outcomes = barOutcomes(stored("bars"));
    expect(outcomes).toHaveLength(22);
    expect(failed(outcomes)).toEqual([]);
  }, 600_000);

  test("sheets: the best values, within one of the bound, within 5 % of the shortest", () => {
    const outcomes = sheetOutcomes(stored("sheets"));
    expect(outcomes).toHaveLength(20);
    expect(failed(outcomes)).toEqual([]);
  }, 600_000);

  test("a value that is not reached is told apart", () => {
    const one = {
      name: "half",
      stock: [{ length: 10 }],
      pieces: [{ length: 5, count: 3 }],
      expect: { bars: 1 },
    };
    expect(barOutcomes({ cases: [one] })).toMatchObject([{ item: "half", error: "1", holds: false }]);
  });
});

test.each<[string, () => unknown, string]>([
  ["no cases", () => barOutcomes({}), 'expected { "cases": [...] }'],
  [
    "a case without what it expects",
    () => barOutcomes({ cases: [{ name: "a" }] }),
    'a: expected a record in "expect", got undefined',
  ],
  [
    "a length in words",
    () => barOutcomes({ cases: [{ name: "a", expect: { bars: 1 }, pieces: [{ length: "5" }], stock: [] }] }),
    'case: expected a number in "length", got "5"',
  ],
  [
    "a task of another kind",
    () => sheetOutcomes({ cases: [{ name: "a", task: "longest" }] }),
    'a: expected a task among best-value, fewest-sheets, shortest-strip, got "longest"',
  ],
  [
    "a size that is no pair",
    () =>
      sheetOutcomes({
        cases: [{ name: "a", task: "fewest-sheets", expect: { atLeast: 1 }, sheet: [1], pieces: [] }],
      }),
    'a: expected two numbers in "sheet", got [1]',
  ],
])("refuses %s", (_what, run, message) => {
  expect(run).toThrow(new TypeError(message));
});
