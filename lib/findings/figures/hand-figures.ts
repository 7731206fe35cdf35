/** Hands at the handles of a section: whether one fits, and whether there are enough. */
import { handleLine, handlesByEnd, type ReviewInput } from "../../model/index.js";
import { Length } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import { boxShape, casePlane } from "./case-plane.js";
import type { Figure, FigureArrow } from "./figure.js";
import { groundUnder, seenFrom } from "./standing-figures.js";

/** The sides of a room: for a hand, or in a handle. */
export interface HandSize {
  /** Along the grip. */
  readonly length: Length;
  /** From the grip to what is behind it. */
  readonly clearance: Length;
}

/** The cut-out of a handle, and the room that a hand needs laid over it. */
export function gripFigure(input: ReviewInput, section: string, cut: HandSize, hand: HandSize): Figure {
  const style = styleOf(input.case);
  const shown = (length: number, of: string): string => `${of} ${Length.show(Length.si(length), style)}`;
  const wide = Math.max(cut.length, hand.length);
  const rim = 0.2 * wide;
  const left = (cut.length - hand.length) / 2;
  const bottom = (cut.clearance - hand.clearance) / 2;
  const [low, high] = [Math.min(0, bottom) - rim, Math.max(cut.clearance, bottom + hand.clearance) + rim];
  const [first, last] = [Math.min(0, left) - rim, Math.max(cut.length, left + hand.length) + rim];
  return {
    title: `A gloved hand in a handle of ${section}`,
    description: "To scale: the cut-out of the handle, and in broken line the room that a gloved hand needs.",
    shapes: [
      boxShape("metal", { left: first, bottom: low, width: last - first, height: high - low }),
      boxShape("opening", { left: 0, bottom: 0, width: cut.length, height: cut.clearance }),
      boxShape("hidden", { left, bottom, width: hand.length, height: hand.clearance }),
    ],
    sizes: [
      { from: { x: 0, y: high }, to: { x: cut.length, y: high }, off: 1.6, words: shown(cut.length, "has") },
      {
        from: { x: left, y: low },
        to: { x: left + hand.length, y: low },
        off: -1.6,
        words: shown(hand.length, "needs"),
      },
      {
        from: { x: first, y: 0 },
        to: { x: first, y: cut.clearance },
        off: 1.6,
        words: shown(cut.clearance, "has"),
      },
      {
        from: { x: last, y: bottom },
        to: { x: last, y: bottom + hand.clearance },
        off: -1.6,
        words: shown(hand.clearance, "needs"),
      },
    ],
  };
}

/** Up. */
const up = Math.PI / 2;

/**
 * The end of a section that has fewer handles, with the hands that lift there.
 *
 * @param hands how many lift at an end
 * @param on how many of them a handle takes
 */
export function handsFigure(
  input: ReviewInput,
  section: string,
  hands: number,
  on: (width: Length) => number,
): Figure {
  const across = handleLine(input, section).axis === "x" ? "y" : "x";
  const plane = casePlane(input, across, [section]);
  const ends = handlesByEnd(input, section).map((handles) => ({
    handles,
    holds: handles.reduce((sum, { stock }) => sum + on(stock.cutWidth), 0),
  }));
  const [end] = [...ends].sort((a, b) => a.holds - b.holds);
  const handles = end?.handles ?? [];
  const under = Math.max(0, hands - (end?.holds ?? 0));
  const { left, width, bottom } = plane.box;
  const word = (count: number): string => (count === 1 ? "1 hand" : `${count} hands`);
  const places = handles.map(({ centre }) => plane.on(centre));
  const xs = places.map(({ x }) => x);
  const [first, last] = [Math.min(...xs), Math.max(...xs)];
  return {
    title: `Hands at an end of ${section}`,
    description: `Seen from the ${seenFrom(plane)}: the end with fewer handles.${under > 0 ? " What finds no handle lifts under the edge." : ""}`,
    shapes: plane.shapes,
    lines: [groundUnder(plane)],
    arrows: [
      ...places.map(
        (at, i): FigureArrow => ({
          at,
          way: up,
          acts: "pulling",
          share: 0.8,
          words: word(on(handles[i]?.stock.cutWidth ?? Length.si(0))),
        }),
      ),
      ...(under > 0
        ? [
            {
              at: { x: left + 0.75 * width, y: bottom },
              way: up,
              acts: "pulling" as const,
              share: 0.8,
              words: word(under),
            },
          ]
        : []),
    ],
    sizes:
      last > first
        ? [
            {
              from: { x: first, y: 0 },
              to: { x: last, y: 0 },
              off: -1.8,
              words: Length.show(Length.si(last - first), styleOf(input.case)),
            },
          ]
        : [],
  };
}
