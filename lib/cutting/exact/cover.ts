/** Stock to be filled with pieces, in plain numbers, and the ways to fill it: what the exact search works on. */

import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";

/** Pieces of several sizes, to be cut from stocks of several lengths. */
export interface Cover {
  /** Of each type of piece, its kerf included; the largest first. In picometres, so that sums are exact. */
  readonly sizes: readonly number[];
  /** What they are cut from. */ readonly stocks: readonly CoverBar[];
}

/** One length of stock. */
export interface CoverBar extends CoverStock {
  /** What one holds, in the unit of the sizes, one kerf included. */ readonly room: number;
}

/** One kind of stock. */
export interface CoverStock {
  /** Of one; a whole number. */ readonly cost: number;
  /** How many there are; infinite where as many can be had as are needed. */
  readonly supply: number;
}

/** One bar filled: so many pieces of each type. */
export interface Fill {
  /** Index of the stock. */ readonly stock: number;
  /** One number a type of piece. */ readonly counts: readonly number[];
}

/** What is still to be cut, and what is still to be had. */
export interface Remaining {
  /** Pieces of each type. */ readonly demand: readonly number[];
  /** Bars of each stock. */ readonly supply: readonly number[];
}

/** What remains after some bars are filled alike. */
export function without({ demand, supply }: Remaining, fill: Fill, times: number): Remaining {
  return {
    demand: demand.map((count, type) => count - times * at(fill.counts, type)),
    supply: supply.map((count, stock) => (stock === fill.stock ? count - times : count)),
  };
}

/** How often a fill goes into what remains. */
export function timesIn({ demand, supply }: Remaining, { stock, counts }: Fill): number {
  return counts.reduce(
    (times, count, type) => (count === 0 ? times : Math.min(times, Math.floor(at(demand, type) / count))),
    at(supply, stock),
  );
}

/** What a cover costs. */
export function costOfFills(
  { stocks }: { readonly stocks: readonly CoverStock[] },
  fills: readonly Fill[],
): number {
  return fills.reduce((sum, { stock }) => sum + (stocks[stock]?.cost ?? 0), 0);
}

/** What a fill is worth. */
export function worthOf(counts: readonly number[], values: readonly number[]): number {
  return counts.reduce((sum, count, type) => sum + count * at(values, type), 0);
}

/** A fill, and how much of its bar's cost its pieces are not worth. */
export interface Completion {
  /** The fill. */ readonly fill: Fill;
  /** Cost of the bar less the worth of its pieces; what the cover loses by using it. */
  readonly loss: number;
}

/** Fills that contain a piece, and whether they are all there are. */
export interface Completions {
  /** The fills, as far as they were listed. */ readonly found: readonly Completion[];
  /** Whether these are all there are. */ readonly complete: boolean;
}

/** What a search may do before it gives up. */
export interface Effort {
  /** Relaxations to solve. */ readonly steps: number;
  /** After which no step is begun. */ readonly patience: Patience;
}

/** What a fill must be worth more than, for each stock, to be of interest. */
export type Thresholds = readonly number[];

/** The most valuable fills of one stock. */
export interface BestFill {
  /** Fills worth more than the threshold, the best first; none where none was found. */
  readonly fills: readonly Fill[];
  /** No fill of this stock is worth more than this or the threshold. */ readonly most: number;
}

/** Whether all fills must be weighed, or only those that come to hand. */
export type FillQuestion = "quick" | "all";

/** Ways to fill the stock of one job. */
export interface Fills {
  /** What there is to fill. */ readonly stocks: readonly CoverStock[];
  /** Whether a quick answer is a thorough one as well. */ readonly alwaysThorough: boolean;

  /**
   * The most valuable fills of each stock from what remains.
   *
   * @param values of one piece of each type; types without a value are left out
   * @param which "quick" where any will do; then what is said of the most may be wrong
   */
  mostValuable(
    remaining: Remaining,
    values: readonly number[],
    thresholds: Thresholds,
    which: FillQuestion,
  ): readonly BestFill[];

  /**
   * Fills with at least one piece of the first type left, to which no further piece could be added, and that
   * lose no more than allowed. Some cheapest cover uses one of them: pieces can always be moved from another
   * stock into one with room for them.
   *
   * @param values of one piece of each type, from the relaxation
   * @param allowed the most a fill may lose
   * @param most fills to list before giving up on completeness
   */
  completions(remaining: Remaining, values: readonly number[], allowed: number, most: number): Completions;

  /** Values by which no fill of a stock without limit is worth more than its cost, to start a search from. */
  fairValues(remaining: Remaining): readonly number[];

  /** One stock of a good rate, filled with the largest pieces left; nothing where no stock is left. */
  fullest(remaining: Remaining): Fill | undefined;
}
