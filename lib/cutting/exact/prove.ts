/** The cheapest cover, with proof where the effort reaches. */
import { possibleTotals } from "../price-unit.js";
import { costOfFills, type Fill, type Remaining } from "./cover.js";
import { Dive } from "./dive.js";
import type { Fills } from "./fills.js";
import { Relaxation } from "./relaxation.js";
import { CoverSearch, type Effort } from "./search.js";

/** What came of a search. */
export interface Proof {
  /** The cheapest cover known. */
  readonly fills: readonly Fill[];
  /** No cover costs less. */
  readonly bound: number;
}

/** Relaxations to solve in one dive, and the share of the time for all dives. */
const diveSteps = 200;
const divingShare = 0.5;

/**
 * Improves on a cover in hand and proves how good it is. Dives look for cheaper covers first. Then the relaxation
 * gives a bound; from there on, total by possible total, a search either finds a cover or shows that there is none.
 *
 * @param pool fills to start from besides those in hand
 * @source Gilmore and Gomory 1961 for the relaxation
 */
export function proveCover(
  source: Fills,
  all: Remaining,
  hand: readonly Fill[],
  effort: Effort,
  pool: readonly Fill[] = [],
): Proof {
  const relaxation = new Relaxation(source, effort.until);
  for (const fill of [...hand, ...pool]) relaxation.remember(fill);
  const totals = possibleTotals(
    source.stocks.map(({ cost }) => cost),
    costOfFills(source, hand),
  );
  const best = improved(source, relaxation, all, hand, totals, effort);
  return proven(source, relaxation, all, best, totals, effort);
}

function improved(
  source: Fills,
  relaxation: Relaxation,
  all: Remaining,
  hand: readonly Fill[],
  totals: readonly number[],
  { until }: Effort,
): readonly Fill[] {
  const now = performance.now();
  const soon = now + divingShare * (until - now);
  const least = relaxation.guess(all).cost - 1e-6;
  let best = hand;
  for (;;) {
    const known = costOfFills(source, best);
    const open = totals.filter((one) => one >= least && one < known);
    const budget = open.at(-1);
    // A search within the only total left is as quick as a dive, and shows more.
    if (budget === undefined || (source.alwaysThorough && open.length === 1)) return best;
    const found = new Dive(source, relaxation, { steps: diveSteps, until: soon }).within(all, budget);
    if (!found) return best;
    best = found;
  }
}

function proven(
  source: Fills,
  relaxation: Relaxation,
  all: Remaining,
  best: readonly Fill[],
  totals: readonly number[],
  effort: Effort,
): Proof {
  const known = costOfFills(source, best);
  const below = totals.findLast((one) => one < known) ?? 0;
  const relaxed = relaxation.solve(all, below + 1e-5).bound - 1e-6;
  const search = new CoverSearch(source, relaxation, effort, totals);
  for (const total of totals.filter((one) => one >= relaxed && one < known)) {
    const { fills, certain } = search.within(all, total);
    if (fills) return { fills, bound: total };
    if (!certain) return { fills: best, bound: total };
  }
  return { fills: best, bound: known };
}
