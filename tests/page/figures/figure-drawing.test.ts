import { expect, test } from "vitest";
import type { Figure } from "../../../lib/findings/index.js";
import { type DrawingMark, drawingSvg, figureDrawing } from "../../../lib/page/index.js";

/** A square of a metre, pushed at its left at half its height, with its weight. */
const square: Figure = {
  title: "A square",
  description: "It is pushed.",
  shapes: [
    {
      what: "sheet",
      points: [
        { x: 0, y: 0 },
        { x: 1, y: 0 },
        { x: 1, y: 1 },
        { x: 0, y: 1 },
      ],
    },
  ],
  arrows: [
    { at: { x: 0, y: 0.5 }, way: 0, acts: "pushing", words: "a push of the whole hand" },
    { at: { x: 0.5, y: 0.5 }, way: -Math.PI / 2, acts: "pulling", share: 0.5 },
  ],
  sizes: [{ from: { x: 0, y: 0 }, to: { x: 1, y: 0 }, off: -2, words: "1 m" }],
};

function marksOf<Kind extends DrawingMark["mark"]>(figure: Figure, kind: Kind) {
  return figureDrawing(figure).marks.flatMap((mark) =>
    mark.mark === kind ? [mark as Extract<DrawingMark, { readonly mark: Kind }>] : [],
  );
}

test("a push ends where it acts, a pull begins there, both in proportion", () => {
  const [push, pull] = marksOf(square, "arrow");
  expect(push?.to).toEqual({ x: 0, y: 500 });
  expect(push?.from.x).toBeLessThan(0);
  expect(pull?.from).toEqual({ x: 500, y: 500 });
  expect(pull!.from.y - pull!.to.y).toBeCloseTo(0.5 * (push!.to.x - push!.from.x), 9);
});

test("words are broken into lines short enough for a phone", () => {
  expect(marksOf(square, "text").map(({ text }) => text)).toEqual(["a push of the", "whole hand"]);
});

test("a size that is too short for its words has them beside it", () => {
  const [size] = square.sizes!;
  expect(marksOf(square, "dimension")[0]?.text).toBe("1 m");
  const long = { ...square, sizes: [{ ...size!, words: "a thousand millimetres in words" }] };
  expect(marksOf(long, "dimension")[0]?.text).toBe("");
  expect(marksOf(long, "text").map(({ text }) => text)).toContain("a thousand millimetres in words");
});

test("it has a name for who cannot see it", () => {
  expect(String(drawingSvg(figureDrawing(square)))).toContain(
    'role="img" aria-label="A square. It is pushed."',
  );
});
