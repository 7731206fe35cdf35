/** Prices as whole numbers, so that costs can be compared and counted up without rounding. */

/** Prices in a common unit. */
export interface WholePrices {
  /** Whole numbers, in the order given; all 1 where nothing costs anything. */
  readonly costs: readonly number[];
  /** Money of one unit; 0 where nothing costs anything. */
  readonly unit: number;
}

/** The finest part of a price that counts: a hundredth of a cent. */
const finest = 1e-4;

/** The largest unit all prices are whole multiples of, to a hundredth of a cent. */
export function wholePrices(prices: readonly number[]): WholePrices {
  const parts = prices.map((price) => Math.round(price / finest));
  const common = parts.reduce(commonDivisor, 0);
  if (common === 0) return { costs: prices.map(() => 1), unit: 0 };
  return { costs: parts.map((part) => part / common), unit: common * finest };
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** Every total from 0 up to a limit that some purchase comes to, ascending. */
export function possibleTotals(costs: readonly number[], limit: number): number[] {
  const reached = new Uint8Array(limit + 1);
  reached[0] = 1;
  for (const cost of new Set(costs.filter((one) => one > 0))) {
    for (let total = cost; total <= limit; total++) {
      if (reached[total - cost] === 1) reached[total] = 1;
    }
  }
  return [...reached.keys()].filter((total) => reached[total] === 1);
}

/** The least total some purchase comes to that is not below an amount; the amount itself where totals are too many. */
export function leastTotal(prices: readonly number[], amount: number): number {
  const { costs, unit } = wholePrices(prices);
  const dearest = Math.max(...costs);
  const limit = unit === 0 ? 0 : Math.ceil(amount / unit) + dearest;
  if (limit === 0 || limit > 1e6) return amount;
  const total = possibleTotals(costs, limit).find((one) => one * unit >= amount - 1e-9 * Math.max(1, amount));
  return total === undefined ? amount : Math.max(amount, total * unit);
}
