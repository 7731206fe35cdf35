/** How a picture lies on its page: its scale, and the room that lines and words take. */
import type { Point2 } from "../../shape/index.js";
import { reach } from "./prism.js";

/** From metres on the page, y up, to the picture's own units, y down. */
export interface Page {
  /** In the picture's units. */
  readonly width: number;
  /** In the picture's units. */
  readonly height: number;
  /** A place in the picture's units. */
  readonly place: (point: Point2) => Point2;
  /** Places in order, x and y by turns, in whole units. */
  readonly numbers: (points: readonly Point2[]) => readonly number[];
}

/** What is drawn of the solids is as wide or as high as this. */
const extent = 1000;
/** Free rim. */
const rim = 12;
/** Height of letters in a picture. */
export const letter = 34;
/** Width of a letter over its height, more than common faces have. */
export const letterWidth = 0.58;
/** From a size line to the middle of its words. */
export const wordsOff = 26;

/** A line with words at it. */
export interface Worded {
  /** Where it begins. */
  readonly from: Point2;
  /** Where it ends. */
  readonly to: Point2;
  /** What is written at it. */
  readonly text?: string;
}

/** A page on which all places, and lines with their words, have room. */
export function fitted(places: readonly Point2[], lines: readonly Worded[]): Page {
  const body = reach(places);
  const scale = extent / Math.max(body.right - body.left, body.top - body.bottom, 1e-6);
  const ends = lines.flatMap(({ from, to }) => [from, to]);
  const wordings = lines.flatMap(({ from, to, text = "" }) => {
    const half = (text.length * letter * letterWidth) / 2 / scale + wordsOff / scale;
    const [x, y] = [(from.x + to.x) / 2, (from.y + to.y) / 2];
    return [
      { x: x - 2 * half, y: y - letter / scale },
      { x: x + 2 * half, y: y + letter / scale },
    ];
  });
  const all = reach([...places, ...ends, ...wordings]);
  const width = Math.ceil((all.right - all.left) * scale + 2 * rim);
  const height = Math.ceil((all.top - all.bottom) * scale + 2 * rim);
  const place = ({ x, y }: Point2): Point2 => ({
    x: (x - all.left) * scale + rim,
    y: (all.top - y) * scale + rim,
  });
  const numbers = (points: readonly Point2[]): readonly number[] =>
    points.flatMap((point) => {
      const { x, y } = place(point);
      return [Math.round(x), Math.round(y)];
    });
  return { width, height, place, numbers };
}
