import fc from "fast-check";
import { expect, test } from "vitest";
import { shareArea } from "../../../lib/mechanics/series/opening-layout.js";
import { openingBands } from "../../../lib/mechanics/series/stiffness-matrix.js";
import { stripFunctions } from "../../../lib/mechanics/series/strip-functions.js";
import { areaOf, rectangle } from "../../../lib/shape/index.js";

const fine = { shapes: 23, leastDegree: 4 };
const unit = { length: 2, start: "free", end: "free" } as const;
const strips = {
  along: stripFunctions({ ...unit, knots: [0.3, 0.9, 1.4] }, fine),
  across: stripFunctions({ ...unit, knots: [0.7] }, fine),
};
const size = fc.double({ min: 0.01, max: 1, noNaN: true });
const place = fc.double({ min: 0, max: 1, noNaN: true });
const shape = fc
  .tuple(place, place, size, size, fc.double({ min: 0, max: 0.5, noNaN: true }))
  .map(([left, bottom, width, height, round]) => ({
    left,
    bottom,
    width,
    height,
    radius: round * Math.min(width, height),
  }));

test("the bands of a shape add up to its area and to its centre", () => {
  fc.assert(
    fc.property(shape, (one) => {
      const parts = openingBands(strips, one, 1).map(({ x, y }) => ({
        x: x.reduce((sum, { weight }) => sum + weight, 0),
        y: y.reduce((sum, { weight }) => sum + weight, 0),
        moment: y.reduce((sum, { at, weight }) => sum + at * weight, 0),
      }));
      const area = parts.reduce((sum, part) => sum + part.x * part.y, 0);
      const moment = parts.reduce((sum, part) => sum + part.x * part.moment, 0);
      const cut = areaOf(rectangle(one, one.radius));
      const middle = one.bottom + one.height / 2;
      return Math.abs(area - cut) < 1e-8 && Math.abs(moment - middle * cut) < 1e-8;
    }),
  );
});

test("sharing area is mutual, and a shape shares area with itself", () => {
  fc.assert(
    fc.property(
      shape,
      shape,
      (one, other) => shareArea(one, other) === shareArea(other, one) && shareArea(one, one),
    ),
  );
});

test("a circle tucked beside the corner of a square shares nothing with it, though their boxes overlap", () => {
  const square = { left: 0, bottom: 0, width: 1, height: 1, radius: 0 };
  const circle = { left: 0.9, bottom: 0.9, width: 1, height: 1, radius: 0.5 };
  expect(shareArea(square, circle)).toBe(false);
  expect(shareArea(square, { ...circle, radius: 0 })).toBe(true);
});

test("shapes that only touch share nothing", () => {
  const square = { left: 0, bottom: 0, width: 1, height: 1, radius: 0 };
  expect(shareArea(square, { ...square, left: 1 })).toBe(false);
});
