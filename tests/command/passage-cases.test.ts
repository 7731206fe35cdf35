/** Files of overlap, passage and order: the published ones hold, and a spoilt one is told. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { kindOf, referenceKinds } from "../../lib/command/reference/kinds.js";

function run(content: unknown) {
  const runner = referenceKinds[kindOf(content)];
  if (!runner) throw new Error(`no kind ${kindOf(content)}`);
  return runner(content);
}

const stored = (file: string): unknown =>
  JSON.parse(readFileSync(join(import.meta.dirname, "../reference", file), "utf8"));

test.each([
  ["solids-that-overlap.json", 15],
  ["things-through-openings.json", 32],
  ["orders-of-work.json", 14],
])("every case of %s holds", (file, rows) => {
  const outcomes = run(stored(file));
  expect(outcomes).toHaveLength(rows);
  expect(outcomes.filter(({ holds }) => !holds)).toEqual([]);
});

const door = { rectangle: { width: 300, height: 400 } };
const cube = (name: string, x: number) => ({
  ...{ name, outline: { rectangle: { width: 10, height: 10 } } },
  ...{ at: [x, 0, 0], depth: 10 },
});

describe("a wrong answer is out", () => {
  test.each([
    ["passage", { name: "p", thing: [310, 410, 900], opening: door, expect: { passes: true } }],
    ["order", { name: "o", steps: ["a"], needs: [{ step: "a", any: [] }], expect: { order: ["a"] } }],
    ["order", { name: "o", steps: ["a", "b"], needs: [], expect: { order: ["b", "a"] } }],
    ["overlap", { name: "v", solids: [cube("a", 0), cube("b", 9)], expect: { pairs: [] } }],
    [
      "overlap",
      { name: "v", solids: [cube("a", 0), cube("b", 9)], expect: { pairs: [["b", "a"]], depth: 2 } },
    ],
  ])("%s %#", (kind, one) => {
    expect(run({ kind, cases: [one] }).some(({ holds }) => !holds)).toBe(true);
  });
});

describe("what is written wrong is named", () => {
  test.each([
    [
      "passage",
      { name: "p", thing: [1, 2], opening: door, expect: {} },
      '"thing" of p: expected 3 numbers in mm, got [1,2]',
    ],
    [
      "passage",
      { name: "p", thing: [1, 2, 3], opening: { hole: {} }, expect: {} },
      "opening of p: expected an outline among rectangle, slot, ellipse, circle, polygon",
    ],
    [
      "passage",
      { name: "p", thing: [1, 2, 3], opening: door, expect: {} },
      'p: expected true or false in "passes"',
    ],
    [
      "order",
      { name: "o", steps: ["a"], needs: [{ step: "a" }], expect: {} },
      'o: expected needs with "step" and "before" or "any"',
    ],
    ["order", { name: "o", steps: ["a"], needs: [] }, 'o: expected a record in "expect"'],
    [
      "overlap",
      { name: "v", solids: [{ name: "a", along: "w" }], expect: {} },
      'a: expected "along" among x, y, z, got "w"',
    ],
    ["overlap", { name: "v", solids: 3, expect: {} }, 'v: expected a list in "solids", got 3'],
  ])("%s %#", (kind, one, words) => {
    expect(() => run({ kind, cases: [one] })).toThrow(words);
  });
});
