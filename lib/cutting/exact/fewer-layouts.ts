/** Among covers that cost the same, one with fewer different fills: fewer set-ups at the saw. */
import { BarFills } from "./bar-fills.js";
import { completions } from "./completions.js";
import { type Cover, costOfFills, type Fill, type Remaining, timesIn, without } from "./cover.js";
import { LayoutSearch } from "./layout-search.js";
import { proveCover } from "./prove.js";
import { roundedCover } from "./rounding-up.js";

/** How many different fills a cover has. */
export function layoutCount(fills: readonly Fill[]): number {
  return new Set(fills.map(({ stock, counts }) => `${stock}:${counts.join()}`)).size;
}

/** A cover with few different fills, and what is known of fewer. */
export interface FewLayouts {
  /** As cheap as the cover in hand. */
  readonly fills: readonly Fill[];
  /** No cover as cheap has fewer different fills. */
  readonly atLeast: number;
}

/**
 * Among covers no dearer than one in hand, one with few different fills. One piece of each type must lie in some
 * fill, which gives a bound; from there on a search tries number by number, as far as it goes.
 *
 * @param until by the clock, ms
 */
export function fewestLayouts(
  cover: Cover,
  all: Remaining,
  hand: readonly Fill[],
  until: number,
): FewLayouts {
  const budget = costOfFills(cover, hand);
  let fills = fewerLayouts(cover, all, hand);
  const search = new LayoutSearch(cover);
  // Which leftover is used up matters more than a set-up.
  const settled = hand.some(({ stock }) => cover.stocks[stock]?.cost === 0);
  if (settled || cover.sizes.length > mostTypes)
    return { fills, atLeast: Math.min(layoutCount(fills), search.leastFills(all)) };
  let atLeast = Math.min(layoutCount(fills), fewestForOneEach(cover, all, until));
  for (; atLeast < layoutCount(fills); atLeast++) {
    const found = search.within(all, atLeast, budget);
    if (found.fills) return { fills: found.fills, atLeast };
    if (!found.certain) break;
  }
  while (atLeast < layoutCount(fills) - 1) {
    const found = new LayoutSearch(cover).within(all, layoutCount(fills) - 1, budget).fills;
    if (!found) break;
    fills = found;
  }
  return { fills, atLeast };
}

/** With more types of pieces than any workshop has, a simple bound must do. */
const mostTypes = 24;
/** Relaxations to solve for the bound. */
const steps = 60;

/** The fewest fills that hold one piece of each type. */
function fewestForOneEach({ sizes, stocks }: Cover, { demand }: Remaining, until: number): number {
  const once = {
    demand: demand.map((count) => Math.min(1, count)),
    supply: stocks.map(() => Number.POSITIVE_INFINITY),
  };
  const source = new BarFills({
    sizes,
    stocks: stocks.map(({ room }) => ({ room, cost: 1, supply: Number.POSITIVE_INFINITY })),
  });
  const hand = roundedCover(source, once, { used: [] }, Number.POSITIVE_INFINITY) ?? [];
  return proveCover(source, once, hand, { steps, until }).bound;
}

/**
 * Repeats fills as often as they go, the most repeated first, as long as the waste so far leaves room for a
 * cover at the cost of the one in hand. Returns the cover in hand where this finds no better one.
 */
function fewerLayouts(cover: Cover, all: Remaining, hand: readonly Fill[]): readonly Fill[] {
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
