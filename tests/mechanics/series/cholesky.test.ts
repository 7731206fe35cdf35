import fc from "fast-check";
import { expect, test } from "vitest";
import { solvePositive } from "../../../lib/mechanics/series/cholesky.js";

const vector = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });

test("the solution satisfies the equations", () => {
  fc.assert(
    fc.property(fc.array(vector, { minLength: 6, maxLength: 6 }), vector, (rows, right) => {
      const entry = (i: number, j: number): number =>
        rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), Number(i === j));
      const matrix = Float64Array.from({ length: 36 }, (_, place) => entry(Math.floor(place / 6), place % 6));
      const x = solvePositive(Float64Array.from(matrix), Float64Array.from(right));
      return right.every((value, i) => {
        const left = x.reduce((sum, one, j) => sum + (matrix[i * 6 + j] ?? 0) * one, 0);
        return Math.abs(left - value) < 1e-10;
      });
    }),
  );
});

test("refuses a matrix that lets something move for nothing", () => {
  expect(() => solvePositive(Float64Array.of(1, 1, 1, 1), Float64Array.of(1, 1))).toThrow(
    new RangeError("plate series: the plate can move without bending, hold it better"),
  );
});
