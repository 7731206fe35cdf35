/**
 * First-fit decreasing height on plain numbers: the tallest piece opens a shelf across the sheet, shorter
 * ones stand beside it; the first shelf with room takes the next piece, or else the first sheet with room
 * for a new shelf. "Width" runs along a shelf, "height" from shelf to shelf.
 */
import { fits } from "./rounding.js";

/** A rectangle to be placed. */
export interface Upright {
  /** Along the shelf. */
  readonly width: number;
  /** Across the shelf. */
  readonly height: number;
}

/** Pieces side by side, a kerf between neighbours. */
export interface Shelf<Piece> {
  /** That of its first piece. */
  readonly height: number;
  /** Width a further piece may have. */
  room: number;
  /** From the near end on. */
  readonly pieces: Piece[];
}

/** A sheet being filled, shelf upon shelf, a kerf between neighbours. */
export interface ShelfSheet<Piece> {
  /** Extent along the shelves. */
  readonly width: number;
  /** Height a further shelf may have. */
  room: number;
  /** From the near edge on. */
  readonly shelves: Shelf<Piece>[];
}

/** What became of a list of pieces. */
export interface ShelfPacking<Piece, Sheet> {
  /** In the order they were opened. */
  readonly sheets: readonly Sheet[];
  /** The first piece for which no sheet could be opened. */
  readonly unplaced?: Piece;
}

/**
 * Fills sheets with shelves.
 *
 * @param pieces tallest first
 * @param kerf between neighbours
 * @param openSheet a sheet with room for the piece, or undefined when there is no such stock
 */
export function fillShelves<Piece extends Upright, Sheet extends ShelfSheet<Piece>>(
  pieces: readonly Piece[],
  kerf: number,
  openSheet: (piece: Piece) => Sheet | undefined,
): ShelfPacking<Piece, Sheet> {
  const sheets: Sheet[] = [];
  for (const piece of pieces) {
    const shelf =
      sheets
        .flatMap(({ shelves }) => shelves)
        .find(({ height, room }) => fits(piece.height, height) && fits(piece.width, room)) ??
      newShelf(piece, kerf, sheets, openSheet);
    if (!shelf) return { sheets, unplaced: piece };
    shelf.pieces.push(piece);
    shelf.room -= piece.width + kerf;
  }
  return { sheets };
}

function newShelf<Piece extends Upright, Sheet extends ShelfSheet<Piece>>(
  piece: Piece,
  kerf: number,
  sheets: Sheet[],
  openSheet: (piece: Piece) => Sheet | undefined,
): Shelf<Piece> | undefined {
  let sheet = sheets.find(({ width, room }) => fits(piece.width, width) && fits(piece.height, room));
  if (!sheet) {
    sheet = openSheet(piece);
    if (!sheet) return undefined;
    sheets.push(sheet);
  }
  const shelf: Shelf<Piece> = { height: piece.height, room: sheet.width, pieces: [] };
  sheet.shelves.push(shelf);
  sheet.room -= piece.height + kerf;
  return shelf;
}
