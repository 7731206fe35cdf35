import fc from "fast-check";
import { expect, test } from "vitest";
import { symmetricEigen } from "../../lib/algebra/eigenvalues.js";

test("the values of a matrix of two rows are those of its quadratic", () => {
  const { values } = symmetricEigen(Float64Array.of(2, 1, 1, 2), 2);
  const [low, high] = [...values].sort((a, b) => a - b);
  expect(low).toBeCloseTo(1, 14);
  expect(high).toBeCloseTo(3, 14);
});

test("every vector is only stretched, by its value, and none leans on another", () => {
  const entry = fc.double({ min: -1, max: 1, noNaN: true });
  fc.assert(
    fc.property(fc.array(entry, { minLength: 16, maxLength: 16 }), (raw) => {
      const entryOf = (i: number, j: number): number => (raw[4 * i + j] ?? 0) + (raw[4 * j + i] ?? 0);
      const matrix = Float64Array.from({ length: 16 }, (_, k) => entryOf(Math.floor(k / 4), k % 4));
      const { values, vectors } = symmetricEigen(matrix, 4);
      const column = (k: number): number[] => [0, 1, 2, 3].map((i) => vectors[4 * i + k] ?? 0);
      return values.every((value, k) => {
        const own = column(k);
        const stretched = own.every((one, i) => {
          const image = own.reduce((sum, other, j) => sum + entryOf(i, j) * other, 0);
          return Math.abs(image - value * one) < 1e-12;
        });
        const apart = values.every((_, other) => {
          const lean = column(other).reduce((sum, one, i) => sum + one * (own[i] ?? 0), 0);
          return Math.abs(lean - (other === k ? 1 : 0)) < 1e-12;
        });
        return stretched && apart;
      });
    }),
  );
});
