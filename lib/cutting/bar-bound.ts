import { type Formula, formula } from "../formula.js";
import { Count, type Kind, Length, listOf, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";
import { fits, hair } from "./numbers.js";
import { fewestToCover } from "./purchase.js";

/** Pieces of one length, without a name. */
export interface BarCut {
  /** Of one piece. */ readonly length: Length;
  /** How many of that length. */ readonly count: number;
}

/** Pieces to be cut from bars of one length. */
export interface OneLengthJob {
  /** What is to be cut. */ readonly pieces: readonly BarCut[];
  /** Of a bar as sold. */ readonly stockLength: Length;
  /** Width of the saw's cut. */ readonly kerf: Length;
  /** Taken off each end of a bar. */ readonly endTrim: Length;
}

/** Two reasons why fewer bars cannot do; the larger one counts. */
export type BarBound = {
  /** All lengths and kerfs against what the bars hold. */ readonly byLength: number;
  /** Pieces so long that no two share a bar. */ readonly byHalf: number;
  /** The larger of the two. */ readonly bars: number;
};

/** The list of cuts as a formula shows it. */
export const BarCuts: Kind<readonly BarCut[]> = listOf(
  recordOf<BarCut>("cut", { length: Length, count: Count }),
);

/**
 * The bound on bought bars, in plain numbers: what the leftovers hold is taken off first.
 *
 * @param longest usable length of the longest bar on sale
 * @param rack lengths of the leftovers
 */
export function boundOf(
  pieces: readonly BarCut[],
  longest: number,
  kerf: number,
  rack: readonly number[] = [],
): BarBound {
  const need = lengthWithKerf(pieces, kerf, rack);
  const half = (longest + kerf) / 2;
  const long = pieces.filter(({ length }) => length + kerf > half + hair);
  const onRack = rack.reduce<number>((sum, bar) => sum + longPiecesIn(bar + kerf, half), 0);
  const byLength = fewestToCover(need, longest + kerf);
  const byHalf = Math.max(0, long.reduce((sum, { count }) => sum + count, 0) - onRack);
  return { byLength, byHalf, bars: Math.max(byLength, byHalf) };
}

/** Length to be bought, a kerf with every piece, after the leftovers are used to the last millimetre. */
export function lengthWithKerf(
  pieces: readonly BarCut[],
  kerf: number,
  rack: readonly number[] = [],
): number {
  const asked = pieces.reduce<number>((sum, { length, count }) => sum + count * (length + kerf), 0);
  const held = rack.reduce<number>((sum, length) => sum + length + kerf, 0);
  return Math.max(0, asked - held);
}

/** The most pieces longer than half a stock bar that a leftover can hold. */
function longPiecesIn(length: number, half: number): number {
  return Math.max(0, Math.ceil(length / half - hair) - 1);
}

/** What a bar holds after both ends are trimmed. */
export function usableLength(length: number, endTrim: number): number {
  return length - 2 * endTrim;
}

/** Reasons why pieces cannot come from bars of one length. */
export function tooLong({ pieces, stockLength, endTrim }: OneLengthJob): string[] {
  const usable = usableLength(stockLength, endTrim);
  const show = (length: number): string => Length.show(Length.si(length));
  if (!(usable > 0)) return [`nothing is left of a ${show(stockLength)} bar after its ends are trimmed`];
  return pieces
    .filter(({ length }) => !(length > 0) || !fits(length, usable))
    .map(({ length }) => `a piece of ${show(length)} does not come from ${show(usable)} of usable bar`);
}

/**
 * The fewest bars of one length any plan can do with: the larger of two counts.
 *
 * By length: ceil(sum of (piece + kerf) / (usable length + kerf)), since every piece but the last costs a
 * kerf. By half: the number of pieces with piece + kerf > (usable length + kerf) / 2, no two of which
 * share a bar.
 *
 * @source Martello and Toth, Knapsack Problems, ch. 8, bound L1 and the first term of bound L2
 * @throws Refusal for a negative kerf or trim, or a piece longer than a trimmed bar
 * @example barBound({ pieces: [{ length: mm(900), count: 5 }], stockLength: mm(2000), kerf: mm(3), endTrim: mm(0) }) // byLength 3, byHalf 0, bars 3
 */
export const barBound: Formula<OneLengthJob, BarBound> = formula<OneLengthJob, BarBound>({
  id: "bars.bound",
  title: "Fewest bars possible",
  equation: String.raw`n \ge \max\left(\left\lceil \frac{\sum_i (l_i + k)}{L + k} \right\rceil,\ \#\{i : l_i + k > \tfrac{1}{2}(L + k)\}\right),\quad L = L_0 - 2t`,
  inputs: {
    pieces: { symbol: "l_i", kind: BarCuts, meaning: "pieces" },
    stockLength: { symbol: "L_0", kind: Length, meaning: "length of a bar", above: 0 },
    kerf: { symbol: "k", kind: Length, meaning: "width of the saw's cut", min: 0 },
    endTrim: { symbol: "t", kind: Length, meaning: "taken off each end", min: 0 },
  },
  result: {
    byLength: { symbol: "n_l", kind: Count, meaning: "bars by total length" },
    byHalf: { symbol: "n_h", kind: Count, meaning: "bars by pieces longer than half" },
    bars: { symbol: "n", kind: Count, meaning: "fewest bars possible" },
  },
  source: [cite("knapsack-problems", "ch. 8, bounds L1 and L2")],
  validity: "Pieces laid end to end; slanted ends nested into each other could save more.",
  refuse: tooLong,
  compute: ({ pieces, stockLength, kerf, endTrim }) =>
    boundOf(pieces, usableLength(stockLength, endTrim), kerf),
});
