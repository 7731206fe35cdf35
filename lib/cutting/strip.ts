/** The shortest length of a roll or a wide strip that holds all pieces. */

import { at } from "../algebra/lists.js";
import { pick, seededRandom } from "../algebra/random.js";
import { Length, Time } from "../quantity/index.js";
import { fits, hair } from "./numbers.js";
import { type Patience, patienceFor, type SearchTime } from "./patience.js";
import {
  type FillRules,
  fillBoards,
  fillRules,
  once,
  reachOf,
  sensibleOrders,
  shuffled,
} from "./rectangles/guillotine.js";
import { areaOf, type Item } from "./rectangles/item.js";
import { fillSkyline } from "./rectangles/skyline.js";
import { badCounts, badSizes, belowZero, refuse, repeatedNames, tooMany } from "./request.js";
import { turnsAllowed } from "./sheet-items.js";
import type { SheetPiece } from "./sheet-plan.js";

/** Pieces to be cut from stock sold by the length. */
export interface StripJob extends SearchTime {
  /** What is to be cut. */ readonly pieces: readonly SheetPiece[];
  /** Of the roll or strip. */ readonly width: Length;
  /** Width of the cut. Default 0. */ readonly kerf?: Length;
  /** Straight cuts from edge to edge, or cuts of any shape. Default "straight". */
  readonly cuts?: "straight" | "any shape";
}

/** How much to cut off the roll. */
export interface StripPlan {
  /** Of the strip used. */ readonly length: Length;
  /** No plan needs less. */ readonly bound: Length;
  /** Whether the two meet. */ readonly proven: boolean;
}

const usualEffort = Time.of(10, "s");
/** To lay one piece, in microseconds; a round takes as much as two pieces beside those it lays. */
const workOfPiece = 1.6;

/**
 * The shortest strip found that holds all pieces, beside the length no plan can beat: the area of all pieces
 * and kerfs over the width, or the piece that is longest even lying down.
 *
 * @source Burke, Kendall, Whitwell 2004 for filling the lowest place first
 * @throws Refusal for a piece wider than the strip, sizes or a kerf out of range, two pieces of one name
 * @example shortestStrip({ pieces: [{ name: "lining", length: mm(600), width: mm(400), count: 6, grain: "free" }], width: mm(1200) }).length // 1.2
 */
export function shortestStrip(job: StripJob): StripPlan {
  const { kerf = Length.si(0), pieces, width } = job;
  refuseStripJob(job);
  const items = pieces.flatMap((piece) => itemsOf(piece, width, kerf));
  if (items.length === 0) return { length: Length.si(0), bound: Length.si(0), proven: true };
  const patience = patienceFor(job, usualEffort);
  const filled =
    job.cuts === "any shape"
      ? shortestFreeStrip(items, width + kerf, patience)
      : shortestCutStrip(items, width + kerf, patience);
  const bound = stripBound(items, width + kerf);
  return {
    length: Length.si(filled - kerf),
    bound: Length.si(bound - kerf),
    proven: fits(filled, bound),
  };
}

function refuseStripJob({ pieces, width, kerf = Length.si(0) }: StripJob): void {
  refuse("strip", [
    ...repeatedNames("pieces", pieces),
    ...badCounts(pieces),
    ...tooMany(pieces),
    ...badSizes([
      ...pieces.map(({ name, ...size }) => ({ name, sizes: [size.length, size.width] })),
      { name: "strip", sizes: [width] },
    ]),
    ...belowZero({ kerf }),
    ...pieces
      .filter((piece) => itemsOf(piece, width, kerf).some(({ ways }) => ways.length === 0))
      .map(({ name }) => `${name} is wider than the strip, ${Length.show(width)}`),
  ]);
}

function itemsOf({ name, length, width, count, grain }: SheetPiece, across: Length, kerf: number): Item[] {
  const ways = turnsAllowed(grain)
    .map((turned) => ({
      length: (turned ? width : length) + kerf,
      width: (turned ? length : width) + kerf,
      turned,
    }))
    .filter((way) => fits(way.width, across + kerf));
  return Array.from({ length: count }, () => ({ name, ways }));
}

/** No strip is shorter: the area of all pieces over its width, or the piece that is longest even lying down. */
function stripBound(items: readonly Item[], width: number): number {
  const area = items.reduce((sum, item) => sum + areaOf(item), 0);
  const longest = items.map(({ ways }) => Math.min(...ways.map(({ length }) => length)));
  return Math.max(area / width, ...longest);
}

/** Cuts of any shape: fills strips in many orders, keeps what is no worse, until the bound is met or the patience is over. */
function shortestFreeStrip(items: readonly Item[], width: number, patience: Patience): number {
  // A skyline grows across the sheet; the strip grows along it. The two are exchanged going in and coming out.
  const lying = items.map(transposed);
  const bound = stripBound(items, width);
  const next = seededRandom(1).uniform;
  const starts = sensibleOrders(lying);
  let order = at(starts, 0);
  let best = fillSkyline(order, width, Number.POSITIVE_INFINITY).reach;
  let current = best;
  for (let round = 1; best > bound + hair && !patience.isOver; round++) {
    patience.spend((items.length + 2) * workOfPiece);
    const tried = starts[round] ?? shuffled(next() < 0.3 ? shuffled(order, next) : order, next);
    const { reach } = fillSkyline(tried, width, Number.POSITIVE_INFINITY, starts[round] ? undefined : next);
    if (reach <= current + (next() < 0.01 ? current * 0.02 : hair)) [order, current] = [tried, reach];
    best = Math.min(best, reach);
  }
  return best;
}

/**
 * Straight cuts only: looks for a filling of an ever shorter strip, until the bound is met or the patience is over.
 *
 * @returns how much of the strip is used
 */
function shortestCutStrip(items: readonly Item[], width: number, patience: Patience): number {
  const bound = stripBound(items, width);
  const starts = sensibleOrders(items).flatMap((order) => fillRules.map((rules) => ({ order, rules })));
  const next = seededRandom(1).uniform;
  let best = items.reduce((sum, { ways }) => sum + Math.max(...ways.map(({ length }) => length)), 0);
  let current = { ...at(starts, 0), left: Number.POSITIVE_INFINITY };
  for (let round = 0; best + step > bound + hair && !patience.isOver; round++) {
    patience.spend((items.length + 2) * workOfPiece);
    const tried = starts[round] ?? varied(current, next);
    const { filled, unplaced } = fillBoards(
      tried.order,
      tried.rules,
      anyStage,
      once({ stock: 0, length: best, width }),
    );
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
  /** Pieces in the order they are laid. */ readonly order: Item[];
  /** How each looks for its place. */ readonly rules: FillRules;
}

/** A strip must be shorter by this much to count as shorter: a micrometre. */
const step = 1e-6;
const anyStage = Number.POSITIVE_INFINITY;

function varied({ order, rules }: Attempt, next: () => number): Attempt {
  return {
    order: shuffled(next() < 0.3 ? shuffled(order, next) : order, next),
    rules: next() < 0.1 ? at(fillRules, pick(next, fillRules.length)) : rules,
  };
}

function transposed({ name, ways }: Item): Item {
  return { name, ways: ways.map(({ length, width, turned }) => ({ length: width, width: length, turned })) };
}
