import { type Formula, formula } from "../formula.js";
import { Count, Length, wholeUp } from "../quantity/index.js";
import { cite } from "../source.js";

/** A straight row of rivets along an edge. */
export interface RivetRowInputs {
  /** Of the bar or edge. */
  readonly length: Length;
  /** From each end to the first rivet. */
  readonly endDistance: Length;
  /** Rivets stand no further apart than this. */
  readonly largestPitch: Length;
}

/** The row as it is drilled. */
export type RivetRow = {
  readonly count: number;
  /** Equal all along. */
  readonly pitch: Length;
};

/**
 * Rivets along an edge: the fewest equal spaces that keep the pitch, n = ceil((L - 2 e) / p_max) + 1,
 * p = (L - 2 e) / (n - 1). At least two rivets.
 *
 * @throws RangeError when the end distances leave no length between them
 * @example rivetRow(rivetRow.read({ length: "24 in", endDistance: "1 in", largestPitch: "2 in" })) // count 12, pitch 50.8 mm
 */
export const rivetRow: Formula<RivetRowInputs, RivetRow> = formula<RivetRowInputs, RivetRow>({
  id: "rivet.row",
  title: "Rivets along an edge",
  equation: String.raw`n = \left\lceil \frac{L - 2e}{p_{max}} \right\rceil + 1,\quad p = \frac{L - 2e}{n - 1}`,
  inputs: {
    length: { symbol: "L", kind: Length, meaning: "length of the edge", above: 0 },
    endDistance: { symbol: "e", kind: Length, meaning: "end to first rivet", min: 0 },
    largestPitch: { symbol: "p_{max}", kind: Length, meaning: "largest pitch", above: 0 },
  },
  result: {
    count: { symbol: "n", kind: Count, meaning: "rivets" },
    pitch: { symbol: "p", kind: Length, meaning: "pitch" },
  },
  source: [cite("geometry", "equal spaces along a line")],
  validity: "A straight edge without gaps; check the pitch against the rivet's diameter apart from this.",
  refuse: ({ length, endDistance }) =>
    length > 2 * endDistance
      ? []
      : [
          `length must exceed twice the end distance, got ${Length.show(length)} and ${Length.show(endDistance)}`,
        ],
  compute: ({ length, endDistance, largestPitch }) => {
    const between = length - 2 * endDistance;
    const spaces = wholeUp(between / largestPitch);
    return { count: spaces + 1, pitch: between / spaces };
  },
});
