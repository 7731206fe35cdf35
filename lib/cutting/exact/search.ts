/** Depth-first search for a whole cover within a budget, each step bounded by its relaxation. */
import { type Completion, completions } from "./completions.js";
import { type Cover, type Fill, type Remaining, timesIn, without } from "./cover.js";
import type { Relaxation, Relaxed } from "./relaxation.js";
import { roundedCover } from "./rounding-up.js";

/** What a search may do before it gives up. */
export interface Effort {
  /** Relaxations to solve. */
  readonly steps: number;
  /** Time by the clock, ms since the epoch of `performance.now`, after which no step is begun. */
  readonly until: number;
}

/** Looks for covers within a budget. */
export class CoverSearch {
  private steps = 0;
  private exhaustive = true;
  private readonly hopeless = new Set<string>();

  constructor(
    private readonly cover: Cover,
    private readonly relaxation: Relaxation,
    private readonly effort: Effort,
  ) {}

  /** A cover that costs no more than the budget; none, and whether that is certain. */
  within(
    remaining: Remaining,
    budget: number,
  ): { readonly fills?: readonly Fill[]; readonly certain: boolean } {
    this.exhaustive = true;
    this.hopeless.clear();
    const fills = this.descend(remaining, budget);
    return fills ? { fills, certain: true } : { certain: this.exhaustive };
  }

  private descend(remaining: Remaining, budget: number): Fill[] | undefined {
    if (remaining.demand.every((count) => count === 0)) return [];
    const key = `${remaining.demand.join()}|${remaining.supply.join()}|${budget}`;
    if (this.hopeless.has(key)) return undefined;
    if (++this.steps > this.effort.steps || performance.now() > this.effort.until) {
      this.exhaustive = false;
      return undefined;
    }
    const relaxed = this.relaxation.solve(remaining);
    const spare = budget - relaxed.bound;
    // The bound is exact to a part in 2^24 of a cost; what is closer than that counts as reached.
    const found =
      spare < -1e-6
        ? undefined
        : (roundedCover(this.cover, remaining, relaxed, budget) ??
          this.branch(remaining, budget, relaxed, spare + 1e-6));
    if (!found) this.hopeless.add(key);
    return found;
  }

  private branch(remaining: Remaining, budget: number, relaxed: Relaxed, spare: number): Fill[] | undefined {
    const whole = relaxed.used.flatMap(({ fill, amount }) => this.repeated(remaining, fill, amount));
    for (const { fill, times } of whole.slice(0, 1)) {
      const found = this.follow(remaining, budget, fill, times);
      if (found) return found;
    }
    const { found, complete } = completions(this.cover, remaining, relaxed.values, spare, 400);
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
    const cost = times * (this.cover.stocks[fill.stock]?.cost as number);
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
