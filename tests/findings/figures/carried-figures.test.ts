import { expect, test } from "vitest";
import { hangingFigure, liftedFigure, stairsFigure } from "../../../lib/findings/figures/carried-figures.js";
import { openJob } from "../../../lib/job/index.js";
import { handleLine, sectionBalance } from "../../../lib/model/index.js";
import { degree } from "../../../lib/quantity/index.js";

const input = openJob("soil-lab");
const ups = ({ arrows = [] }: ReturnType<typeof liftedFigure>) => arrows.filter(({ way }) => way > 0);

test("what both ends take turns the section neither way about its centre of gravity", () => {
  const figure = liftedFigure(input, "upper");
  const [left, right] = ups(figure);
  const centre = figure.places?.[0]?.at.x ?? 0;
  expect((left?.share ?? 0) * (centre - left!.at.x)).toBeCloseTo(
    (right?.share ?? 0) * (right!.at.x - centre),
    9,
  );
});

test("the hands are as far apart as the handles, and level", () => {
  const [left, right] = ups(liftedFigure(input, "lower"));
  expect(right!.at.x - left!.at.x).toBeCloseTo(handleLine(input, "lower").span, 9);
  expect(right!.at.y).toBeCloseTo(left!.at.y, 9);
});

test("on stairs the line of the hands rises as steeply as they do, from the lower end at the left", () => {
  const [low, high] = ups(stairsFigure(input, "lower", degree(32)));
  expect(Math.atan2(high!.at.y - low!.at.y, high!.at.x - low!.at.x)).toBeCloseTo((32 * Math.PI) / 180, 9);
  expect(() => stairsFigure(input, "lower", undefined)).toThrow(/slope is not known/);
});

test("a hanging section has its centre of gravity as high as it balances", () => {
  const { value } = sectionBalance(input, "upper");
  const low = input.parts.sections.find(({ name }) => name === "upper")?.outside.low.z ?? 0;
  expect(hangingFigure(input, "upper").places?.[0]?.at.y).toBeCloseTo(value.z - low, 9);
});
