/** The shortest length of a roll or a wide strip that holds all pieces. */
import { Length, Time } from "../quantity/index.js";
import { turnsAllowed } from "./grain.js";
import type { Item } from "./rectangles/item.js";
import { shortestCutStrip, shortestFreeStrip, stripBound } from "./rectangles/strip.js";
import { badCounts, badSizes, belowZero, refuse, repeatedNames } from "./request.js";
import { fits } from "./rounding.js";
import type { SheetPiece } from "./sheet-plan.js";

/** Pieces to be cut from stock sold by the length. */
export interface StripJob {
  /** What is to be cut. */
  readonly pieces: readonly SheetPiece[];
  /** Of the roll or strip. */
  readonly width: Length;
  /** Width of the cut. Default 0. */
  readonly kerf?: Length;
  /** Straight cuts from edge to edge, or cuts of any shape. Default "straight". */
  readonly cuts?: "straight" | "any shape";
  /** After which the best plan so far is taken. Default 10 s. */
  readonly timeLimit?: Time;
}

/** How much to cut off the roll. */
export interface StripPlan {
  /** Of the strip used. */
  readonly length: Length;
  /** No plan needs less. */
  readonly bound: Length;
  /** Whether the two meet. */
  readonly proven: boolean;
}

const usualLimit = Time.of(10, "s");

/**
 * The shortest strip found that holds all pieces, beside the length no plan can beat: the area of all pieces
 * and kerfs over the width, or the piece that is longest even lying down.
 *
 * @source Burke, Kendall, Whitwell 2004 for filling the lowest place first
 * @throws RangeError for a piece wider than the strip, sizes or a kerf out of range, two pieces of one name
 * @example shortestStrip({ pieces: [{ name: "lining", length: mm(600), width: mm(400), count: 6, grain: "free" }], width: mm(1200) }).length // 1.2
 */
export function shortestStrip(job: StripJob): StripPlan {
  const { kerf = Length.si(0), pieces, width } = job;
  refuseStripJob(job);
  const items = pieces.flatMap((piece) => itemsOf(piece, width, kerf));
  if (items.length === 0) return { length: Length.si(0), bound: Length.si(0), proven: true };
  const until = performance.now() + (job.timeLimit ?? usualLimit) * 1000;
  const filled =
    job.cuts === "any shape"
      ? shortestFreeStrip(items, width + kerf, until)
      : shortestCutStrip(items, width + kerf, until);
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
