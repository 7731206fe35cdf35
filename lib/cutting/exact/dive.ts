/** Looks for a cheaper cover by following what relaxations use most: quick, and without promise. */
import { type Fill, type Remaining, timesIn, without } from "./cover.js";
import type { Fills } from "./fills.js";
import type { Relaxation, Relaxed } from "./relaxation.js";
import { roundedCover } from "./rounding-up.js";

/** What a dive may do before it gives up. */
export interface DiveEffort {
  /** Relaxations to solve. */
  readonly steps: number;
  /** By the clock, ms. */
  readonly until: number;
}

/** Fills to try one after the other where the relaxation uses none in full. */
const choices = 2;

/** Dives for covers within a budget. */
export class Dive {
  private steps = 0;

  constructor(
    private readonly source: Fills,
    private readonly relaxation: Relaxation,
    private readonly effort: DiveEffort,
  ) {}

  /** A cover that costs no more than the budget, if one comes to hand. */
  within(remaining: Remaining, budget: number): Fill[] | undefined {
    if (remaining.demand.every((count) => count === 0)) return [];
    if (this.steps >= this.effort.steps || performance.now() > this.effort.until) return undefined;
    this.steps++;
    const relaxed = this.relaxation.guess(remaining);
    if (relaxed.cost > budget + 1e-6) return undefined;
    return roundedCover(this.source, remaining, relaxed, budget) ?? this.follow(remaining, budget, relaxed);
  }

  private follow(remaining: Remaining, budget: number, { used }: Relaxed): Fill[] | undefined {
    const whole = used.filter(({ amount }) => amount > 1 - 1e-6).slice(0, 1);
    for (const { fill, amount } of whole.length > 0 ? whole : used.slice(0, choices)) {
      const times = Math.min(Math.max(1, Math.floor(amount + 1e-6)), timesIn(remaining, fill));
      if (times < 1) continue;
      const left = budget - times * (this.source.stocks[fill.stock]?.cost as number);
      const rest = left < 0 ? undefined : this.within(without(remaining, fill, times), left);
      if (rest) return [...Array.from({ length: times }, () => fill), ...rest];
    }
    return undefined;
  }
}
