/** Plans which sheets to buy and how to saw them. */
import { at } from "../algebra/lists.js";
import { Length, type Money, Time } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { fits } from "./numbers.js";
import { patienceFor } from "./patience.js";
import {
  byName,
  cheapestFirst,
  costOf,
  fewestToCover,
  leastCost,
  leastTotal,
  type PurchaseBound,
  proofOf,
  purchases,
  raisedBound,
} from "./purchase.js";
import { fewestSheets } from "./rectangles/dual-feasible.js";
import type { BoardStock } from "./rectangles/least-boards.js";
import {
  badCounts,
  badSizes,
  badStock,
  belowZero,
  refuse,
  repeatedNames,
  showSizes,
  tooMany,
} from "./request.js";
import { areaWithKerf, totalWithKerf, usableSize } from "./sheet-bound.js";
import { cutSheet } from "./sheet-cuts.js";
import { boardsOf, itemsOf, type SheetLosses, turnsAllowed, unitPieces } from "./sheet-items.js";
import type {
  SheetCutting,
  SheetJob,
  SheetPiece,
  SheetPlan,
  SheetProgress,
  StockSheet,
} from "./sheet-plan.js";
import { type SearchedBoards, type SearchLimits, searchBoards } from "./sheet-search.js";

/** Fillings to try, sets of pieces to look at and work to do before a plan is taken as it is, unless a time limit is set. */
const rounds = 4000;
const sets = 150_000;
const usualEffort = Time.of(2, "s");
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
 * @throws Refusal naming pieces and sizes: a piece that lies on no sheet, a negative kerf, two things of
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
  if (!found) throw new Refusal(`sheets: ${soldOut(job)}`);
  return planOf(stock, found, raisedBound(byHand, found.bound, stock, because), losses);
}

/** With a time limit the clock alone ends the search. */
function limitsOf(job: SheetJob): Omit<SearchLimits, "goal"> {
  const patience = patienceFor(job, usualEffort);
  if (job.timeLimit === undefined) return { rounds, sets, patience };
  return { rounds: Number.POSITIVE_INFINITY, sets: Number.POSITIVE_INFINITY, patience };
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
  const source = (index: number): StockSheet => at(stock, index);
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

/**
 * Refuses a job that no saw could do, with every reason at once.
 *
 * @throws Refusal naming the pieces and their sizes
 */
function refuseSheetJob(job: SheetJob): void {
  const { pieces, stock, kerf, edgeTrim = Length.si(0) } = job;
  refuse("sheets", [
    ...badStock(stock),
    ...repeatedNames("pieces", pieces),
    ...badCounts(pieces),
    ...tooMany(pieces),
    ...badSizes([...pieces, ...stock].map(({ name, length, width }) => ({ name, sizes: [length, width] }))),
    ...belowZero({ kerf, "edge trim": edgeTrim }),
  ]);
  refuse("sheets", [...trimmedAway(job, edgeTrim), ...largerThanEvery(job, edgeTrim)]);
}

function trimmedAway({ stock }: SheetJob, edgeTrim: Length): string[] {
  return stock
    .filter((sheet) => Object.values(usableSize(sheet, edgeTrim)).some((extent) => !(extent > 0)))
    .map(
      ({ name, length, width }) => `${name} (${showSizes([length, width])}) is used up by trimming its edges`,
    );
}

function largerThanEvery({ pieces, stock }: SheetJob, edgeTrim: Length): string[] {
  const sheets = stock.map((sheet) => usableSize(sheet, edgeTrim));
  const sizes = sheets.map(({ length, width }) => showSizes([Length.si(length), Length.si(width)]));
  return pieces
    .filter((piece) => piece.count > 0 && !sheets.some((sheet) => liesOn(piece, sheet)))
    .map(
      ({ name, length, width, grain }) =>
        `${name} (${showSizes([length, width])}, grain ${grain}) does not lie on any sheet, ${sizes.join(" or ")} after trimming`,
    );
}

function liesOn({ length, width, grain }: SheetPiece, sheet: ReturnType<typeof usableSize>): boolean {
  return turnsAllowed(grain).some((turned) =>
    turned
      ? fits(width, sheet.length) && fits(length, sheet.width)
      : fits(length, sheet.length) && fits(width, sheet.width),
  );
}

/** What no plan can beat: the larger of two counts, and no less than the area at the best price; known without a search. */
function sheetsBoundByHand(
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
  const held = offers.flatMap(({ held, size }) => (held === undefined ? [] : [{ count: held, size }]));
  const bought = offers.filter((offer) => offer.held === undefined);
  const onRack = held.reduce((sum, offer) => sum + offer.count * offer.size, 0);
  const toBuy = Math.max(0, count - held.reduce((sum, offer) => sum + offer.count, 0));
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
        ? "sizes that leave no room beside each other"
        : "the area of all pieces and kerfs against the largest sheet",
  };
}
