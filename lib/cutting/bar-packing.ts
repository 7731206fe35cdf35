/** First-fit decreasing with leftovers first and a preferred stock, then a cheaper bar for each where one will do. */

import { type Formula, formula } from "../formula.js";
import { Count, Length } from "../quantity/index.js";
import { cite } from "../source.js";
import { BarCuts, type OneLengthJob, tooLong, usableLength } from "./bar-bound.js";
import type { BarJob, EndCuts, StockBar } from "./bar-plan.js";
import { fits } from "./numbers.js";
import { compareNames, Supply } from "./purchase.js";
import { tooMany } from "./request.js";

/** A bar being filled. */
export interface OpenBar<Piece> {
  /** Length a further piece may have. */ room: number;
  /** In the order they were put in. */ readonly pieces: Piece[];
}

/** What became of a list of pieces. */
export interface Packing<Piece, Bar> {
  /** In the order they were opened. */ readonly bars: readonly Bar[];
  /** The first piece for which no bar could be opened. */ readonly unplaced?: Piece;
}

/**
 * Puts each piece into the first bar with room for it, and opens a bar where there is none.
 *
 * @param pieces longest first
 * @param kerf lost after every piece
 * @param open bars to be filled before any other
 * @param openBar a bar with room for the piece, or undefined when there is no such stock
 */
function firstFit<Piece extends { readonly length: number }, Bar extends OpenBar<Piece>>(
  pieces: readonly Piece[],
  kerf: number,
  open: readonly Bar[],
  openBar: (piece: Piece) => Bar | undefined,
): Packing<Piece, Bar> {
  const bars = [...open];
  for (const piece of pieces) {
    let bar = bars.find(({ room }) => fits(piece.length, room));
    if (!bar) {
      bar = openBar(piece);
      if (!bar) return { bars, unplaced: piece };
      bars.push(bar);
    }
    bar.pieces.push(piece);
    bar.room -= piece.length + kerf;
  }
  return { bars };
}

/** A single piece to be sawn. */
export interface Cut {
  /** As in the piece that asked for it. */ readonly name: string;
  /** m */ readonly length: number;
  /** As in the piece that asked for it. */ readonly mitre?: EndCuts;
}

/** A bar being filled: a stock bar, or a leftover. */
export interface FilledBar extends OpenBar<Cut> {
  /** What it is cut from. */ readonly source: StockBar | Rack;
}

/** A leftover, once for each of its count. */
export interface Rack {
  /** Name of the leftover. */ readonly rack: string;
  /** m, all of it usable. */ readonly length: number;
}

/** Whether a bar comes from the rack. */
export function isRack(source: StockBar | Rack): source is Rack {
  return "rack" in source;
}

/** Every single piece, the longest first; names settle ties, so that the order of a file does not matter. */
export function cutsOf({ pieces }: BarJob): Cut[] {
  return pieces
    .flatMap(({ count, ...piece }) => Array.from({ length: count }, () => piece))
    .sort((a, b) => b.length - a.length || compareNames(a.name, b.name));
}

/** Every single leftover, the shortest first: a piece takes the smallest one it fits. */
export function rackOf({ offcuts = [] }: BarJob): Rack[] {
  return offcuts
    .flatMap(({ name, length, count = 1 }) => Array.from({ length: count }, () => ({ rack: name, length })))
    .sort((a, b) => a.length - b.length || compareNames(a.rack, b.rack));
}

/** What the job's saw takes, along the bar. */
export interface Losses {
  /** m along the bar, with every cut. */ readonly kerf: number;
  /** m off each end of a new bar. */ readonly endTrim: number;
}

/**
 * One attempt at a job: fills the leftovers, then bars of the preferred stock (the cheapest other where
 * that is too short or sold out), then exchanges each for the cheapest bar that still holds its pieces.
 */
export function packBars(
  job: BarJob,
  stock: readonly StockBar[],
  preferred: StockBar,
  { kerf, endTrim }: Losses,
): Packing<Cut, FilledBar> {
  const supply = new Supply(stock);
  const usable = ({ length }: StockBar): number => usableLength(length, endTrim);
  const rack = rackOf(job).map((source): FilledBar => ({ source, room: source.length, pieces: [] }));
  const packing = firstFit(cutsOf(job), kerf, rack, ({ length }): FilledBar | undefined => {
    const source = supply.take(preferred, (one) => fits(length, usable(one)));
    return source && { source, room: usable(source), pieces: [] };
  });
  const exchanged = packing.bars.map((bar): FilledBar => {
    if (isRack(bar.source)) return bar;
    const used = usable(bar.source) - bar.room - kerf;
    const source = supply.exchange(bar.source, (one) => fits(used, usable(one)));
    return { ...bar, source, room: usable(source) - used - kerf };
  });
  return { ...packing, bars: exchanged.filter(({ pieces }) => pieces.length > 0) };
}

/**
 * Bars that first-fit decreasing takes: the longest piece first, each into the first bar with room.
 *
 * Never more than 11/9 of the fewest bars plus 6/9 (for pieces without kerf, and with it, since a kerf
 * only lengthens piece and bar alike).
 *
 * @source Dosa 2007 for the worst case
 * @throws Refusal for a negative kerf or trim, or a piece longer than a trimmed bar
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
  refuse: (job) => [...tooLong(job), ...tooMany(job.pieces)],
  compute: ({ pieces, stockLength, kerf, endTrim }) => {
    const usable = usableLength(stockLength, endTrim);
    const cuts = pieces
      .flatMap(({ length, count }) => Array.from({ length: count }, () => ({ length: Number(length) })))
      .sort((a, b) => b.length - a.length);
    const openBar = (): OpenBar<{ length: number }> => ({ room: usable, pieces: [] });
    return firstFit(cuts, kerf, [], openBar).bars.length;
  },
});
