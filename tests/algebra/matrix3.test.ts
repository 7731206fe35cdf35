import fc from "fast-check";
import { expect, test } from "vitest";
import { inverse, type Matrix3, product } from "../../lib/algebra/matrix3.js";

const entry = fc.double({ min: -1, max: 1, noNaN: true });
const row = fc.tuple(entry, entry, entry);

test("a matrix times its inverse is one", () => {
  fc.assert(
    fc.property(row, row, row, (a, b, c) => {
      const m: Matrix3 = [
        [a[0] + 4, a[1], a[2]],
        [b[0], b[1] + 4, b[2]],
        [c[0], c[1], c[2] + 4],
      ];
      return product(m, inverse(m)).every((line, i) =>
        line.every((x, j) => Math.abs(x - Number(i === j)) < 1e-12),
      );
    }),
  );
});

test("a matrix that flattens space has no inverse", () => {
  const flat: Matrix3 = [
    [1, 2, 3],
    [2, 4, 6],
    [0, 0, 1],
  ];
  expect(() => inverse(flat)).toThrow(new RangeError("matrix inverse: the matrix has none"));
});
