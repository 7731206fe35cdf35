/** The cheapest cover, with proof where the effort reaches. */
import { at } from "../../algebra/lists.js";
import { possibleTotals } from "../purchase.js";
import {
  type Completion,
  costOfFills,
  type Effort,
  type Fill,
  type Fills,
  type Remaining,
  timesIn,
  without,
} from "./cover.js";
import { Dive, roundedCover } from "./dive.js";
import { Relaxation, type Relaxed } from "./relaxation.js";

/** What came of a search. */
export interface Proof {
  /** The cheapest cover known. */ readonly fills: readonly Fill[];
  /** No cover costs less. */ readonly bound: number;
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
  const relaxation = new Relaxation(source, effort.patience);
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
  { patience }: Effort,
): readonly Fill[] {
  const soon = patience.share(divingShare);
  const least = relaxation.guess(all).cost - 1e-6;
  let best = hand;
  for (;;) {
    const known = costOfFills(source, best);
    const open = totals.filter((one) => one >= least && one < known);
    const budget = open.at(-1);
    // A search within the only total left is as quick as a dive, and shows more.
    if (budget === undefined || (source.alwaysThorough && open.length === 1)) return best;
    const found = new Dive(source, relaxation, { steps: diveSteps, patience: soon }).within(all, budget);
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

const nearly = 1e-6;

interface Met {
  /** The cheapest cover of it in parts. */ readonly relaxed: Relaxed;
  /** The largest budget that was shown not to do; -1 before any was. */ hopeless: number;
}

/** Looks for covers within a budget. */
class CoverSearch {
  private steps = 0;
  private exhaustive = true;
  /** What is known of remainders met before: their relaxation, and the largest budget that did not do. */
  private readonly met = new Map<string, Met>();

  constructor(
    private readonly source: Fills,
    private readonly relaxation: Relaxation,
    private readonly effort: Effort,
    /** Costs some purchase comes to, ascending. */
    private readonly totals: readonly number[],
  ) {}

  /** A cover that costs no more than the budget; none, and whether that is certain. */
  within(
    remaining: Remaining,
    budget: number,
  ): { readonly fills?: readonly Fill[]; readonly certain: boolean } {
    this.exhaustive = true;
    const fills = this.descend(remaining, budget);
    return fills ? { fills, certain: true } : { certain: this.exhaustive };
  }

  private descend(remaining: Remaining, budget: number): Fill[] | undefined {
    if (remaining.demand.every((count) => count === 0)) return [];
    const met = this.meet(remaining, budget);
    if (!met) {
      this.exhaustive = false;
      return undefined;
    }
    if (met.hopeless >= budget || this.leastFrom(met.relaxed.bound) > budget) return undefined;
    const found =
      roundedCover(this.source, remaining, met.relaxed, budget) ??
      this.branch(remaining, budget, met.relaxed);
    if (!found && this.exhaustive) met.hopeless = budget;
    return found;
  }

  /** What is known of a remainder; nothing where the effort is spent. */
  private meet(remaining: Remaining, budget: number): Met | undefined {
    if (this.steps >= this.effort.steps || this.effort.patience.isOver) return undefined;
    const key = `${remaining.demand.join()}|${remaining.supply.join()}`;
    const before = this.met.get(key);
    if (before) return before;
    this.steps++;
    const met = { relaxed: this.relaxation.solve(remaining, budget + 2 * nearly), hopeless: -1 };
    this.met.set(key, met);
    return met;
  }

  /** The least total that reaches a bound, which is exact to a part in 2^24 of a cost. */
  private leastFrom(bound: number): number {
    return this.totals[firstReaching(this.totals, bound - nearly)] ?? Number.POSITIVE_INFINITY;
  }

  private branch(remaining: Remaining, budget: number, relaxed: Relaxed): Fill[] | undefined {
    const whole = relaxed.used.flatMap(({ fill, amount }) => this.repeated(remaining, fill, amount));
    for (const { fill, times } of whole.slice(0, 1)) {
      const found = this.follow(remaining, budget, fill, times);
      if (found) return found;
    }
    const { found, complete } = this.source.completions(
      remaining,
      relaxed.values,
      budget - relaxed.bound + nearly,
      400,
    );
    if (!complete) this.exhaustive = false;
    for (const { fill } of this.ordered(found, relaxed)) {
      const rest = this.follow(remaining, budget, fill, 1);
      if (rest) return rest;
    }
    return undefined;
  }

  /** A fill that the relaxation uses at least once in full is tried that often at a stroke. */
  private repeated(
    remaining: Remaining,
    fill: Fill,
    amount: number,
  ): { readonly fill: Fill; readonly times: number }[] {
    const times = Math.min(Math.floor(amount + 1e-6), timesIn(remaining, fill));
    return times >= 1 ? [{ fill, times }] : [];
  }

  private follow(remaining: Remaining, budget: number, fill: Fill, times: number): Fill[] | undefined {
    const cost = times * at(this.source.stocks, fill.stock).cost;
    if (cost > budget) return undefined;
    const rest = this.descend(without(remaining, fill, times), budget - cost);
    return rest && [...Array.from({ length: times }, () => fill), ...rest];
  }

  /** What the relaxation uses most comes first, then what loses least. */
  private ordered(found: readonly Completion[], { used }: Relaxed): Completion[] {
    const amounts = new Map(used.map(({ fill, amount }) => [keyOf(fill), amount]));
    const amountOf = ({ fill }: Completion): number => amounts.get(keyOf(fill)) ?? 0;
    return [...found].sort((a, b) => amountOf(b) - amountOf(a) || a.loss - b.loss);
  }
}

function keyOf({ stock, counts }: Fill): string {
  return `${stock}:${counts.join()}`;
}

/** Index of the first of ascending numbers that is not below a limit. */
function firstReaching(ascending: readonly number[], limit: number): number {
  let [low, high] = [0, ascending.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (at(ascending, middle) < limit) low = middle + 1;
    else high = middle;
  }
  return low;
}
