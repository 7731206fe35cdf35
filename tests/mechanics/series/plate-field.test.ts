import fc from "fast-check";
import { expect, test } from "vitest";
import { largestPlace } from "../../../lib/mechanics/series/plate-field.js";
import { rectangle } from "../../../lib/shape/index.js";

test("finds the top of a hill wherever it is", () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(share, share, (u, v) => {
      const field = { length: 2, width: 0.7, openings: [] };
      const [x, y] = largestPlace(field, (px, py) => -((px - 2 * u) ** 2) - (py - 0.7 * v) ** 2);
      return Math.abs(x - 2 * u) < 1e-3 && Math.abs(y - 0.7 * v) < 1e-3;
    }),
  );
});

test("stops at the rim of an opening that holds the top", () => {
  const opening = rectangle({ left: 0.4, bottom: 0.4, width: 0.2, height: 0.2 });
  const field = { length: 1, width: 1, openings: [opening] };
  const [x, y] = largestPlace(field, (px, py) => -((px - 0.55) ** 2) - (py - 0.5) ** 2);
  expect(x).toBeCloseTo(0.6, 12);
  expect(y).toBeCloseTo(0.5, 3);
});
