/** Plans which sheets to buy and how to saw them. */
import { type Money, Time } from "../quantity/index.js";
import {
  byName,
  cheapestFirst,
  costOf,
  type PurchaseBound,
  proofOf,
  purchases,
  raisedBound,
} from "./purchase.js";
import { showSizes } from "./request.js";
import { cutSheet } from "./sheet-cuts.js";
import { boardsOf, itemsOf, type SheetLosses } from "./sheet-items.js";
import type { SheetCutting, SheetJob, SheetPlan, SheetProgress, StockSheet } from "./sheet-plan.js";
import { sheetsBoundByHand } from "./sheet-purchase-bound.js";
import { refuseSheetJob } from "./sheet-request.js";
import { type SearchedBoards, type SearchLimits, searchBoards } from "./sheet-search.js";

/** Fillings to try and sets of pieces to look at before a plan is taken as it is, unless a time limit is set. */
const rounds = 4000;
const sets = 150_000;
const usualLimit = Time.of(5, "s");
const because = "every way to cut a sheet, weighed against all others";

/** Changes of direction of the saw before pieces are trimmed. */
const stagesOf: Readonly<Record<SheetCutting, number | "any shape">> = {
  straight: Number.POSITIVE_INFINITY,
  "two stages": 2,
  "three stages": 3,
  "any shape": "any shape",
};

/**
 * What to buy and how to saw it. Sheets are filled by straight cuts from edge to edge, in many orders and by
 * several rules, until the cost meets what no plan can beat by area and by dual feasible functions. Where it
 * does not, column generation weighs every way to cut a sheet, finds cheaper plans and raises the bound, until
 * they meet or the effort is spent. The cheapest plan is taken, then the one with fewer sheets, then the one
 * with the largest single offcut.
 *
 * Grain runs with the sheet's length and is never turned for a piece that asks for it. `proof` says whether plan
 * and bound meet. Cuts of any shape are bounded by area and dual feasible functions only.
 *
 * @param onBetter told of every better plan while the search runs
 * @source Fekete and Schepers 2004 for the first bound; Gilmore and Gomory 1961 for the second
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
  const byHand = sheetsBoundByHand(job, boards, losses);
  const money = (amount: number): Money => ({ ...byHand.cost, amount });
  const found = searchBoards(
    {
      items: itemsOf(job, boards, losses.kerf),
      boards,
      rules: { cuts: stagesOf[job.cuts ?? "straight"], kerf: losses.kerf },
    },
    { ...limitsOf(job), goal: byHand.cost.amount },
    (cost, sheets, bound) => onBetter?.({ sheets, cost: money(cost), bound: money(bound) }),
  );
  if (!found) throw new RangeError(`sheets: ${soldOut(job)}`);
  return planOf(stock, found, raisedBound(byHand, found.bound, stock, because), losses);
}

/** With a time limit the clock alone ends the search. */
function limitsOf({ timeLimit }: SheetJob): Omit<SearchLimits, "goal"> {
  const until = performance.now() + (timeLimit ?? usualLimit) * 1000;
  if (timeLimit === undefined) return { rounds, sets, until };
  return { rounds: Number.POSITIVE_INFINITY, sets: Number.POSITIVE_INFINITY, until };
}

function soldOut({ pieces }: SheetJob): string {
  const [largest] = [...pieces].sort((a, b) => b.length * b.width - a.length * a.width);
  const size = largest ? `, the largest ${showSizes([largest.length, largest.width])}` : "";
  return `not enough stock: no plan was found that lays all pieces on the sheets there are${size}`;
}

function planOf(
  stock: readonly StockSheet[],
  { used, method }: SearchedBoards,
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
    method,
  };
}
