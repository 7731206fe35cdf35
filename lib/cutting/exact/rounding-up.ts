/** Turns a relaxed cover into a whole one, quickly and without promise. */
import { type Fill, type Remaining, timesIn, without } from "./cover.js";
import type { Fills } from "./fills.js";
import type { Relaxed } from "./relaxation.js";

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
    spent += times * (source.stocks[fill.stock]?.cost as number);
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
    left -= fill ? (source.stocks[fill.stock]?.cost ?? 0) : Number.POSITIVE_INFINITY;
    if (!fill || left < 0) return undefined;
    fills.push(fill);
    rest = without(rest, fill, 1);
  }
  return fills;
}
