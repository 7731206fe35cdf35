/** Turns a relaxed cover into a whole one, quickly and without promise. */
import { type Cover, type Fill, type Remaining, timesIn, without } from "./cover.js";
import type { Relaxed } from "./relaxation.js";

/**
 * Takes the fills the relaxation uses, most used first and rounded to whole bars, then puts what is left
 * into bars of the best rate, the largest piece first. Undefined where that costs more than the budget.
 */
export function roundedCover(
  cover: Cover,
  all: Remaining,
  { used }: Relaxed,
  budget: number,
): Fill[] | undefined {
  const fills: Fill[] = [];
  let rest = all;
  let spent = 0;
  for (const { fill, amount } of used) {
    const times = Math.min(Math.round(amount), timesIn(rest, fill));
    for (let copy = 0; copy < times; copy++) fills.push(fill);
    if (times > 0) rest = without(rest, fill, times);
    spent += times * (cover.stocks[fill.stock]?.cost as number);
  }
  const tail = spent > budget ? undefined : greedyCover(cover, rest, budget - spent);
  return tail && [...fills, ...tail];
}

function greedyCover(cover: Cover, all: Remaining, budget: number): Fill[] | undefined {
  const fills: Fill[] = [];
  let rest = all;
  let left = budget;
  for (let first = firstOf(rest); first >= 0; first = firstOf(rest)) {
    const stock = stockFor(cover, rest, cover.sizes[first] as number);
    left -= cover.stocks[stock]?.cost ?? Number.POSITIVE_INFINITY;
    if (left < 0) return undefined;
    const fill = fullest(cover, rest, stock);
    fills.push(fill);
    rest = without(rest, fill, 1);
  }
  return fills;
}

function firstOf({ demand }: Remaining): number {
  return demand.findIndex((count) => count > 0);
}

/** The stock with the lowest cost for its length among those with room for a piece; -1 where there is none. */
function stockFor({ stocks }: Cover, { supply }: Remaining, size: number): number {
  let best = -1;
  for (const [stock, { room, cost }] of stocks.entries()) {
    if ((supply[stock] as number) <= 0 || size > room) continue;
    const rival = stocks[best];
    if (!rival || cost / room < rival.cost / rival.room) best = stock;
  }
  return best;
}

/** The largest pieces left, one after the other wherever there is room. */
function fullest({ sizes, stocks }: Cover, { demand }: Remaining, stock: number): Fill {
  let room = stocks[stock]?.room ?? 0;
  const counts = demand.map((count, type) => {
    const taken = Math.min(count, Math.floor(room / (sizes[type] as number)));
    room -= taken * (sizes[type] as number);
    return taken;
  });
  return { stock, counts };
}
