/** Ways to fill bars: lengths added up. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import {
  type BestFill,
  type Completion,
  type Completions,
  type Cover,
  type CoverStock,
  type Fill,
  type Fills,
  type Remaining,
  type Thresholds,
  worthOf,
} from "./cover.js";
import { mostValuable } from "./knapsack.js";

/** Fills of bars of any lengths. */
export class BarFills implements Fills {
  readonly stocks: readonly CoverStock[];
  readonly alwaysThorough = true;

  /** @param patience told of the work */
  constructor(
    private readonly cover: Cover,
    private readonly patience: Patience,
  ) {
    this.stocks = cover.stocks;
  }

  mostValuable(remaining: Remaining, values: readonly number[], thresholds: Thresholds): BestFill[] {
    return mostValuable(this.cover, remaining, values, thresholds, this.patience).map((fill) =>
      fill ? { fills: [fill], most: worthOf(fill.counts, values) } : { fills: [], most: 0 },
    );
  }

  completions(remaining: Remaining, values: readonly number[], allowed: number, most: number): Completions {
    return completions(this.cover, remaining, values, allowed, most, true, this.patience);
  }

  fairValues(): number[] {
    const unlimited = this.cover.stocks.filter(({ supply }) => !Number.isFinite(supply));
    const rate = Math.min(
      ...(unlimited.length > 0 ? unlimited : this.cover.stocks).map(({ cost, room }) => cost / room),
    );
    return this.cover.sizes.map((size) => size * rate);
  }

  fullest({ demand, supply }: Remaining): Fill | undefined {
    const { sizes, stocks } = this.cover;
    const stock = this.stockFor(
      supply,
      at(
        sizes,
        demand.findIndex((count) => count > 0),
      ),
    );
    if (stock < 0) return undefined;
    let room = stocks[stock]?.room ?? 0;
    const counts = demand.map((count, type) => {
      const taken = Math.min(count, Math.floor(room / at(sizes, type)));
      room -= taken * at(sizes, type);
      return taken;
    });
    return { stock, counts };
  }

  /** The stock with the lowest cost for its length among those with room for a piece; -1 where there is none. */
  private stockFor(supply: readonly number[], size: number): number {
    let best = -1;
    for (const [stock, { room, cost }] of this.cover.stocks.entries()) {
      if (at(supply, stock) <= 0 || size > room) continue;
      const rival = this.cover.stocks[best];
      if (!rival || cost / room < rival.cost / rival.room) best = stock;
    }
    return best;
  }
}

/**
 * Fills of bars with a piece of the largest type left, as `Fills` asks for them.
 *
 * @param full whether fills with room for a further piece, or for a longer one, are left out
 * @param patience told of the work, where it counts
 */
export function completions(
  cover: Cover,
  remaining: Remaining,
  values: readonly number[],
  allowed: number,
  most: number,
  full: boolean = true,
  patience?: Patience,
): Completions {
  const listing = new Listing(cover, remaining, values, allowed, most, full);
  for (const [stock, { room }] of cover.stocks.entries()) {
    if (at(remaining.supply, stock) > 0) listing.ofStock(stock, room);
  }
  patience?.spend(listing.looked * workOfStep);
  return { found: listing.found, complete: !listing.full };
}

/** To take one step in a list of fills, in microseconds. */
const workOfStep = 0.1;

class Listing {
  readonly found: Completion[] = [];
  full = false;
  /** Steps taken. */
  looked = 0;
  private readonly types: readonly number[];
  private readonly counts: number[];
  private stock = 0;
  /** The best worth of a unit of length among the types from each place on. */
  private readonly rates: readonly number[];

  constructor(
    private readonly cover: Cover,
    private readonly remaining: Remaining,
    private readonly values: readonly number[],
    private readonly allowed: number,
    private readonly most: number,
    private readonly fullOnly: boolean,
  ) {
    this.types = remaining.demand.flatMap((count, type) => (count > 0 ? [type] : []));
    this.counts = remaining.demand.map(() => 0);
    const rates: number[] = [0];
    for (const type of this.types.toReversed()) {
      rates.unshift(Math.max(at(rates, 0), at(values, type) / this.size(type)));
    }
    this.rates = rates;
  }

  ofStock(stock: number, room: number): void {
    const first = at(this.types, 0);
    if (this.size(first) > room) return;
    this.stock = stock;
    this.counts[first] = 1;
    this.extend(0, room - this.size(first), at(this.values, first), 1);
    this.counts[first] = 0;
  }

  /** Adds pieces of the type at a place, as many as go in first, then moves on to the next. */
  private extend(place: number, room: number, worth: number, taken: number): void {
    this.looked++;
    const cost = at(this.cover.stocks, this.stock).cost;
    if (this.full || cost - worth - room * at(this.rates, place) > this.allowed) return;
    const type = this.types[place];
    if (type === undefined) {
      if (!this.fullOnly || !(this.hasRoom(room) || this.isExchanged(room))) this.list(cost - worth);
      return;
    }
    const left = at(this.remaining.demand, type) - taken;
    const more = Math.min(left, Math.floor(room / this.size(type)));
    for (let extra = more; extra >= 0; extra--) {
      this.counts[type] = taken + extra;
      this.extend(place + 1, room - extra * this.size(type), worth + extra * at(this.values, type), 0);
    }
    this.counts[type] = taken;
  }

  private hasRoom(room: number): boolean {
    return this.types.some((type) => this.size(type) <= room && this.isLeft(type));
  }

  /**
   * Whether a piece could be exchanged for a longer one that is left: then another fill is as good, since the
   * shorter piece goes wherever the longer one would have been (Martello and Toth's dominance).
   */
  private isExchanged(room: number): boolean {
    let shorter = Number.POSITIVE_INFINITY;
    for (const type of this.types.toReversed()) {
      const size = this.size(type);
      if (this.isLeft(type) && size > shorter && size - shorter <= room) return true;
      // The longest of the shorter pieces asks for the least room.
      if (at(this.counts, type) > 0) shorter = size;
    }
    return false;
  }

  private isLeft(type: number): boolean {
    return at(this.counts, type) < at(this.remaining.demand, type);
  }

  private list(loss: number): void {
    this.found.push({ fill: { stock: this.stock, counts: [...this.counts] }, loss });
    this.full = this.found.length >= this.most;
  }

  private size(type: number): number {
    return at(this.cover.sizes, type);
  }
}
