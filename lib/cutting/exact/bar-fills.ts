/** Ways to fill bars: lengths added up. */
import { type Completions, completions } from "./completions.js";
import type { Cover, CoverStock, Fill, Remaining } from "./cover.js";
import type { BestFill, Fills, Thresholds } from "./fills.js";
import { mostValuable, worthOf } from "./knapsack.js";

/** Fills of bars of any lengths. */
export class BarFills implements Fills {
  readonly stocks: readonly CoverStock[];
  readonly alwaysThorough = true;

  constructor(private readonly cover: Cover) {
    this.stocks = cover.stocks;
  }

  mostValuable(remaining: Remaining, values: readonly number[], thresholds: Thresholds): BestFill[] {
    return mostValuable(this.cover, remaining, values, thresholds).map((fill) =>
      fill ? { fills: [fill], most: worthOf(fill.counts, values) } : { fills: [], most: 0 },
    );
  }

  completions(remaining: Remaining, values: readonly number[], allowed: number, most: number): Completions {
    return completions(this.cover, remaining, values, allowed, most);
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
    const stock = this.stockFor(supply, sizes[demand.findIndex((count) => count > 0)] as number);
    if (stock < 0) return undefined;
    let room = stocks[stock]?.room ?? 0;
    const counts = demand.map((count, type) => {
      const taken = Math.min(count, Math.floor(room / (sizes[type] as number)));
      room -= taken * (sizes[type] as number);
      return taken;
    });
    return { stock, counts };
  }

  /** The stock with the lowest cost for its length among those with room for a piece; -1 where there is none. */
  private stockFor(supply: readonly number[], size: number): number {
    let best = -1;
    for (const [stock, { room, cost }] of this.cover.stocks.entries()) {
      if ((supply[stock] as number) <= 0 || size > room) continue;
      const rival = this.cover.stocks[best];
      if (!rival || cost / room < rival.cost / rival.room) best = stock;
    }
    return best;
  }
}
