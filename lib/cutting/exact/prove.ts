/** The cheapest cover, with proof where the effort reaches. */
import { possibleTotals } from "../price-unit.js";
import { type Cover, costOfFills, type Fill, type Remaining } from "./cover.js";
import { Relaxation } from "./relaxation.js";
import { CoverSearch, type Effort } from "./search.js";

/** What came of a search. */
export interface Proof {
  /** The cheapest cover known. */
  readonly fills: readonly Fill[];
  /** No cover costs less. */
  readonly bound: number;
}

/**
 * Improves on a cover in hand and proves how good it is: the relaxation gives a bound; from there on, total
 * by possible total, a search either finds a cover or shows that there is none.
 *
 * @source Gilmore and Gomory 1961 for the relaxation
 */
export function proveCover(cover: Cover, all: Remaining, hand: readonly Fill[], effort: Effort): Proof {
  const relaxation = new Relaxation(cover);
  for (const fill of hand) relaxation.remember(fill);
  const known = costOfFills(cover, hand);
  const totals = possibleTotals(
    cover.stocks.map(({ cost }) => cost),
    known,
  );
  const relaxed = relaxation.solve(all).bound - 1e-6;
  const search = new CoverSearch(cover, relaxation, effort, totals);
  for (const total of totals.filter((one) => one >= relaxed && one < known)) {
    const { fills, certain } = search.within(all, total);
    if (fills) return { fills, bound: total };
    if (!certain) return { fills: hand, bound: total };
  }
  return { fills: hand, bound: known };
}
