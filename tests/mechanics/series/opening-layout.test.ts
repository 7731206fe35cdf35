import { expect, test } from "vitest";
import {
  cutAwayShare,
  narrowestBar,
  openingFaults,
  roundedBoxes,
} from "../../../lib/mechanics/series/opening-layout.js";
import { Refusal } from "../../../lib/refusal.js";
import { circle, ellipse, rectangle } from "../../../lib/shape/index.js";

const sides = { length: 1, width: 0.5 };
const box = { left: 0.1, bottom: 0.1, width: 0.3, height: 0.3 };
const window = rectangle(box);

test("the share cut away is area over area", () => {
  const port = circle({ x: 0.7, y: 0.2 }, 0.1);
  expect(cutAwayShare(sides, [window, port])).toBeCloseTo((0.09 + Math.PI * 0.01) / 0.5, 12);
});

test.each([
  ["no opening", [], 1],
  ["the rim above and below", [window], 0.1],
  ["the bar between two that face each other", [window, rectangle({ ...box, left: 0.43 })], 0.03],
  [
    "not the gap between two that do not",
    [
      rectangle({ ...box, bottom: 0.1, height: 0.1 }),
      rectangle({ ...box, left: 0.41, bottom: 0.25, height: 0.15 }),
    ],
    0.1,
  ],
  ["not the missing rim of a notch", [rectangle({ ...box, left: 0, bottom: 0.15 })], 0.1],
])("the narrowest bar is %s", (_name, openings, bar) => {
  expect(narrowestBar(sides, openings)).toBeCloseTo(bar, 12);
});

test.each([
  [
    [window, ellipse({ left: 0.6, bottom: 0.1, width: 0.2, height: 0.1 })],
    "opening 2 must be a rectangle with corners sharp or alike round; panels with others are for the finite elements",
  ],
  [[window, rectangle({ ...box, left: 0.8 })], "opening 2 must lie on the plate"],
  [[rectangle({ ...box, bottom: 0, height: 0.5 })], "opening 1 cuts the plate in two"],
  [[window, rectangle({ ...box, left: 0.3 })], "openings 1 and 2 overlap"],
])("names the fault %#", (openings, fault) => {
  expect(openingFaults(sides, openings)).toEqual([fault]);
});

test("a series for a plate with an opening of another outline is refused, never solved by its bounds", () => {
  expect(() => roundedBoxes([window, ellipse({ left: 0.6, bottom: 0.1, width: 0.2, height: 0.1 })])).toThrow(
    new Refusal(
      "plate series: opening 2 must be a rectangle with corners sharp or alike round; panels with others are for the finite elements",
    ),
  );
});

test("finds no fault in a window, a port and a notch", () => {
  const port = circle({ x: 0.7, y: 0.2 }, 0.1);
  const notch = rectangle({ left: 0.9, bottom: 0.4, width: 0.1, height: 0.1 });
  expect(openingFaults(sides, [window, port, notch])).toEqual([]);
});
