import { leastTotal } from "./price-unit.js";
import { fewestToCover, leastCost, type PurchaseBound } from "./purchase.js";
import { fewestSheets } from "./rectangles/dual-feasible.js";
import type { BoardStock } from "./rectangles/least-boards.js";
import { areaWithKerf, totalWithKerf, usableSize } from "./sheet-bound.js";
import { type SheetLosses, unitPieces } from "./sheet-items.js";
import type { SheetJob } from "./sheet-plan.js";

/** What no plan can beat: the larger of two counts, and no less than the area at the best price; known without a search. */
export function sheetsBoundByHand(
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
