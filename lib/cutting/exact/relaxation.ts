/** Column generation: the cheapest cover when a fill may be used in parts, and a bound that needs no trust in rounding. */
import type { Cover, Fill, Remaining } from "./cover.js";
import { mostValuable, worthOf } from "./knapsack.js";
import { CoveringProgram, type LpColumn } from "./simplex.js";

/** A fill as a column of the program. */
interface FillColumn extends LpColumn {
  readonly fill: Fill;
}

/** The cheapest cover in parts. */
export interface Relaxed {
  /** No whole cover of what remains costs less. */
  readonly bound: number;
  /** Worth of one piece of each type, rounded down to a binary fraction. */
  readonly values: readonly number[];
  /** Fills in use with how often, the most used first. */
  readonly used: readonly { readonly fill: Fill; readonly amount: number }[];
}

/** Values are cut off to this many parts of one, so that sums of them are exact. */
const parts = 2 ** 24;

/** Solves relaxations of one cover, and remembers every fill it met. */
export class Relaxation {
  private readonly pool: FillColumn[] = [];
  private readonly known = new Set<string>();
  private readonly limited: readonly number[];

  constructor(private readonly cover: Cover) {
    this.limited = cover.stocks.flatMap(({ supply }, stock) => (Number.isFinite(supply) ? [stock] : []));
  }

  /** Keeps a fill for later relaxations. */
  remember(fill: Fill): void {
    const key = `${fill.stock}:${fill.counts.join()}`;
    if (this.known.has(key)) return;
    this.known.add(key);
    this.pool.push(this.columnOf(fill));
  }

  /** The cheapest cover in parts of what remains. */
  solve(remaining: Remaining): Relaxed {
    const program = this.programFor(remaining);
    const columns = this.pool.filter(({ fill }) => goesInto(fill, remaining));
    for (let round = 0; round < 60 * remaining.demand.length + 400; round++) {
      const column =
        this.cheapestKnown(columns, program, remaining) ??
        this.newColumns(program.prices(), remaining, columns)[0];
      if (!column || !program.enter(column)) break;
    }
    return this.answer(program, remaining);
  }

  private programFor({ demand, supply }: Remaining): CoveringProgram {
    const dearest = Math.max(1, ...this.cover.stocks.map(({ cost }) => cost));
    return new CoveringProgram(
      demand,
      this.limited.map((stock) => supply[stock] as number),
      10 * dearest,
    );
  }

  private columnOf(fill: Fill): FillColumn {
    const { stock, counts } = fill;
    const types = counts.flatMap((count, type) => (count > 0 ? [type] : []));
    const rank = this.limited.indexOf(stock);
    return {
      fill,
      cost: this.cover.stocks[stock]?.cost ?? 0,
      rows: rank < 0 ? types : [...types, counts.length + rank],
      factors: [...types.map((type) => counts[type] as number), ...(rank < 0 ? [] : [1])],
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
      if (reduced < least) [best, least] = [{ cost: 0, rows: [row], factors: [surplus ? -1 : 1] }, reduced];
    }
    return best;
  }

  /** A new fill for every stock that is worth more than its cost. */
  private newColumns(prices: Float64Array, remaining: Remaining, columns: FillColumn[]): FillColumn[] {
    const values = remaining.demand.map((_, type) => Math.max(0, prices[type] as number));
    const thresholds = this.cover.stocks.map(
      ({ cost }, stock) => cost - this.supplyPrice(stock, prices, values.length) + 1e-7,
    );
    const fills = mostValuable(this.cover, remaining, values, thresholds).filter(
      (fill) => fill !== undefined,
    );
    const found = fills.map((fill) => {
      this.remember(fill);
      return this.columnOf(fill);
    });
    columns.push(...found);
    return found;
  }

  private supplyPrice(stock: number, prices: Float64Array, types: number): number {
    const rank = this.limited.indexOf(stock);
    return rank < 0 ? 0 : (prices[types + rank] as number);
  }

  private answer(program: CoveringProgram, remaining: Remaining): Relaxed {
    const prices = program.prices();
    const values = remaining.demand.map(
      (_, type) => Math.floor(Math.max(0, prices[type] as number) * parts) / parts,
    );
    return {
      ...this.safeBound(values, remaining),
      used: program
        .solution()
        .flatMap(({ column, amount }) =>
          "fill" in column ? [{ fill: (column as FillColumn).fill, amount }] : [],
        )
        .filter(({ amount }) => amount > 1e-7)
        .sort((a, b) => b.amount - a.amount),
    };
  }

  /**
   * A bound from values alone (Farley 1990): scaled until no fill of an unlimited stock is worth more than
   * its cost; what fills of limited stock are worth beyond theirs is taken off.
   */
  private safeBound(values: readonly number[], remaining: Remaining): Pick<Relaxed, "bound" | "values"> {
    const costs = this.cover.stocks.map(({ cost }) => cost);
    const worth = (scaled: readonly number[]): number[] =>
      mostValuable(this.cover, remaining, scaled, costs).map((fill) =>
        fill ? worthOf(fill.counts, scaled) : 0,
      );
    const excess = worth(values).map((most, stock) =>
      this.limited.includes(stock) || most === 0 ? 1 : most / (costs[stock] as number),
    );
    const scale = Math.max(1, ...excess);
    const scaled = scale > 1 ? values.map((value) => Math.floor((value / scale) * parts) / parts) : values;
    const over = worth(scaled);
    const lost = this.limited.reduce(
      (sum, stock) =>
        sum +
        (remaining.supply[stock] as number) * Math.max(0, (over[stock] as number) - (costs[stock] as number)),
      0,
    );
    return { bound: worthOf(remaining.demand, scaled) - lost, values: scaled };
  }
}

function goesInto({ stock, counts }: Fill, { demand, supply }: Remaining): boolean {
  return (supply[stock] as number) > 0 && counts.every((count, type) => count <= (demand[type] as number));
}
