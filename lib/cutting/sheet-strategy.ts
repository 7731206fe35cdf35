/** Which way shelves run and pieces are turned: the few combinations a sheet plan tries. */

import { compareNames } from "./purchase.js";
import { fits } from "./rounding.js";
import type { Grain, SheetJob, SheetPiece } from "./sheet-plan.js";
import type { Upright } from "./shelves.js";

/** One way of going about a job. */
export interface SheetStrategy {
  /** Which way the first cuts run: rips along the sheet's length, or crosscuts. */
  readonly shelves: "along" | "across";
  /** Which side of a piece of free grain lies along the shelf. */
  readonly longSide: "along the shelf" | "across the shelf";
}

/** Every strategy, in a fixed order. */
export const strategies: readonly SheetStrategy[] = (["along", "across"] as const).flatMap((shelves) =>
  (["along the shelf", "across the shelf"] as const).map((longSide) => ({ shelves, longSide })),
);

/** A single piece as it will lie. */
export interface OrientedPiece extends Upright {
  /** As in the piece that asked for it. */
  readonly name: string;
  /** Whether its own length lies across the sheet. */
  readonly turned: boolean;
}

/** The extent of a usable sheet, or of a piece on it, in the frame of the shelves. */
export function inShelfFrame(
  { length, width }: { readonly length: number; readonly width: number },
  shelves: SheetStrategy["shelves"],
): Upright {
  return shelves === "along" ? { width: length, height: width } : { width, height: length };
}

/**
 * Every single piece as a strategy would lay it, the tallest first; width, then name, settle ties, so
 * that the order of a file does not matter.
 *
 * @param sheets usable extents in the frame of the shelves; a piece is turned the other way where the
 * preferred one goes onto none of them
 */
export function orient(
  { pieces }: SheetJob,
  strategy: SheetStrategy,
  sheets: readonly Upright[],
): OrientedPiece[] {
  return pieces
    .flatMap((piece) => {
      const lying = wayToLie(piece, strategy, sheets);
      return lying ? Array.from({ length: piece.count }, () => lying) : [];
    })
    .sort((a, b) => b.height - a.height || b.width - a.width || compareNames(a.name, b.name));
}

function wayToLie(
  piece: SheetPiece,
  { shelves, longSide }: SheetStrategy,
  sheets: readonly Upright[],
): OrientedPiece | undefined {
  const sign = longSide === "along the shelf" ? -1 : 1;
  return ways(piece, shelves)
    .filter(({ width, height }) =>
      sheets.some((sheet) => fits(width, sheet.width) && fits(height, sheet.height)),
    )
    .sort((a, b) => sign * (a.width - b.width))[0];
}

function ways(
  { name, length, width, grain }: SheetPiece,
  shelves: SheetStrategy["shelves"],
): OrientedPiece[] {
  return turnsAllowed(grain).map((turned) => ({
    name,
    turned,
    ...inShelfFrame(turned ? { length: width, width: length } : { length, width }, shelves),
  }));
}

/** Whether a piece may lie straight (false), turned (true), or both. */
export function turnsAllowed(grain: Grain): readonly boolean[] {
  return { along: [false], across: [true], free: [false, true] }[grain];
}
