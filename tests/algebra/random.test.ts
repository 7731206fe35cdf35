import { expect, test } from "vitest";
import { pick, randomFrom, seededRandom } from "../../lib/algebra/random.js";

test("gives the published sequence of xoshiro128** for the state 1, 2, 3, 4", () => {
  const { bits } = randomFrom([1, 2, 3, 4]);
  expect(Array.from({ length: 10 }, bits)).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});

test("has the moments of its distributions", () => {
  const random = seededRandom(4);
  const mean = (draw: () => number) =>
    Array.from({ length: 50_000 }, draw).reduce((a, b) => a + b, 0) / 50_000;
  expect(mean(random.uniform)).toBeCloseTo(0.5, 2);
  expect(Math.abs(mean(random.normal))).toBeLessThan(0.02);
  expect(mean(() => random.normal() ** 2)).toBeCloseTo(1, 1);
  expect(Math.abs(mean(() => random.chiSquare(5)) - 5)).toBeLessThan(0.06);
  expect(Math.abs(mean(() => random.chiSquare(1)) - 1)).toBeLessThan(0.03);
});

test("picks every whole number below a limit, and none beyond", () => {
  const { uniform } = seededRandom(2);
  const picked = new Set(Array.from({ length: 200 }, () => pick(uniform, 5)));
  expect([...picked].sort()).toEqual([0, 1, 2, 3, 4]);
});
