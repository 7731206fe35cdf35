import { expect, test } from "vitest";
import { formula } from "../lib/formula.js";
import { type CheckTable, runChecks } from "../lib/published-check.js";
import { Length } from "../lib/quantity/index.js";
import { cite } from "../lib/source.js";

formula<{ readonly side: Length }, Length>({
  id: "test.round",
  title: "Way round a square",
  equation: "p = 4 s",
  inputs: { side: { symbol: "s", kind: Length, meaning: "side" } },
  result: { symbol: "p", kind: Length, meaning: "way round" },
  source: [cite("geometry", "")],
  validity: "Always.",
  compute: ({ side }) => 4 * side,
});

const row = {
  formula: "test.round",
  inputs: { side: "1 in" },
  expect: "102 mm",
  tolerance: 0.01,
  where: "by hand",
  known: "derived" as const,
};
const table = (change: object): CheckTable => ({
  kind: "formula",
  source: "arithmetic",
  rows: [{ ...row, ...change }],
});

test("a row within its tolerance holds and shows ours in the source's unit", () => {
  const [outcome] = runChecks(table({}));
  expect(outcome).toMatchObject({ holds: true, ours: "101.6 mm", expected: "102 mm", source: "arithmetic" });
  expect(outcome?.error).toBeCloseTo(0.4 / 102, 9);
});

test.each([
  ["4 in", "4 in"],
  ["2-1/2 in", "4 in"],
  ["1.016e-1 m", "0.1016 m"],
  ["1.016e-1m", "0.1016 m"],
  ["1 ft 2 in", "101.6 mm"],
])("an expected value written %s has ours beside it as %s", (expect_, ours) => {
  expect(runChecks(table({ expect: expect_ }))[0]?.ours).toBe(ours);
});

test("a row beyond its tolerance fails", () => {
  expect(runChecks(table({ expect: "110 mm" }))[0]?.holds).toBe(false);
});

test.each([
  [{ formula: "test.nothing" }, "row 1 (test.nothing): no formula of that name"],
  [{ expect: { area: "1 mm" } }, 'row 1 (test.round): no result "area"'],
  [{ inputs: { side: "1" } }, "row 1 (test.round): test.round: side: expected a length"],
])("a row that cannot run names itself: %#", (change, message) => {
  expect(() => runChecks(table(change))).toThrow(message);
});
