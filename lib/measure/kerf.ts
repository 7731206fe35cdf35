import { type Formula, formula } from "../formula.js";
import { Count, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** One board cut several times with one blade. */
export interface KerfInputs {
  /** Length of the board before the first cut. */
  readonly before: Length;
  /** Length of what is left of the board after the last cut. */
  readonly after: Length;
  /** Lengths of all pieces cut off, added up. */
  readonly offcuts: Length;
  readonly cuts: number;
}

/**
 * Width of a blade's cut from the length that cuts turn to dust: k = (before - after - offcuts) / n. Ten
 * cuts bring a rule's error of 1 mm down to 0.1 mm.
 *
 * @throws RangeError when no length was lost
 * @example kerfFromCuts(kerfFromCuts.read({ before: "1000 mm", after: "468 mm", offcuts: "500 mm", cuts: 10 })) // 3.2 mm
 */
export const kerfFromCuts: Formula<KerfInputs, Length> = formula({
  id: "kerf.from.cuts",
  title: "Kerf of a blade from several cuts",
  equation: String.raw`k = \frac{l_0 - l_1 - \sum l_i}{n}`,
  inputs: {
    before: { symbol: "l_0", kind: Length, meaning: "board before", above: 0 },
    after: { symbol: "l_1", kind: Length, meaning: "board after", min: 0 },
    offcuts: { symbol: String.raw`\sum l_i`, kind: Length, meaning: "offcuts added up", min: 0 },
    cuts: { symbol: "n", kind: Count, meaning: "number of cuts", min: 1 },
  },
  result: { symbol: "k", kind: Length, meaning: "kerf" },
  source: [cite("geometry", "lengths before = lengths after + cuts")],
  validity: "All cuts square, with the same blade.",
  refuse: ({ before, after, offcuts }) =>
    before - after - offcuts > 0
      ? []
      : ["board after and offcuts must be shorter than the board before: measure them again"],
  warn: ({ cuts }) => (cuts < 10 ? [`only ${cuts} cuts: ten or more make the rule's error small`] : []),
  compute: ({ before, after, offcuts, cuts }) => (before - after - offcuts) / cuts,
});
