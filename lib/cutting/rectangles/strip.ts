/** The shortest strip of a given width that holds all pieces. */

import { pick, seededRandom } from "../../algebra/random.js";
import { hair } from "../rounding.js";
import { type FillRules, fillBoards, fillRules, reachOf } from "./guillotine.js";
import { areaOf, type Board, type Item } from "./item.js";
import { sensibleOrders, shuffled } from "./ordering.js";
import { fillSkyline } from "./skyline.js";

/** No strip is shorter: the area of all pieces over its width, or the piece that is longest even lying down. */
export function stripBound(items: readonly Item[], width: number): number {
  const area = items.reduce((sum, item) => sum + areaOf(item), 0);
  const longest = items.map(({ ways }) => Math.min(...ways.map(({ length }) => length)));
  return Math.max(area / width, ...longest);
}

/**
 * Cuts of any shape: fills strips in many orders, keeps what is no worse, until the bound is met or time is up.
 *
 * @param until by the clock, ms
 */
export function shortestFreeStrip(items: readonly Item[], width: number, until: number): number {
  // A skyline grows across the sheet; the strip grows along it. The two are exchanged going in and coming out.
  const lying = items.map(transposed);
  const bound = stripBound(items, width);
  const next = seededRandom(1).uniform;
  const starts = sensibleOrders(lying);
  let order = starts[0] as Item[];
  let best = fillSkyline(order, width, Number.POSITIVE_INFINITY).reach;
  let current = best;
  for (let round = 1; best > bound + hair && performance.now() < until; round++) {
    const tried = starts[round] ?? shuffled(next() < 0.3 ? shuffled(order, next) : order, next);
    const { reach } = fillSkyline(tried, width, Number.POSITIVE_INFINITY, starts[round] ? undefined : next);
    if (reach <= current + (next() < 0.01 ? current * 0.02 : hair)) [order, current] = [tried, reach];
    best = Math.min(best, reach);
  }
  return best;
}

/**
 * Straight cuts only: looks for a filling of an ever shorter strip, until the bound is met or time is up.
 *
 * @param until by the clock, ms
 * @returns how much of the strip is used
 */
export function shortestCutStrip(items: readonly Item[], width: number, until: number): number {
  const bound = stripBound(items, width);
  const starts = sensibleOrders(items).flatMap((order) => fillRules.map((rules) => ({ order, rules })));
  const next = seededRandom(1).uniform;
  let best = items.reduce((sum, { ways }) => sum + Math.max(...ways.map(({ length }) => length)), 0);
  let current = { ...(starts[0] as Attempt), left: Number.POSITIVE_INFINITY };
  for (let round = 0; best + step > bound + hair && performance.now() < until; round++) {
    const tried = starts[round] ?? varied(current, next);
    const { filled, unplaced } = fillBoards(tried.order, tried.rules, anyStage, once(best, width));
    const left = unplaced.reduce((sum, item) => sum + areaOf(item), 0);
    if (left <= current.left || next() < 0.02) current = { ...tried, left };
    const [only] = filled;
    if (unplaced.length > 0 || !only) continue;
    best = Math.min(best, reachOf(only.root) - step);
    current.left = Number.POSITIVE_INFINITY;
  }
  return best + step;
}

interface Attempt {
  readonly order: Item[];
  readonly rules: FillRules;
}

/** A strip must be shorter by this much to count as shorter: a micrometre. */
const step = 1e-6;
const anyStage = Number.POSITIVE_INFINITY;

/** Opens a single strip. */
function once(length: number, width: number): () => Board | undefined {
  let opened = false;
  return () => {
    if (opened) return undefined;
    opened = true;
    return { stock: 0, length, width };
  };
}

function varied({ order, rules }: Attempt, next: () => number): Attempt {
  return {
    order: shuffled(next() < 0.3 ? shuffled(order, next) : order, next),
    rules: next() < 0.1 ? (fillRules[pick(next, fillRules.length)] as FillRules) : rules,
  };
}

function transposed({ name, ways }: Item): Item {
  return { name, ways: ways.map(({ length, width, turned }) => ({ length: width, width: length, turned })) };
}
