import { expect, test } from "vitest";
import { stackFigure } from "../../../lib/findings/figures/stack-figures.js";
import { designOf, smallJob } from "../../design/small-job.js";

const input = designOf(smallJob);
const bar = input.parts.fastenings.find(({ why, stack }) => why === "edge" && stack.length === 3)!;

/** From under the head, mm, down. */
function depths(what: string, words: RegExp): readonly number[] {
  const { shapes } = stackFigure(input, bar);
  const shape = shapes.find((one) => one.what === what && words.test(one.words ?? ""));
  const ys = shape?.points.map(({ y }) => -1000 * y) ?? [];
  return [Math.min(...ys), Math.max(...ys)].map((y) => Math.round(1000 * y) / 1000);
}

test("bar leg, laminate and sheet lie under the head as thick as the tables have them", () => {
  expect(depths("metal", /^bar leg/)).toEqual([0, 2]);
  expect(depths("laminate", /^laminate/)).toEqual([2, 3]);
  expect(depths("sheet", /^sheet/)).toEqual([3, 13]);
});

test("a washer of 1 mm lies on bare wood behind, and the tail forms behind it", () => {
  expect(depths("laminate", /^washer/)).toEqual([13, 14]);
  // 18 mm of rivet leave 4 behind a grip of 14; a set tail is 1.05 bodies of 4 mm deep at most.
  expect(depths("metal", /^set tail/)).toEqual([14, 18]);
});

test("the head is as wide as its table says, and its load acts along the leg", () => {
  const { shapes, arrows, sizes } = stackFigure(input, bar, { way: "shear", words: "90 N" });
  const head = shapes.find(({ words }) => /^head/.test(words ?? ""))?.points.map(({ x }) => x) ?? [];
  expect(Math.max(...head) - Math.min(...head)).toBeCloseTo(0.012, 9);
  expect(arrows).toMatchObject([{ at: { y: -0.001 }, way: 0, words: "90 N" }]);
  expect(sizes?.[0]).toMatchObject({ words: "14 mm" });
});
