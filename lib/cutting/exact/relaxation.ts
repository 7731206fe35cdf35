/** Column generation: the cheapest cover when a fill may be used in parts, and a bound that needs no trust in rounding. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import type { BestFill, Fill, FillQuestion, Fills, Remaining } from "./cover.js";
import { worthOf } from "./cover.js";
import { CoveringProgram, type LpColumn } from "./simplex.js";

/** A fill as a column of the program. */
export interface FillColumn extends LpColumn {
  /** The fill. */ readonly fill: Fill;
}

/** The cheapest cover in parts. */
export interface Relaxed {
  /** No whole cover of what remains costs less. */ readonly bound: number;
  /** Worth of one piece of each type, rounded down to a binary fraction. */
  readonly values: readonly number[];
  /** What the fills in use cost; no cover in parts of the fills known so far costs less. */
  readonly cost: number;
  /** Fills in use with how often, the most used first. */
  readonly used: readonly { readonly fill: Fill; readonly amount: number }[];
}

/** Values are cut off to this many parts of one, so that sums of them are exact. */
const parts = 2 ** 24;

/** To weigh one column, and to renew one entry of the inverse of a basis, in microseconds. */
const workOfColumn = 0.1;
const workOfEntry = 0.003;

/** Solves relaxations of one cover, and remembers every fill it met. */
export class Relaxation {
  private readonly pool: FillColumn[] = [];
  private readonly known = new Set<string>();
  private readonly limited: readonly number[];

  /** @param patience after which no more columns are looked for */
  constructor(
    private readonly source: Fills,
    private readonly patience: Patience,
  ) {
    this.limited = source.stocks.flatMap(({ supply }, stock) => (Number.isFinite(supply) ? [stock] : []));
  }

  /** Keeps a fill for later relaxations. */
  remember(fill: Fill): void {
    const key = `${fill.stock}:${fill.counts.join()}`;
    if (this.known.has(key)) return;
    this.known.add(key);
    this.pool.push(this.columnOf(fill));
  }

  /**
   * The cheapest cover in parts of what remains. Values are looked for between those of the covers known so far
   * and the best ones no fill is known to exceed, which both close in on the right ones.
   *
   * @param enough a bound from which on more is of no use
   */
  solve(remaining: Remaining, enough: number = Number.POSITIVE_INFINITY): Relaxed {
    const program = this.programFor(remaining);
    const columns = this.pool.filter(({ fill }) => goesInto(fill, remaining));
    let safe: SafeValues = {
      ...this.pricesOf(program, remaining),
      values: this.source.fairValues(remaining),
      bound: Number.NEGATIVE_INFINITY,
    };
    const direct = this.source.alwaysThorough;
    let share = direct ? 0 : 1;
    for (let round = 0; round < 60 * remaining.demand.length + 400; round++) {
      this.useKnown(columns, program, remaining);
      const outer = this.pricesOf(program, remaining);
      if (
        !direct &&
        round > 0 &&
        this.ask(between(safe, outer, quickShare), remaining, "quick", columns).found > 0
      )
        continue;
      const asked = between(safe, outer, share);
      const { found, offers } = this.ask(asked, remaining, "all", columns);
      const checked = this.safeValues(asked.values, offers, remaining);
      if (checked.bound > safe.bound) safe = checked;
      const done = found === 0 && share === 0;
      if (done || safe.bound >= enough || program.cost() - safe.bound < 1e-7 || this.patience.isOver) break;
      share = direct ? 0 : nextShare(share, found === 0);
    }
    return { bound: safe.bound, values: safe.values, cost: program.cost(), used: usedIn(program) };
  }

  /** The cheapest cover in parts by fills that come quickly to hand. Its bound is none. */
  guess(remaining: Remaining): Relaxed {
    const program = this.programFor(remaining);
    const columns = this.pool.filter(({ fill }) => goesInto(fill, remaining));
    do this.useKnown(columns, program, remaining);
    while (
      !this.patience.isOver &&
      this.ask(this.pricesOf(program, remaining), remaining, "quick", columns).found > 0
    );
    const { values } = this.pricesOf(program, remaining);
    return { bound: 0, values, cost: program.cost(), used: usedIn(program) };
  }

  /** Enters columns that are known for as long as one saves anything. */
  private useKnown(columns: readonly FillColumn[], program: CoveringProgram, remaining: Remaining): void {
    for (let round = 0; round < 60 * remaining.demand.length + 400; round++) {
      this.patience.spend(columns.length * workOfColumn + remaining.demand.length ** 2 * workOfEntry);
      const column = this.cheapestKnown(columns, program, remaining);
      if (!column || !program.enter(column)) return;
    }
  }

  private pricesOf(program: CoveringProgram, { demand }: Remaining): Prices {
    const prices = program.prices();
    return {
      values: demand.map((_, type) => Math.max(0, at(prices, type))),
      premiums: this.source.stocks.map((_, stock) => {
        const rank = this.limited.indexOf(stock);
        return rank < 0 ? 0 : Math.max(0, -at(prices, demand.length + rank));
      }),
    };
  }

