/** What the exact search asks of a trade: how its stock can be filled. */
import type { Completions } from "./completions.js";
import type { CoverStock, Fill, Remaining } from "./cover.js";

/** What a fill must be worth more than, for each stock, to be of interest. */
export type Thresholds = readonly number[];

/** The most valuable fills of one stock. */
export interface BestFill {
  /** Fills worth more than the threshold, the best first; none where none was found. */
  readonly fills: readonly Fill[];
  /** No fill of this stock is worth more than this or the threshold. */
  readonly most: number;
}

/** Whether all fills must be weighed, or only those that come to hand. */
export type FillQuestion = "quick" | "all";

/** Ways to fill the stock of one job. */
export interface Fills {
  /** What there is to fill. */
  readonly stocks: readonly CoverStock[];
  /** Whether a quick answer is a thorough one as well. */
  readonly alwaysThorough: boolean;

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
