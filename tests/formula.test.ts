import { expect, test } from "vitest";
import { type Formula, formula, formulaIndex, resultSymbols } from "../lib/formula.js";
import { Count, choice, Force, Length, listOf, mm, newton, Ratio, recordOf } from "../lib/quantity/index.js";
import { cite } from "../lib/source.js";

interface Lever {
  readonly load: Force;
  readonly arm: Length;
  readonly reach: Length;
}

const lever: Formula<Lever, Force> = formula({
  id: "test.lever",
  title: "Force at the end of a lever",
  equation: "F = \\frac{W a}{r}",
  inputs: {
    load: { symbol: "W", kind: Force, meaning: "load", min: 0 },
    arm: { symbol: "a", kind: Length, meaning: "arm of the load", above: 0 },
    reach: { symbol: "r", kind: Length, meaning: "arm of the hand", above: 0, max: 2 },
  },
  result: { symbol: "F", kind: Force, meaning: "force of the hand" },
  source: [cite("statics", "moments about the pivot")],
  validity: "A stiff lever at rest.",
  refuse: ({ arm, reach }) => (arm > 10 * reach ? ["arm is more than ten times the reach"] : []),
  warn: ({ reach }) => (reach > 1 ? ["reach is longer than a person's arm"] : []),
  compute: ({ load, arm, reach }) => (load * arm) / reach,
});

interface Whole {
  readonly whole: Length;
  readonly share: Ratio;
}

type Halves = { readonly first: Length; readonly rest: Length };

const halves: Formula<Whole, Halves> = formula<Whole, Halves>({
  id: "test.halves",
  title: "A length in two",
  equation: "L = l_1 + l_2",
  inputs: {
    whole: { symbol: "L", kind: Length, meaning: "whole" },
    share: { symbol: "s", kind: Ratio, meaning: "share of the first" },
  },
  result: {
    first: { symbol: "l_1", kind: Length, meaning: "first" },
    rest: { symbol: "l_2", kind: Length, meaning: "rest" },
  },
  source: [cite("geometry", "")],
  validity: "Always.",
  compute: ({ whole, share }) => ({ first: whole * share, rest: whole / (share === 0.5 ? 2 : 0) }),
});

const inputs = { load: newton(100), arm: mm(200), reach: mm(500) };

test("a formula is a typed function", () => {
  expect(lever(inputs)).toBeCloseTo(40, 12);
});

test("its worked line carries the equation, the numbers, the source and the value", () => {
  const line = lever.worked(inputs);
  expect(line.equation).toBe("F = \\frac{W a}{r}");
  expect(line.inputs.map((input) => `${input.symbol} = ${input.show()}`)).toEqual([
    "W = 100 N",
    "a = 200 mm",
    "r = 500 mm",
  ]);
  expect(line.results.map((result) => result.show({ system: "inch" }))).toEqual(["8.992 lbf"]);
  expect(line.warnings).toEqual([]);
  expect(line.value).toBeCloseTo(40, 12);
});

test("allowed but untested comes back as a warning", () => {
  expect(lever.worked({ ...inputs, reach: mm(1500) }).warnings).toEqual([
    "reach is longer than a person's arm",
  ]);
});

test.each([
  [{ ...inputs, reach: mm(-3) }, "test.lever: reach must be positive, got -3 mm"],
  [{ ...inputs, reach: mm(2500) }, "test.lever: reach must be at most 2000 mm, got 2500 mm"],
  [
    { ...inputs, load: newton(-1), arm: mm(0) },
    "test.lever: load must be at least 0 N, got -1 N; arm must be positive, got 0 mm",
  ],
  [{ ...inputs, arm: mm(9000) }, "test.lever: arm is more than ten times the reach"],
  [{ ...inputs, arm: Number.NaN as Length }, "test.lever: arm must be a finite number, got NaN"],
])("out of range throws: %#", (wrong, message) => {
  expect(() => lever(wrong)).toThrow(new RangeError(message));
});

test("a result that is not finite is refused at any depth", () => {
  expect(() => halves({ whole: mm(10), share: Ratio.si(0.2) })).toThrow(
    "test.halves: the result is not a finite number for these inputs",
  );
  expect(halves({ whole: mm(10), share: Ratio.si(0.5) })).toEqual({ first: 0.005, rest: 0.005 });
});

test("inputs are read from text by the kinds of the symbols", () => {
  expect(lever(lever.read({ load: "10 kgf", arm: "1 in", reach: "10 in" }))).toBeCloseTo(9.80665, 9);
  expect(() => lever.read({ load: "10", arm: "1 in", reach: "10 in" })).toThrow(
    "test.lever: load: expected a force such as",
  );
  expect(() => lever.read({ load: "1 N", arm: "1 in", reach: "1 in", extra: 1 })).toThrow(
    'test.lever: no input "extra", expected load, arm, reach',
  );
});

test("the index holds every formula once", () => {
  expect(formulaIndex().get("test.lever")).toBe(lever);
  expect(() => formula(lever.declaration)).toThrow("formula test.lever: declared twice");
  expect(resultSymbols(halves.declaration).map(([name]) => name)).toEqual(["first", "rest"]);
});

test("choices, counts, lists and records read as inputs", () => {
  const edge = choice("edge", ["free", "hinged"]);
  expect(edge.read("free")).toBe("free");
  expect(() => edge.read("glued")).toThrow('expected one of free, hinged, got "glued"');
  const pieces = listOf(
    recordOf<{ length: Length; count: number }>("a piece", { length: Length, count: Count }),
  );
  expect(pieces.read([{ length: "12 mm", count: 3 }])).toEqual([{ length: 0.012, count: 3 }]);
  const range = recordOf<{ gripMin: Length }>("a range", { gripMin: Length });
  expect(range.show(range.read({ gripMin: "3 mm" }))).toBe("grip min 3 mm");
  expect(() => pieces.read([{ length: "12 mm", count: 1.5 }])).toThrow(
    "count: expected a whole number from 0 up, got 1.5",
  );
  expect(() => pieces.read([{ length: "12 mm", count: 1, colour: "red" }])).toThrow('got a field "colour"');
  expect(() => pieces.read("12 mm")).toThrow("expected a list, each a piece with length, count");
});