  /** Asks for fills worth more than they cost, and keeps them. */
  private ask(
    { values, premiums }: Prices,
    remaining: Remaining,
    which: FillQuestion,
    columns: FillColumn[],
  ): Answer {
    const thresholds = this.source.stocks.map(({ cost }, stock) => cost + at(premiums, stock) + 1e-7);
    const best = this.source.mostValuable(remaining, values, thresholds, which);
    const offers = best.map(({ most }, stock) => Math.max(most, at(thresholds, stock)));
    return { found: this.newColumns(best, columns), offers };
  }

  private programFor({ demand, supply }: Remaining): CoveringProgram {
    const dearest = Math.max(1, ...this.source.stocks.map(({ cost }) => cost));
    return new CoveringProgram(
      demand,
      this.limited.map((stock) => at(supply, stock)),
      10 * dearest,
    );
  }

  private columnOf(fill: Fill): FillColumn {
    const { stock, counts } = fill;
    const entries = counts.flatMap((factor, row) => (factor > 0 ? [{ row, factor }] : []));
    const rank = this.limited.indexOf(stock);
    return {
      fill,
      cost: at(this.source.stocks, stock).cost,
      entries: rank < 0 ? entries : [...entries, { row: counts.length + rank, factor: 1 }],
    };
  }

  /** The known column that saves most, surpluses and slacks included. */
  private cheapestKnown(
    columns: readonly FillColumn[],
    program: CoveringProgram,
    { demand }: Remaining,
  ): LpColumn | undefined {
    let best: LpColumn | undefined;
    let least = -1e-7;
    for (const column of columns) {
      const reduced = program.reducedCost(column);
      if (reduced < least) [best, least] = [column, reduced];
    }
    for (const [row, price] of program.prices().entries()) {
      const surplus = row < demand.length;
      const reduced = surplus ? price : -price;
      if (reduced < least)
        [best, least] = [{ cost: 0, entries: [{ row, factor: surplus ? -1 : 1 }] }, reduced];
    }
    return best;
  }

  /** Keeps what was offered; returns how much that is. */
  private newColumns(offers: readonly BestFill[], columns: FillColumn[]): number {
    const found = offers.flatMap(({ fills }) => fills);
    for (const fill of found) {
      this.remember(fill);
      columns.push(this.columnOf(fill));
    }
    return found.length;
  }

  /**
   * A bound from values alone (Farley 1990): scaled until no fill of an unlimited stock is worth more than
   * its cost; what fills of limited stock are worth beyond theirs is taken off.
   */
  private safeValues(asked: readonly number[], offers: readonly number[], remaining: Remaining): SafeValues {
    const excess = offers.map((most, stock) =>
      this.limited.includes(stock) ? 1 : most / at(this.source.stocks, stock).cost,
    );
    const scale = Math.max(1, ...excess);
    const values = asked.map((value) => Math.floor((value / scale) * parts) / parts);
    const premiums = offers.map((most, stock) =>
      this.limited.includes(stock) ? Math.max(0, most / scale - at(this.source.stocks, stock).cost) : 0,
    );
    const lost = this.limited.reduce(
      (sum, stock) => sum + at(premiums, stock) * at(remaining.supply, stock),
      0,
    );
    return { values, premiums, bound: worthOf(remaining.demand, values) - lost };
  }
}

/** Worth of a piece of each type, and what one more of each limited stock would save. */
export interface Prices {
  /** Worth of one piece of each type. */ readonly values: readonly number[];
  /** What one more of each stock would save. */ readonly premiums: readonly number[];
}

/** Prices no fill is worth more than, and what all pieces are worth by them. */
export interface SafeValues extends Prices {
  /** What all pieces are worth by these prices, less what limited stock saves. */ readonly bound: number;
}

/** What came of asking for fills. */
export interface Answer {
  /** How many were offered. */ readonly found: number;
  /** The most a fill of each stock is worth. */ readonly offers: readonly number[];
}

/** How far values are kept to the safe ones when only quick answers are wanted. */
const quickShare = 0.4;

/** The same for thorough answers: closer where fills are found, since that is less work. */
function nextShare(share: number, none: boolean): number {
  if (share === 1) return 0.8;
  return none ? Math.max(0, share - 0.2) : Math.min(0.9, share + 0.1);
}

function between(safe: Prices, outer: Prices, share: number): Prices {
  const mix = (one: readonly number[], other: readonly number[]): number[] =>
    one.map((value, i) => share * value + (1 - share) * at(other, i));
  return { values: mix(safe.values, outer.values), premiums: mix(safe.premiums, outer.premiums) };
}

function usedIn(program: CoveringProgram): Relaxed["used"] {
  return program
    .solution()
    .flatMap(({ column, amount }) =>
      "fill" in column ? [{ fill: (column as FillColumn).fill, amount }] : [],
    )
    .filter(({ amount }) => amount > 1e-7)
    .sort((a, b) => b.amount - a.amount);
}

function goesInto({ stock, counts }: Fill, { demand, supply }: Remaining): boolean {
  return at(supply, stock) > 0 && counts.every((count, type) => count <= at(demand, type));
}
