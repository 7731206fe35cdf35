import { Supply } from "./purchase.js";
import { fits } from "./rounding.js";
import { usableSize } from "./sheet-bound.js";
import type { SheetJob, StockSheet } from "./sheet-plan.js";
import { inShelfFrame, type OrientedPiece, orient, type SheetStrategy } from "./sheet-strategy.js";
import { fillShelves, type ShelfPacking, type ShelfSheet, type Upright } from "./shelves.js";

/** A sheet being filled. */
export interface FilledSheet extends ShelfSheet<OrientedPiece> {
  /** What it is cut from. */
  readonly source: StockSheet;
}

/** What the saw takes. */
export interface SheetLosses {
  /** m, with every cut. */
  readonly kerf: number;
  /** m off each edge. */
  readonly edgeTrim: number;
}

/**
 * One attempt at a job: fills sheets of the preferred stock (the cheapest other where that is too small
 * or sold out), then exchanges each for the cheapest sheet that still holds its shelves.
 */
export function packSheets(
  job: SheetJob,
  stock: readonly StockSheet[],
  preferred: StockSheet,
  strategy: SheetStrategy,
  { kerf, edgeTrim }: SheetLosses,
): ShelfPacking<OrientedPiece, FilledSheet> {
  const supply = new Supply(stock);
  const frame = (sheet: StockSheet): Upright => inShelfFrame(usableSize(sheet, edgeTrim), strategy.shelves);
  const holds = (sheet: StockSheet, { width, height }: Upright): boolean =>
    fits(width, frame(sheet).width) && fits(height, frame(sheet).height);
  const pieces = orient(job, strategy, stock.map(frame));
  const packing = fillShelves(pieces, kerf, (piece): FilledSheet | undefined => {
    const source = supply.take(preferred, (sheet) => holds(sheet, piece));
    return source && { source, width: frame(source).width, room: frame(source).height, shelves: [] };
  });
  const sheets = packing.sheets.map((sheet) => {
    const used = usedExtent(sheet, frame(sheet.source), kerf);
    return { ...sheet, source: supply.exchange(sheet.source, (other) => holds(other, used)) };
  });
  return { ...packing, sheets };
}

/** What the shelves of a sheet take up, without the kerf after the last. */
function usedExtent({ shelves, room }: FilledSheet, { width, height }: Upright, kerf: number): Upright {
  return {
    width: Math.max(...shelves.map((shelf) => width - shelf.room - kerf)),
    height: height - room - kerf,
  };
}
