/** Among covers that cost the same, one with fewer different fills: fewer set-ups at the saw. */
import { at } from "../../algebra/lists.js";
import type { Patience } from "../patience.js";
import { BarFills, completions } from "./bar-fills.js";
import { type Cover, costOfFills, type Fill, type Remaining, timesIn, without } from "./cover.js";
import { roundedCover } from "./dive.js";
import { proveCover } from "./prove.js";

/** How many different fills a cover has. */
export function layoutCount(fills: readonly Fill[]): number {
  return new Set(fills.map(({ stock, counts }) => `${stock}:${counts.join()}`)).size;
}

/** A cover with few different fills, and what is known of fewer. */
export interface FewLayouts {
  /** As cheap as the cover in hand. */ readonly fills: readonly Fill[];
  /** No cover as cheap has fewer different fills. */ readonly atLeast: number;
}

/**
 * Among covers no dearer than one in hand, one with few different fills. One piece of each type must lie in some
 * fill, which gives a bound; from there on a search tries number by number, as far as it goes.
 *
 * @param patience for the bound
 */
export function fewestLayouts(
  cover: Cover,
  all: Remaining,
  hand: readonly Fill[],
  patience: Patience,
): FewLayouts {
  const budget = costOfFills(cover, hand);
  let fills = fewerLayouts(cover, all, hand);
  const search = new LayoutSearch(cover);
  // Which leftover is used up matters more than a set-up.
  const settled = hand.some(({ stock }) => cover.stocks[stock]?.cost === 0);
  if (settled || cover.sizes.length > mostTypes)
    return { fills, atLeast: Math.min(layoutCount(fills), search.leastFills(all)) };
  let atLeast = Math.min(layoutCount(fills), fewestForOneEach(cover, all, patience));
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
function fewestForOneEach({ sizes, stocks }: Cover, { demand }: Remaining, patience: Patience): number {
  const once = {
    demand: demand.map((count) => Math.min(1, count)),
    supply: stocks.map(() => Number.POSITIVE_INFINITY),
  };
  const alike = stocks.map(({ room }) => ({ room, cost: 1, supply: Number.POSITIVE_INFINITY }));
  const source = new BarFills({ sizes, stocks: alike }, patience);
  const hand = roundedCover(source, once, { used: [] }, Number.POSITIVE_INFINITY) ?? [];
  return proveCover(source, once, hand, { steps, patience }).bound;
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
  let spare = budget - all.demand.reduce((sum, count, type) => sum + count * at(values, type), 0);
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

/** What came of a search. */
interface LayoutsFound {
  /** A cover with few enough different fills. */ readonly fills?: readonly Fill[];
  /** Whether there is certainly none where none was found. */ readonly certain: boolean;
}

/** A fill, and how often it is repeated. */
interface Repeated {
  /** The fill. */ readonly fill: Fill;
  /** How often it is used. */ readonly times: number;
  /** How much of its bar's cost its pieces are not worth. */ readonly loss: number;
}

/** Fills to list at one step, and steps to go, before certainty is given up. */
const mostFills = 400;
const mostSteps = 4000;

/** Looks for covers with few different fills. */
class LayoutSearch {
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
    const worth = all.demand.reduce((sum, count, type) => sum + count * at(this.values, type), 0);
    const fills = this.search(all, layouts, budget - worth + 1e-9);
    return fills ? { fills, certain: true } : { certain: this.certain };
  }

  /** No fewer fills hold one piece of each type. */
  leastFills({ demand }: Remaining): number {
    const sizes = this.cover.sizes.filter((_, type) => at(demand, type) > 0);
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
