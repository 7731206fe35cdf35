import { expect, test } from "vitest";
import { openingsNotFollowed, plateKnots } from "../../../lib/mechanics/series/plate-series.js";

const sides = { length: 1, width: 0.5 };
const window = { left: 0.1, bottom: 0.1, width: 0.3, height: 0.3 };

test("knots lie along the sides of openings, rising, none on an edge", () => {
  const notch = { left: 0.8, bottom: 0, width: 0.2, height: 0.2 };
  const { x, y } = plateKnots(sides, [window, notch]);
  expect(x).toEqual([0.1, 0.4, 0.8]);
  expect(y).toEqual([0.1, 0.2, 0.4]);
});

test("knots that nearly meet become one, that of the larger opening", () => {
  const port = { left: 0.401, bottom: 0.2, width: 0.1, height: 0.1 };
  expect(plateKnots(sides, [port, window]).x).toEqual([0.1, 0.4, 0.501]);
});

test("a row of slots gets no more knots than can be solved for", () => {
  const slots = Array.from({ length: 9 }, (_, n) => ({
    left: 0.05 + n * 0.1,
    bottom: 0.1,
    width: 0.04,
    height: 0.3,
  }));
  expect(plateKnots(sides, slots).x).toHaveLength(8);
  expect(openingsNotFollowed(sides, slots)).toBe(5);
  expect(openingsNotFollowed(sides, slots.slice(0, 4))).toBe(0);
});

test("a load on a solid plate gets knots, on one with openings it leaves them to those", () => {
  const load = { left: 0.6, bottom: 0.2, width: 0.1, height: 0.1 };
  expect(plateKnots(sides, [], load).x).toEqual([0.6, 0.7]);
  expect(plateKnots(sides, [window], load).x).toEqual([0.1, 0.4]);
});
