/** What bars and sheets have in common: stock with a price, a supply that runs out, what was bought, whole prices. */
import { addMoney, type Money, money, timesMoney, wholeUp } from "../quantity/index.js";
import { commonDivisor } from "./numbers.js";

/** Anything the shop can buy to cut from. */
export interface Buyable {
  /** Unique in the list. */ readonly name: string;
  /** Of one. */ readonly price: Money;
  /** How many can be had; as many as needed when absent. */ readonly available?: number;
}

/** One line of what to buy. */
export interface Purchase {
  /** Name of the stock. */ readonly stock: string;
  /** How many to buy. */ readonly count: number;
  /** Of one. */ readonly price: Money;
  /** Of all of them. */ readonly cost: Money;
}

/** What no plan can beat, so that a reader sees how much a better plan could still save. */
export interface PurchaseBound {
  /** No plan buys fewer bars or sheets. */ readonly count: number;
  /** No plan costs less. */ readonly cost: Money;
  /** The reasoning behind the count, in words. */ readonly because: string;
}

/** How good a plan is known to be. */
export interface PlanProof {
  /** Whether no plan can cost less. */ readonly proven: boolean;
  /** The most a better plan could still save; nothing where the plan is proven. */
  readonly gap: Money;
}

/**
 * A bound raised to what a search has shown.
 *
 * @param amount no plan costs less
 */
export function raisedBound(
  bound: PurchaseBound,
  amount: number,
  stock: readonly Buyable[],
  because: string,
): PurchaseBound {
  if (amount <= bound.cost.amount) return bound;
  const dearest = Math.max(...stock.map(({ price }) => price.amount));
  const count = Math.max(bound.count, wholeUp(amount / dearest));
  return { count, cost: { ...bound.cost, amount }, because };
}

/** How far a plan's cost is from its bound. */
export function proofOf(cost: Money, bound: Money): PlanProof {
  const gap = Math.max(0, cost.amount - bound.amount);
  return gap <= 1e-9 * Math.max(1, cost.amount)
    ? { proven: true, gap: money(0, cost.currency) }
    : { proven: false, gap: money(gap, cost.currency) };
}

/** Stock counted down as a plan uses it. */
export class Supply<Stock extends Buyable> {
  private readonly left: Map<Stock, number>;

  /** @param cheapestFirst every stock once, in the order to fall back on */
  constructor(private readonly cheapestFirst: readonly Stock[]) {
    this.left = new Map(cheapestFirst.map((one) => [one, one.available ?? Number.POSITIVE_INFINITY]));
  }

  /** Takes one of the preferred stock where it suits and is left, or else the cheapest that does. */
  take(preferred: Stock, suits: (stock: Stock) => boolean): Stock | undefined {
    const found = [preferred, ...this.cheapestFirst].find((one) => suits(one) && this.remaining(one) > 0);
    if (found) this.left.set(found, this.remaining(found) - 1);
    return found;
  }

  /** Gives one back for the cheapest that suits; keeps it where nothing cheaper does. */
  exchange(held: Stock, suits: (stock: Stock) => boolean): Stock {
    this.left.set(held, this.remaining(held) + 1);
    const cheapest = this.cheapestFirst.find((one) => suits(one) && this.remaining(one) > 0);
    const kept = cheapest && cheapest.price.amount < held.price.amount ? cheapest : held;
    this.left.set(kept, this.remaining(kept) - 1);
    return kept;
  }

  private remaining(stock: Stock): number {
    return this.left.get(stock) ?? 0;
  }
}

/** Stock in the order of price, then of name, so that no plan depends on the order of a file. */
export function cheapestFirst<Stock extends Buyable>(stock: readonly Stock[]): Stock[] {
  return [...stock].sort((a, b) => a.price.amount - b.price.amount || compareNames(a.name, b.name));
}

/** Things in the order of their names, so that sums do not depend on the order of a file. */
export function byName<Thing extends { readonly name: string }>(things: readonly Thing[]): Thing[] {
  return [...things].sort((a, b) => compareNames(a.name, b.name));
}

/** Orders names the same way on every machine. */
export function compareNames(a: string, b: string): number {
  return a < b ? -1 : Number(a > b);
}

/** Sums up what was taken, one line a stock, in the order the stock is given. */
export function purchases<Stock extends Buyable>(
  stock: readonly Stock[],
  taken: readonly Stock[],
): Purchase[] {
  return stock.flatMap((one) => {
    const count = taken.filter((bought) => bought === one).length;
    const { name, price } = one;
    return count === 0 ? [] : [{ stock: name, count, price, cost: timesMoney(count, price) }];
  });
}

/** The cost of all purchases; nothing bought costs nothing in the given currency. */
export function costOf(bought: readonly Purchase[], currency: string): Money {
  return addMoney(
    bought.map(({ cost }) => cost),
    currency,
  );
}

/**
 * The least any plan can cost: every metre (or square metre) at the best rate on offer, and at least as
 * many pieces of stock as are needed at the lowest price.
 *
 * @param need length or area to be covered by bought stock, kerfs included
 * @param offers what one stock covers, kerf included, and its price; at least one
 * @param count the fewest pieces of stock to be bought
 */
export function leastCost(
  need: number,
  offers: readonly { readonly size: number; readonly price: Money }[],
  count: number,
): Money {
  const bestRate = Math.min(...offers.map(({ size, price }) => price.amount / size));
  const lowestPrice = Math.min(...offers.map(({ price }) => price.amount));
  return money(Math.max(0, need * bestRate, count * lowestPrice), offers[0]?.price.currency ?? "");
}

/** How many of the largest stock cover a need, at least. */
export function fewestToCover(need: number, largest: number): number {
  return wholeUp(need / largest);
}

/** The plan with the smallest figures, compared one after the other; the first of equals. */
export function leastOf<Plan>(
  plans: readonly Plan[],
  figures: (plan: Plan) => readonly number[],
): Plan | undefined {
  return plans.reduce<Plan | undefined>((best, plan) => {
    if (best === undefined) return plan;
    const ours = figures(plan);
    const theirs = figures(best);
    const differs = ours.findIndex((figure, i) => figure !== theirs[i]);
    return differs >= 0 && (ours[differs] ?? 0) < (theirs[differs] ?? 0) ? plan : best;
  }, undefined);
}

/** Prices in a common unit. */
export interface WholePrices {
  /** Whole numbers, in the order given; all 1 where nothing costs anything. */
  readonly costs: readonly number[];
  /** Money of one unit; 0 where nothing costs anything. */ readonly unit: number;
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
