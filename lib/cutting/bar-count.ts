import { type Formula, formula } from "../formula.js";
import { Count, Length } from "../quantity/index.js";
import { cite } from "../source.js";
import { BarCuts, type OneLengthJob, tooLong, usableLength } from "./bar-bound.js";
import { firstFit, type OpenBar } from "./first-fit.js";

/**
 * Bars that first-fit decreasing takes: the longest piece first, each into the first bar with room.
 *
 * Never more than 11/9 of the fewest bars plus 6/9 (for pieces without kerf, and with it, since a kerf
 * only lengthens piece and bar alike).
 *
 * @source Dosa 2007 for the worst case
 * @throws RangeError for a negative kerf or trim, or a piece longer than a trimmed bar
 * @example firstFitBars({ pieces: [{ length: mm(900), count: 5 }], stockLength: mm(2000), kerf: mm(3), endTrim: mm(0) }) // 3
 */
export const firstFitBars: Formula<OneLengthJob, number> = formula({
  id: "bars.first.fit",
  title: "Bars taken by first-fit decreasing",
  equation: String.raw`\mathrm{FFD} \le \tfrac{11}{9}\,\mathrm{OPT} + \tfrac{6}{9}`,
  inputs: {
    pieces: { symbol: "l_i", kind: BarCuts, meaning: "pieces" },
    stockLength: { symbol: "L_0", kind: Length, meaning: "length of a bar", above: 0 },
    kerf: { symbol: "k", kind: Length, meaning: "width of the saw's cut", min: 0 },
    endTrim: { symbol: "t", kind: Length, meaning: "taken off each end", min: 0 },
  },
  result: { symbol: String.raw`\mathrm{FFD}`, kind: Count, meaning: "bars taken" },
  source: [cite("bin-packing", "theorem 1")],
  validity: "One length of stock. A good plan, not always the best: see the bound beside it.",
  refuse: tooLong,
  compute: ({ pieces, stockLength, kerf, endTrim }) => {
    const usable = usableLength(stockLength, endTrim);
    const cuts = pieces
      .flatMap(({ length, count }) => Array.from({ length: count }, () => ({ length: Number(length) })))
      .sort((a, b) => b.length - a.length);
    const openBar = (): OpenBar<{ length: number }> => ({ room: usable, pieces: [] });
    return firstFit(cuts, kerf, [], openBar).bars.length;
  },
});
