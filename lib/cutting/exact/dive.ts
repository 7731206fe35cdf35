/** Covers that come quickly to hand, without promise: a relaxed cover rounded up, and dives that follow what relaxations use most. */
import { at } from "../../algebra/lists.js";
import { type Effort, type Fill, type Fills, type Remaining, timesIn, without } from "./cover.js";
import type { Relaxation, Relaxed } from "./relaxation.js";

/** Fills to try one after the other where the relaxation uses none in full. */
const choices = 2;

/** Dives for covers within a budget. */
export class Dive {
  private steps = 0;

  constructor(
    private readonly source: Fills,
    private readonly relaxation: Relaxation,
    private readonly effort: Effort,
  ) {}

  /** A cover that costs no more than the budget, if one comes to hand. */
  within(remaining: Remaining, budget: number): Fill[] | undefined {
    if (remaining.demand.every((count) => count === 0)) return [];
    if (this.steps >= this.effort.steps || this.effort.patience.isOver) return undefined;
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
      const left = budget - times * at(this.source.stocks, fill.stock).cost;
      const rest = left < 0 ? undefined : this.within(without(remaining, fill, times), left);
      if (rest) return [...Array.from({ length: times }, () => fill), ...rest];
    }
    return undefined;
  }
}

/**
 * Takes the fills the relaxation uses, most used first and rounded to whole ones, then puts what is left
 * into stock of a good rate, the largest piece first. Undefined where that costs more than the budget.
 */
export function roundedCover(
  source: Fills,
  all: Remaining,
  { used }: Pick<Relaxed, "used">,
  budget: number,
): Fill[] | undefined {
  const fills: Fill[] = [];
  let rest = all;
  let spent = 0;
  for (const { fill, amount } of used) {
    const times = Math.min(Math.round(amount), timesIn(rest, fill));
    for (let copy = 0; copy < times; copy++) fills.push(fill);
    if (times > 0) rest = without(rest, fill, times);
    spent += times * at(source.stocks, fill.stock).cost;
  }
  const tail = spent > budget ? undefined : greedyCover(source, rest, budget - spent);
  return tail && [...fills, ...tail];
}

function greedyCover(source: Fills, all: Remaining, budget: number): Fill[] | undefined {
  const fills: Fill[] = [];
  let rest = all;
  let left = budget;
  while (rest.demand.some((count) => count > 0)) {
    const fill = source.fullest(rest);
    left -= fill ? at(source.stocks, fill.stock).cost : Number.POSITIVE_INFINITY;
    if (!fill || left < 0) return undefined;
    fills.push(fill);
    rest = without(rest, fill, 1);
  }
  return fills;
}
