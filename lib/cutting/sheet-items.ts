/** A sheet job in plain numbers, every piece and sheet widened by a kerf on two sides. */

import { fits } from "./numbers.js";
import { compareNames } from "./purchase.js";
import type { UnitPiece } from "./rectangles/dual-feasible.js";
import type { Item, Way } from "./rectangles/item.js";
import type { BoardStock } from "./rectangles/least-boards.js";
import { usableSize } from "./sheet-bound.js";
import type { Grain, SheetJob, SheetPiece, StockSheet } from "./sheet-plan.js";

/** What the saw takes. */
export interface SheetLosses {
  /** m, with every cut. */ readonly kerf: number;
  /** m off each edge. */ readonly edgeTrim: number;
}

/** Stock as the search sees it. */
export function boardsOf(stock: readonly StockSheet[], { kerf, edgeTrim }: SheetLosses): BoardStock[] {
  return stock.map((sheet) => {
    const { length, width } = usableSize(sheet, edgeTrim);
    return {
      length: length + kerf,
      width: width + kerf,
      price: sheet.price.amount,
      supply: sheet.available ?? Number.POSITIVE_INFINITY,
    };
  });
}

/** Every single piece with the ways it may lie on some sheet, in the order of names. */
export function itemsOf({ pieces }: SheetJob, boards: readonly BoardStock[], kerf: number): Item[] {
  return [...pieces]
    .sort((a, b) => compareNames(a.name, b.name))
    .flatMap((piece) => {
      const item = {
        name: piece.name,
        ways: waysOf(piece, kerf).filter((way) => boards.some((board) => lies(way, board))),
      };
      return Array.from({ length: piece.count }, () => item);
    });
}

/** Pieces as shares of a sheet as long as the longest and as wide as the widest. */
export function unitPieces({ pieces }: SheetJob, boards: readonly BoardStock[], kerf: number): UnitPiece[] {
  const length = Math.max(...boards.map((board) => board.length));
  const width = Math.max(...boards.map((board) => board.width));
  return pieces.flatMap((piece) => {
    const [first, second] = waysOf(piece, kerf).filter((way) => boards.some((board) => lies(way, board)));
    if (!first) return [];
    const share = (way: Way): Pick<Way, "length" | "width"> => ({
      length: way.length / length,
      width: way.width / width,
    });
    return [{ ...share(first), count: piece.count, ...(second ? { turned: share(second) } : {}) }];
  });
}

/** Both ways of a free piece, the longer side along the sheet first, so that it does not matter how it is written. */
function waysOf({ length, width, grain }: SheetPiece, kerf: number): Way[] {
  const straight = { length: length + kerf, width: width + kerf, turned: false };
  const turned = { length: width + kerf, width: length + kerf, turned: true };
  return turnsAllowed(grain)
    .map((one) => (one ? turned : straight))
    .sort((a, b) => b.length - a.length);
}

function lies(way: Way, board: BoardStock): boolean {
  return fits(way.length, board.length) && fits(way.width, board.width);
}

/** Whether a piece may lie straight (false), turned (true), or both. */
export function turnsAllowed(grain: Grain): readonly boolean[] {
  return { along: [false], across: [true], free: [false, true] }[grain];
}
