/** Contrast by the formula of WCAG 2.2, "relative luminance" and "contrast ratio". */
import { expect, test } from "vitest";
import {
  colours,
  darkColours,
  darkVerdictColours,
  seriesColours,
  verdictColours,
} from "../../lib/page/index.js";

function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

function contrast(one: string, other: string): number {
  const [low = 0, high = 0] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

test("black on white is 21 to 1", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
});

test.each(Object.entries(verdictColours))(
  "%s: letters on their ground and on paper pass AA",
  (_, { ink, ground }) => {
    expect(contrast(ink, ground)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(ink, colours.paper)).toBeGreaterThanOrEqual(4.5);
  },
);

test.each(["ink", "soft", "accent"] as const)("%s on paper and ground passes AA", (name) => {
  expect(contrast(colours[name], colours.paper)).toBeGreaterThanOrEqual(4.5);
  expect(contrast(colours[name], colours.ground)).toBeGreaterThanOrEqual(4.5);
});

test.each(seriesColours)("series colour %s stands out from paper", (colour) => {
  expect(contrast(colour, colours.paper)).toBeGreaterThanOrEqual(3);
});

test.each(Object.entries(darkVerdictColours))(
  "%s in the dark: letters on their ground, on paper and on the page pass AA",
  (_, { ink, ground }) => {
    for (const under of [ground, darkColours.paper, darkColours.ground])
      expect(contrast(ink, under)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(darkColours.ink, ground)).toBeGreaterThanOrEqual(4.5);
  },
);

test.each(["ink", "soft", "accent"] as const)("%s in the dark passes AA on paper and ground", (name) => {
  expect(contrast(darkColours[name], darkColours.paper)).toBeGreaterThanOrEqual(4.5);
  expect(contrast(darkColours[name], darkColours.ground)).toBeGreaterThanOrEqual(4.5);
});
