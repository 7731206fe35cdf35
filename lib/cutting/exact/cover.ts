/** Bars to be filled with pieces, in plain numbers: what the exact search works on. */

/** Pieces of several sizes, to be cut from stocks of several lengths. */
export interface Cover {
  /** Of each type of piece, its kerf included; the largest first. In picometres, so that sums are exact. */
  readonly sizes: readonly number[];
  /** What they are cut from. */
  readonly stocks: readonly CoverBar[];
}

/** One length of stock. */
export interface CoverBar extends CoverStock {
  /** What one holds, in the unit of the sizes, one kerf included. */
  readonly room: number;
}

/** One kind of stock. */
export interface CoverStock {
  /** Of one; a whole number. */
  readonly cost: number;
  /** How many there are; infinite where as many can be had as are needed. */
  readonly supply: number;
}

/** One bar filled: so many pieces of each type. */
export interface Fill {
  /** Index of the stock. */
  readonly stock: number;
  /** One number a type of piece. */
  readonly counts: readonly number[];
}

/** What is still to be cut, and what is still to be had. */
export interface Remaining {
  /** Pieces of each type. */
  readonly demand: readonly number[];
  /** Bars of each stock. */
  readonly supply: readonly number[];
}

/** What remains after some bars are filled alike. */
export function without({ demand, supply }: Remaining, fill: Fill, times: number): Remaining {
  return {
    demand: demand.map((count, type) => count - times * (fill.counts[type] as number)),
    supply: supply.map((count, stock) => (stock === fill.stock ? count - times : count)),
  };
}

/** How often a fill goes into what remains. */
export function timesIn({ demand, supply }: Remaining, { stock, counts }: Fill): number {
  return counts.reduce(
    (times, count, type) =>
      count === 0 ? times : Math.min(times, Math.floor((demand[type] as number) / count)),
    supply[stock] as number,
  );
}

/** What a cover costs. */
export function costOfFills(
  { stocks }: { readonly stocks: readonly CoverStock[] },
  fills: readonly Fill[],
): number {
  return fills.reduce((sum, { stock }) => sum + (stocks[stock]?.cost ?? 0), 0);
}
