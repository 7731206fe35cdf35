import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { regressionOutcomes } from "../../lib/command/reference/linear-regressions.js";

const file = join(import.meta.dirname, "../reference/linear-regression.json");
const outcomes = regressionOutcomes(JSON.parse(readFileSync(file, "utf8")));

describe("the statistical reference datasets for linear regression", () => {
  test("are eleven sets with four results each", () => {
    expect(new Set(outcomes.map(({ item }) => item)).size).toBe(11);
    expect(outcomes).toHaveLength(44);
  });

  test.each(outcomes.map((one) => [one.item, one.result, one] as const))(
    "%s: %s agree to at least 12 digits, ill-conditioned or not",
    (_item, _result, { holds, error, expected, ours }) => {
      expect(holds).toBe(true);
      expect(Number.parseFloat(error), `expected ${expected}, ours ${ours}`).toBeGreaterThanOrEqual(12);
    },
  );
});

test("a case that cannot be fitted is named", () => {
  const bad = {
    kind: "linear-regression",
    cases: [{ name: "two points", x: [1, 2], y: [1, 2], degree: 1, intercept: true }],
  };
  expect(() => regressionOutcomes(bad)).toThrow(
    "two points: regression.linear: at least 3 points for 2 coefficients, got 2",
  );
  expect(() => regressionOutcomes({})).toThrow('expected { kind: "linear-regression", cases: [...] }');
});
