/** Plans which sheets to buy and how to saw them. */
import { Length } from "../quantity/index.js";
import {
  byName,
  cheapestFirst,
  costOf,
  fewestToCover,
  leastCost,
  leastOf,
  type PurchaseBound,
  purchases,
} from "./purchase.js";
import { showSizes } from "./request.js";
import { areaWithKerf, totalWithKerf, usableSize } from "./sheet-bound.js";
import { cutSheet } from "./sheet-cuts.js";
import { type FilledSheet, packSheets, type SheetLosses } from "./sheet-packing.js";
import type { CutSheet, SheetArea, SheetJob, SheetPlan, StockSheet } from "./sheet-plan.js";
import { refuseSheetJob } from "./sheet-request.js";
import { type OrientedPiece, type SheetStrategy, strategies } from "./sheet-strategy.js";

/**
 * What to buy and how to saw it with straight cuts from edge to edge: shelves filled first-fit, tallest
 * piece first, tried with rips first and with crosscuts first, with free pieces lying and standing, and
 * with each stock preferred; the cheapest plan, and of equals the one with the largest single offcut.
 *
 * Grain runs with the sheet's length and is never turned for a piece that asks for it. Beside the plan
 * stands the area no plan can beat; how far apart the two are is the most a better plan could save.
 *
 * @source Coffman, Garey, Johnson, Tarjan 1980 for shelves of decreasing height
 * @throws RangeError naming pieces and sizes: a piece that lies on no sheet, a negative kerf, two things of
 * one name, stock in two currencies, or too few sheets to be had
 * @example planSheets({ pieces: [{ name: "side", length: mm(600), width: mm(400), count: 2, grain: "along" }], stock: [{ name: "ply", length: mm(2440), width: mm(1220), price: money(80, "USD") }], kerf: mm(3) }).sheets.length // 1
 */
export function planSheets(request: SheetJob): SheetPlan {
  refuseSheetJob(request);
  const job = { ...request, pieces: byName(request.pieces) };
  const losses = { kerf: job.kerf, edgeTrim: job.edgeTrim ?? 0 };
  const stock = cheapestFirst(job.stock);
  const attempts = strategies.flatMap((strategy) =>
    stock.map((preferred) => ({ strategy, ...packSheets(job, stock, preferred, strategy, losses) })),
  );
  const plans = attempts
    .filter(({ unplaced }) => unplaced === undefined)
    .map(({ strategy, sheets }) => planOf(job, stock, sheets, strategy, losses));
  const best = leastOf(plans, ({ cost, sheets }) => [cost.amount, sheets.length, -largestOffcut(sheets)]);
  if (!best) throw new RangeError(`sheets: ${soldOut(attempts.flatMap(({ unplaced }) => unplaced ?? []))}`);
  return best;
}

function soldOut(unplaced: readonly OrientedPiece[]): string {
  const { name, width, height } = unplaced[0] as OrientedPiece;
  return `not enough stock: no sheet is left for ${name} (${showSizes([Length.si(width), Length.si(height)])})`;
}

function planOf(
  job: SheetJob,
  stock: readonly StockSheet[],
  filled: readonly FilledSheet[],
  strategy: SheetStrategy,
  losses: SheetLosses,
): SheetPlan {
  const lines = purchases(
    stock,
    filled.map(({ source }) => source),
  );
  return {
    sheets: filled.map((sheet) => cutSheet(sheet, strategy, losses)),
    purchases: lines,
    cost: costOf(lines, stock[0]?.price.currency ?? ""),
    bound: areaBound(job, losses),
    method: methodOf(strategy, stock.length),
  };
}

function methodOf({ shelves, longSide }: SheetStrategy, stocks: number): string {
  const first = shelves === "along" ? "rips" : "crosscuts";
  const tried = strategies.length * stocks;
  return `first-fit decreasing height, ${first} first, long side of free pieces ${longSide}; the cheapest of ${tried} plans`;
}

function largestOffcut(sheets: readonly CutSheet[]): number {
  const areas = sheets.flatMap(({ offcuts }) =>
    offcuts.map(({ length, width }: SheetArea) => length * width),
  );
  return Math.max(0, ...areas);
}

function areaBound({ pieces, stock }: SheetJob, { kerf, edgeTrim }: SheetLosses): PurchaseBound {
  const offers = stock.map((sheet) => ({
    size: areaWithKerf(usableSize(sheet, edgeTrim), kerf),
    price: sheet.price,
  }));
  const need = totalWithKerf(pieces, kerf);
  const count = fewestToCover(need, Math.max(...offers.map(({ size }) => size)));
  return {
    count,
    cost: leastCost(need, offers, count),
    because: "the area of all pieces and kerfs against the largest sheet",
  };
}
