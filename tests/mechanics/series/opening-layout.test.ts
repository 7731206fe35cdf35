import { expect, test } from "vitest";
import { cutAwayShare, narrowestBar, openingFaults } from "../../../lib/mechanics/series/opening-layout.js";

const sides = { length: 1, width: 0.5 };
const window = { left: 0.1, bottom: 0.1, width: 0.3, height: 0.3, cornerRadius: 0 };

test("the share cut away is area over area", () => {
  const port = { left: 0.6, bottom: 0.1, width: 0.2, height: 0.2, cornerRadius: 0.1 };
  expect(cutAwayShare(sides, [window, port])).toBeCloseTo((0.09 + Math.PI * 0.01) / 0.5, 12);
});

test.each([
  ["no opening", [], 1],
  ["the rim above and below", [window], 0.1],
  ["the bar between two that face each other", [window, { ...window, left: 0.43 }], 0.03],
  [
    "not the gap between two that do not",
    [
      { ...window, bottom: 0.1, height: 0.1 },
      { ...window, left: 0.41, bottom: 0.25, height: 0.15 },
    ],
    0.1,
  ],
  ["not the missing rim of a notch", [{ ...window, left: 0, bottom: 0.15 }], 0.1],
])("the narrowest bar is %s", (_name, openings, bar) => {
  expect(narrowestBar(sides, openings)).toBeCloseTo(bar, 12);
});

test.each([
  [[{ ...window, width: 0 }], "opening 1 must have a positive width and height"],
  [
    [{ ...window, cornerRadius: 0.16 }],
    "opening 1 must have a corner radius of at most half its smaller side",
  ],
  [[window, { ...window, left: 0.8 }], "opening 2 must lie on the plate"],
  [[{ ...window, bottom: 0, height: 0.5 }], "opening 1 cuts the plate in two"],
  [[window, { ...window, left: 0.3 }], "openings 1 and 2 overlap"],
])("names the fault %#", (openings, fault) => {
  expect(openingFaults(sides, openings)).toEqual([fault]);
});

test("finds no fault in a window, a port and a notch", () => {
  const port = { left: 0.6, bottom: 0.1, width: 0.2, height: 0.2, cornerRadius: 0.1 };
  const notch = { left: 0.9, bottom: 0.4, width: 0.1, height: 0.1, cornerRadius: 0 };
  expect(openingFaults(sides, [window, port, notch])).toEqual([]);
});
