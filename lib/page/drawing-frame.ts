/** How much room a drawing takes, with its dimensions and words. */

import { boundsOf, type Point2 } from "../shape/index.js";
import type { DimensionMark, DrawingMark, DrawingView, TextMark } from "./drawing.js";

/** The room a drawing takes (y up) and the height of its letters. */
export interface Frame {
  /** In the drawing's units. */
  readonly left: number;
  /** In the drawing's units. */
  readonly right: number;
  /** In the drawing's units. */
  readonly bottom: number;
  /** In the drawing's units. */
  readonly top: number;
  /** Height of a letter, in the drawing's units. */
  readonly letter: number;
}

/** The frame around all marks, with a margin for letters. */
export function frameOf({ marks, letter: given }: Pick<DrawingView, "marks" | "letter">): Frame {
  const points = marks.flatMap((mark) => cornersOf(mark, given ?? 0));
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [left, right, bottom, top] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const letter = given ?? Math.max(right - left, top - bottom, 1) / 25;
  const margin = 1.5 * letter;
  return { left: left - margin, right: right + margin, bottom: bottom - margin, top: top + margin, letter };
}

/** The points from which a dimension line is set off. */
export function dimensionLine({ from, to, offset }: DimensionMark): readonly [Point2, Point2] {
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const aside = { x: (-(to.y - from.y) / length) * offset, y: ((to.x - from.x) / length) * offset };
  return [
    { x: from.x + aside.x, y: from.y + aside.y },
    { x: to.x + aside.x, y: to.y + aside.y },
  ];
}

/** Both ends of a line of words, roughly. */
function wordsEnds({ at, text, anchor = "start", turn }: TextMark, letter: number): readonly Point2[] {
  const long = 0.6 * letter * text.length;
  const back = { start: 0, middle: long / 2, end: long }[anchor];
  return [-back, long - back].map((off) =>
    turn === 90 ? { x: at.x, y: at.y + off } : { x: at.x + off, y: at.y },
  );
}

function cornersOf(mark: DrawingMark, letter: number): readonly Point2[] {
  switch (mark.mark) {
    case "rectangle":
      return [mark.at, { x: mark.at.x + mark.width, y: mark.at.y + mark.height }];
    case "circle":
      return [-1, 1].map((side) => ({
        x: mark.at.x + side * mark.radius,
        y: mark.at.y + side * mark.radius,
      }));
    case "shape": {
      const { left, bottom, width, height } = boundsOf(mark.shape);
      return [
        { x: left, y: bottom },
        { x: left + width, y: bottom + height },
      ];
    }
    case "polygon":
    case "line":
      return mark.points;
    case "dimension":
      return [mark.from, mark.to, ...dimensionLine(mark)];
    case "text":
      return wordsEnds(mark, letter);
    case "arrow":
      return [mark.from, mark.to];
  }
}
