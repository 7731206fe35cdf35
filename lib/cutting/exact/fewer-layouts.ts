/** Among covers that cost the same, one with fewer different fills: fewer set-ups at the saw. */
import { completions } from "./completions.js";
import { type Cover, costOfFills, type Fill, type Remaining, timesIn, without } from "./cover.js";

/** How many different fills a cover has. */
export function layoutCount(fills: readonly Fill[]): number {
  return new Set(fills.map(({ stock, counts }) => `${stock}:${counts.join()}`)).size;
}

/**
 * Repeats fills as often as they go, the most repeated first, as long as the waste so far leaves room for a
 * cover at the cost of the one in hand. Returns the cover in hand where this finds no better one.
 */
export function fewerLayouts(cover: Cover, all: Remaining, hand: readonly Fill[]): readonly Fill[] {
  if (all.demand.every((count) => count <= 1)) return hand;
  const found = repeatedCover(cover, all, costOfFills(cover, hand));
  return found && layoutCount(found) < layoutCount(hand) ? found : hand;
}

function repeatedCover(cover: Cover, all: Remaining, budget: number): Fill[] | undefined {
  const rate = Math.min(...cover.stocks.map(({ cost, room }) => cost / room));
  const values = cover.sizes.map((size) => size * rate);
  let spare = budget - all.demand.reduce((sum, count, type) => sum + count * (values[type] as number), 0);
  const fills: Fill[] = [];
  let rest = all;
  while (rest.demand.some((count) => count > 0)) {
    const choices = completions(cover, rest, values, spare + 1e-9, 400).found.map((choice) => {
      const times = timesIn(rest, choice.fill);
      return {
        ...choice,
        times: choice.loss > 0 ? Math.min(times, Math.floor((spare + 1e-9) / choice.loss)) : times,
      };
    });
    const [best] = choices.sort((a, b) => b.times - a.times || a.loss - b.loss);
    if (!best || best.times < 1) return undefined;
    for (let copy = 0; copy < best.times; copy++) fills.push(best.fill);
    spare -= best.times * best.loss;
    rest = without(rest, best.fill, best.times);
  }
  return fills;
}
