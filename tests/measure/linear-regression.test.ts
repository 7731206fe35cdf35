import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { linearRegression } from "../../lib/measure/index.js";
import { ratio } from "../../lib/quantity/index.js";

const curve = (columns: readonly (readonly number[])[], y: readonly number[], degree = 1) =>
  linearRegression({
    columns: columns.map((column) => column.map(ratio)),
    y: y.map(ratio),
    degree,
    intercept: "yes",
  });

const values = (length: number) =>
  fc.array(fc.integer({ min: -50, max: 50 }), { minLength: length, maxLength: length });

describe("a fit", () => {
  test("of a polynomial through exact points gives back its coefficients", () => {
    fc.assert(
      fc.property(values(4), ([a = 0, b = 0, c = 0, d = 1]) => {
        fc.pre(b !== 0 || c !== 0 || d !== 0);
        const x = [1990, 1991, 1993, 1997, 2002, 2011];
        const found = curve(
          [x],
          x.map((one) => a + b * one + c * one ** 2 + d * one ** 3),
          3,
        );
        for (const [i, wanted] of [a, b, c, d].entries())
          expect(found.coefficients[i]).toBeCloseTo(wanted, 6);
      }),
    );
  });

  test("does not care in which order the points come", () => {
    fc.assert(
      fc.property(values(6), (y) => {
        fc.pre(new Set(y).size > 1);
        const x = [0, 1, 2, 4, 7, 11];
        const turned = curve([[...x].reverse()], [...y].reverse(), 2);
        const found = curve([x], y, 2);
        for (const [i, one] of found.coefficients.entries())
          expect(turned.coefficients[i]).toBeCloseTo(one, 9);
      }),
    );
  });

  test("moves with y: adding a multiple of a column adds to its coefficient alone", () => {
    fc.assert(
      fc.property(values(6), fc.integer({ min: 1, max: 9 }), (y, by) => {
        fc.pre(new Set(y).size > 1);
        const [a, b] = [
          [3, 1, 4, 1, 5, 9],
          [2, 7, 1, 8, 2, 8],
        ] as const;
        const moved = y.map((one, i) => one + by * (a[i] ?? 0));
        fc.pre(new Set(moved).size > 1);
        const [before, after] = [curve([a, b], y), curve([a, b], moved)];
        expect((after.coefficients[1] ?? 0) - (before.coefficients[1] ?? 0)).toBeCloseTo(by, 9);
        expect(after.coefficients[2]).toBeCloseTo(before.coefficients[2] ?? 0, 9);
        expect(after.residualDeviation).toBeCloseTo(before.residualDeviation, 9);
      }),
    );
  });

  test("reads numbers as written: tenths on a line leave no residual at all", () => {
    expect(curve([[0.1, 0.2, 0.3, 0.7]], [0.3, 0.6, 0.9, 2.1]).residualDeviation).toBeLessThan(1e-28);
  });
});

describe("a fit is refused", () => {
  test.each([
    ["for no column", [], [1, 2, 3], 1, "at least one column, got none"],
    [
      "for lists of unlike length",
      [[1, 2]],
      [1, 2, 3],
      1,
      "column 1 must have as many values as y (3), got 2",
    ],
    ["for too few points", [[1, 2, 3]], [1, 2, 4], 2, "at least 4 points for 3 coefficients, got 3"],
    [
      "for powers of two columns",
      [
        [1, 2, 3],
        [1, 4, 2],
      ],
      [1, 2, 4],
      2,
      "degree must be 1 for several columns, got 2",
    ],
    ["for y all alike", [[1, 2, 3]], [5, 5, 5], 1, "y must differ between points"],
    ["for x all alike", [[2, 2, 2]], [1, 2, 3], 1, "the columns depend on each other: leave one out"],
    [
      "for a column that is twice another",
      [
        [1, 2, 3, 5],
        [2, 4, 6, 10],
      ],
      [1, 2, 3, 9],
      1,
      "the columns depend on each other: leave one out",
    ],
  ] as const)("%s", (_case, columns, y, degree, message) => {
    expect(() => curve(columns, y, degree)).toThrow(`regression.linear: ${message}`);
  });
});
