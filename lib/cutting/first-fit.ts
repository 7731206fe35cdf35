/** First-fit decreasing on plain lengths: the longest piece first, into the first bar with room for it. */
import { fits } from "./rounding.js";

/** A bar being filled. */
export interface OpenBar<Piece> {
  /** Length a further piece may have. */
  room: number;
  /** In the order they were put in. */
  readonly pieces: Piece[];
}

/** What became of a list of pieces. */
export interface Packing<Piece, Bar> {
  /** In the order they were opened. */
  readonly bars: readonly Bar[];
  /** The first piece for which no bar could be opened. */
  readonly unplaced?: Piece;
}

/**
 * Puts each piece into the first bar with room for it, and opens a bar where there is none.
 *
 * @param pieces longest first
 * @param kerf lost after every piece
 * @param open bars to be filled before any other
 * @param openBar a bar with room for the piece, or undefined when there is no such stock
 */
export function firstFit<Piece extends { readonly length: number }, Bar extends OpenBar<Piece>>(
  pieces: readonly Piece[],
  kerf: number,
  open: readonly Bar[],
  openBar: (piece: Piece) => Bar | undefined,
): Packing<Piece, Bar> {
  const bars = [...open];
  for (const piece of pieces) {
    let bar = bars.find(({ room }) => fits(piece.length, room));
    if (!bar) {
      bar = openBar(piece);
      if (!bar) return { bars, unplaced: piece };
      bars.push(bar);
    }
    bar.pieces.push(piece);
    bar.room -= piece.length + kerf;
  }
  return { bars };
}
