import { expect, test } from "vitest";
import { gaussPoints, legendreValues } from "../../../lib/mechanics/series/legendre.js";

test.each([1, 2, 5, 16, 23])(
  "%i Gauss points integrate every power up to twice their number less one",
  (count) => {
    for (let power = 0; power < 2 * count; power++) {
      const sum = gaussPoints(count, 0, 1).reduce((total, { at, weight }) => total + weight * at ** power, 0);
      expect(sum).toBeCloseTo(1 / (power + 1), 13);
    }
  },
);

test("Gauss points lie inside any interval and their weights add up to its length", () => {
  const points = gaussPoints(9, -2, 5);
  expect(points.every(({ at }) => at > -2 && at < 5)).toBe(true);
  expect(points.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(7, 12);
});

test("Legendre polynomials of degree 2, 3 and 4 are the ones every table prints", () => {
  const s = 0.3;
  const [, , p2, p3, p4] = legendreValues(4, s);
  expect(p2).toBeCloseTo((3 * s ** 2 - 1) / 2, 14);
  expect(p3).toBeCloseTo((5 * s ** 3 - 3 * s) / 2, 14);
  expect(p4).toBeCloseTo((35 * s ** 4 - 30 * s ** 2 + 3) / 8, 14);
});

test("Legendre polynomials are one at the right end, and orthogonal", () => {
  expect(legendreValues(22, 1)).toEqual(Array(23).fill(1));
  const product = gaussPoints(30, -1, 1).reduce((sum, { at, weight }) => {
    const p = legendreValues(22, at);
    return sum + weight * (p[22] ?? 0) * (p[20] ?? 0);
  }, 0);
  expect(product).toBeCloseTo(0, 13);
});
