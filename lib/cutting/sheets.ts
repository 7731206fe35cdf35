/** Plans which sheets to buy and how to saw them. */
import { money, Time } from "../quantity/index.js";
import { leastTotal } from "./price-unit.js";
import {
  byName,
  cheapestFirst,
  costOf,
  fewestToCover,
  leastCost,
  type PurchaseBound,
  proofOf,
  purchases,
} from "./purchase.js";
import { fewestSheets } from "./rectangles/dual-feasible.js";
import { type BoardStock, type LeastBoards, leastBoards, type Worth } from "./rectangles/least-boards.js";
import { showSizes } from "./request.js";
import { areaWithKerf, totalWithKerf, usableSize } from "./sheet-bound.js";
import { cutSheet } from "./sheet-cuts.js";
import { boardsOf, itemsOf, type SheetLosses, unitPieces } from "./sheet-items.js";
import type { SheetCutting, SheetJob, SheetPlan, SheetProgress, StockSheet } from "./sheet-plan.js";
import { refuseSheetJob } from "./sheet-request.js";

/** Fillings to try before a plan is taken as it is unless a time limit is set, and after the bound is met for the sake of a larger offcut. */
const rounds = 4000;
const extra = 400;
const usualLimit = Time.of(5, "s");

/** Changes of direction of the saw before pieces are trimmed. */
const stagesOf: Readonly<Record<SheetCutting, number | "any shape">> = {
  straight: Number.POSITIVE_INFINITY,
  "two stages": 2,
  "three stages": 3,
  "any shape": "any shape",
};

/**
 * What to buy and how to saw it: sheets filled by straight cuts from edge to edge, in many orders and by
 * several rules, until the cost meets what no plan can beat, or the effort is spent. The cheapest plan is
 * taken, then the one with fewer sheets, then the one with the largest single offcut.
 *
 * Grain runs with the sheet's length and is never turned for a piece that asks for it. Beside the plan stands
 * what no plan can beat, by area and by dual feasible functions; `proof` says whether they meet.
 *
 * @param onBetter told of every better plan while the search runs
 * @source Fekete and Schepers 2004 for the bound
 * @throws RangeError naming pieces and sizes: a piece that lies on no sheet, a negative kerf, two things of
 * one name, stock in two currencies, or too few sheets to be had
 * @example planSheets({ pieces: [{ name: "side", length: mm(600), width: mm(400), count: 2, grain: "along" }], stock: [{ name: "ply", length: mm(2440), width: mm(1220), price: money(80, "USD") }], kerf: mm(3) }).sheets.length // 1
 */
export function planSheets(request: SheetJob, onBetter?: (progress: SheetProgress) => void): SheetPlan {
  refuseSheetJob(request);
  const job = { ...request, pieces: byName(request.pieces) };
  const losses = { kerf: job.kerf, edgeTrim: job.edgeTrim ?? 0 };
  const stock = cheapestFirst(job.stock);
  const boards = boardsOf(stock, losses);
  const bound = boundOf(job, boards, losses);
  const report = ({ cost, count }: Worth): void =>
    onBetter?.({ sheets: count, cost: money(cost, bound.cost.currency), bound: bound.cost });
  const found = leastBoards(
    itemsOf(job, boards, losses.kerf),
    boards,
    { cuts: stagesOf[job.cuts ?? "straight"], kerf: losses.kerf },
    {
      rounds: job.timeLimit === undefined ? rounds : Number.POSITIVE_INFINITY,
      extra,
      goal: bound.cost.amount,
      until: performance.now() + (job.timeLimit ?? usualLimit) * 1000,
    },
    report,
  );
  if (!found) throw new RangeError(`sheets: ${soldOut(job)}`);
  return planOf(stock, found, bound, losses);
}

function soldOut({ pieces }: SheetJob): string {
  const [largest] = [...pieces].sort((a, b) => b.length * b.width - a.length * a.width);
  const size = largest ? `, the largest ${showSizes([largest.length, largest.width])}` : "";
  return `not enough stock: no plan was found that lays all pieces on the sheets there are${size}`;
}

function planOf(
  stock: readonly StockSheet[],
  { used, rounds: tried }: LeastBoards,
  bound: PurchaseBound,
  losses: SheetLosses,
): SheetPlan {
  const source = (index: number): StockSheet => stock[index] as StockSheet;
  const lines = purchases(
    stock,
    used.map(({ board }) => source(board.stock)),
  );
  const cost = costOf(lines, bound.cost.currency);
  return {
    sheets: used.map((one) => cutSheet(one, source(one.board.stock), losses)),
    purchases: lines,
    cost,
    bound,
    proof: proofOf(cost, bound.cost),
    method: `filled in many orders and by several rules; this plan is number ${tried}`,
  };
}

/** What no plan can beat: the larger of two counts, and no less than the area at the best price. */
function boundOf(
  job: SheetJob,
  boards: readonly BoardStock[],
  { kerf, edgeTrim }: SheetLosses,
): PurchaseBound {
  const offers = job.stock.map((sheet) => ({
    size: areaWithKerf(usableSize(sheet, edgeTrim), kerf),
    price: sheet.price,
    held: sheet.price.amount === 0 ? sheet.available : undefined,
  }));
  const need = totalWithKerf(job.pieces, kerf);
  const byArea = fewestToCover(need, Math.max(...offers.map(({ size }) => size)));
  const bySizes = fewestSheets(unitPieces(job, boards, kerf));
  const count = Math.max(byArea, bySizes);
  const held = offers.filter((offer) => offer.held !== undefined);
  const bought = offers.filter((offer) => offer.held === undefined);
  const onRack = held.reduce((sum, offer) => sum + (offer.held as number) * offer.size, 0);
  const toBuy = Math.max(0, count - held.reduce((sum, offer) => sum + (offer.held as number), 0));
  const least = leastCost(Math.max(0, need - onRack), bought.length > 0 ? bought : offers, toBuy);
  return {
    count,
    cost: {
      ...least,
      amount: leastTotal(
        job.stock.map(({ price }) => price.amount),
        least.amount,
      ),
    },
    because:
      bySizes > byArea
        ? "sizes that leave no room beside each other, counted by dual feasible functions"
        : "the area of all pieces and kerfs against the largest sheet",
  };
}
