/** Depth-first search for a cover with so many different fills, within what it may cost. */
import { completions } from "./completions.js";
import { type Cover, type Fill, type Remaining, timesIn, without } from "./cover.js";

/** What came of a search. */
export interface LayoutsFound {
  /** A cover with few enough different fills. */
  readonly fills?: readonly Fill[];
  /** Whether there is certainly none where none was found. */
  readonly certain: boolean;
}

/** A fill, and how often it is repeated. */
interface Repeated {
  readonly fill: Fill;
  readonly times: number;
  readonly loss: number;
}

/** Fills to list at one step, and steps to go, before certainty is given up. */
const mostFills = 400;
const mostSteps = 4000;

/** Looks for covers with few different fills. */
export class LayoutSearch {
  private steps = 0;
  private certain = true;
  /** Worth of a piece at the best rate of any stock; what a fill loses against it is waste. */
  private readonly values: readonly number[];
  private readonly longest: number;

  constructor(private readonly cover: Cover) {
    const rate = Math.min(...cover.stocks.map(({ cost, room }) => cost / room));
    this.values = cover.sizes.map((size) => size * rate);
    this.longest = Math.max(...cover.stocks.map(({ room }) => room));
  }

  /** A cover of no more than so many different fills and no more than a cost. */
  within(all: Remaining, layouts: number, budget: number): LayoutsFound {
    const worth = all.demand.reduce((sum, count, type) => sum + count * (this.values[type] as number), 0);
    const fills = this.search(all, layouts, budget - worth + 1e-9);
    return fills ? { fills, certain: true } : { certain: this.certain };
  }

  /** No fewer fills hold one piece of each type. */
  leastFills({ demand }: Remaining): number {
    const sizes = this.cover.sizes.filter((_, type) => (demand[type] as number) > 0);
    const byLength = Math.ceil(sizes.reduce((sum, size) => sum + size, 0) / this.longest - 1e-9);
    return Math.max(byLength, sizes.filter((size) => size > this.longest / 2).length);
  }

  private search(rest: Remaining, layouts: number, spare: number): Fill[] | undefined {
    if (rest.demand.every((count) => count === 0)) return [];
    if (this.leastFills(rest) > layouts) return undefined;
    if (++this.steps > mostSteps) this.certain = false;
    if (!this.certain) return undefined;
    for (const { fill, times, loss } of this.repeated(rest, layouts, spare)) {
      const more = this.search(without(rest, fill, times), layouts - 1, spare - times * loss);
      if (more) return [...Array.from({ length: times }, () => fill), ...more];
    }
    return undefined;
  }

  /** Every fill with the largest piece left, as often as it may be repeated, the most repeated first. */
  private repeated(rest: Remaining, layouts: number, spare: number): Repeated[] {
    const { found, complete } = completions(this.cover, rest, this.values, spare, mostFills, false);
    if (!complete) this.certain = false;
    return found
      .flatMap(({ fill, loss }) => {
        const most = timesIn(rest, fill);
        const allowed = loss > 0 ? Math.min(most, Math.floor(spare / loss)) : most;
        const least = layouts === 1 ? most : 1;
        return Array.from({ length: Math.max(0, allowed - least + 1) }, (_, i) => ({
          fill,
          times: allowed - i,
          loss,
        }));
      })
      .sort((a, b) => b.times - a.times || a.loss - b.loss);
  }
}
