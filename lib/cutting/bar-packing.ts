/** First-fit decreasing with leftovers first and a preferred stock, then a cheaper bar for each where one will do. */
import { usableLength } from "./bar-bound.js";
import type { BarJob, EndCuts, StockBar } from "./bar-plan.js";
import { firstFit, type OpenBar, type Packing } from "./first-fit.js";
import { compareNames, Supply } from "./purchase.js";
import { fits } from "./rounding.js";

/** A single piece to be sawn. */
export interface Cut {
  /** As in the piece that asked for it. */
  readonly name: string;
  /** m */
  readonly length: number;
  /** As in the piece that asked for it. */
  readonly mitre?: EndCuts;
}

/** A bar being filled: a stock bar, or a leftover. */
export interface FilledBar extends OpenBar<Cut> {
  /** What it is cut from. */
  readonly source: StockBar | Rack;
}

/** A leftover, once for each of its count. */
export interface Rack {
  /** Name of the leftover. */
  readonly rack: string;
  /** m, all of it usable. */
  readonly length: number;
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
export function rackOf({ leftovers = [] }: BarJob): Rack[] {
  return leftovers
    .flatMap(({ name, length, count = 1 }) => Array.from({ length: count }, () => ({ rack: name, length })))
    .sort((a, b) => a.length - b.length || compareNames(a.rack, b.rack));
}

/** What the job's saw takes, along the bar. */
export interface Losses {
  /** m along the bar, with every cut. */
  readonly kerf: number;
  /** m off each end of a new bar. */
  readonly endTrim: number;
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
