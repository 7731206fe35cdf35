import fc from "fast-check";
import { expect, test } from "vitest";
import { solvePositive, solveSquare } from "../../lib/algebra/linear-systems.js";

const vector = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 6, maxLength: 6 });

test("the solution satisfies the equations", () => {
  fc.assert(
    fc.property(fc.array(vector, { minLength: 6, maxLength: 6 }), vector, (rows, right) => {
      const entry = (i: number, j: number): number =>
        rows.reduce((sum, row) => sum + (row[i] ?? 0) * (row[j] ?? 0), Number(i === j));
      const matrix = Float64Array.from({ length: 36 }, (_, place) => entry(Math.floor(place / 6), place % 6));
      const x = solvePositive(Float64Array.from(matrix), Float64Array.from(right)) ?? new Float64Array();
      return (
        x.length === 6 &&
        right.every((value, i) => {
          const left = x.reduce((sum, one, j) => sum + (matrix[i * 6 + j] ?? 0) * one, 0);
          return Math.abs(left - value) < 1e-10;
        })
      );
    }),
  );
});

test("finds no solution where something moves for nothing", () => {
  expect(solvePositive(Float64Array.of(1, 1, 1, 1), Float64Array.of(1, 1))).toBeUndefined();
});

test("elimination solves a system whose first pivot is nothing", () => {
  expect([...solveSquare(Float64Array.of(0, 2, 0, 1, 0, 1, 0, 0, 4), Float64Array.of(6, 5, 8))]).toEqual([
    3, 3, 2,
  ]);
});

test("elimination satisfies the equations of any system that has a solution", () => {
  fc.assert(
    fc.property(fc.array(vector, { minLength: 6, maxLength: 6 }), vector, (rows, right) => {
      const matrix = rows.flatMap((row, i) => row.map((value, j) => value + (i === (j + 1) % 6 ? 8 : 0)));
      const x = solveSquare(Float64Array.from(matrix), Float64Array.from(right));
      return right.every((value, i) => {
        const left = x.reduce((sum, one, j) => sum + (matrix[i * 6 + j] ?? 0) * one, 0);
        return Math.abs(left - value) < 1e-10;
      });
    }),
  );
});
