/** The cuts that free the pieces of a box from a sheet. */
import { type Box, type BoxOfOne, joined } from "./box.js";
import { type CutDirection, cutAt, type Part, wholePart } from "./cut-tree.js";
import type { Board, Item, Way } from "./item.js";

/** A box, and how to read it. */
export interface BoxOnBoard {
  readonly box: Box;
  readonly board: Board;
  /** Units of the box in a unit of the board. */
  readonly fine: number;
  /** Whether cuts may change direction as often as they like. */
  readonly free: boolean;
  /** A piece of a type; each call hands out another. */
  readonly take: (type: number) => Item;
}

/** A whole sheet with its cuts. What is left beyond the box stays in one part where the stages allow it. */
export function cutOut(one: BoxOnBoard): Part {
  const root = wholePart(one.board.length, one.board.width);
  const { length, width } = sizeOf(one, one.box);
  const stripLeft = (root.width - width) * root.length;
  const endLeft = (root.length - length) * root.width;
  lay(one, root, one.box, one.free ? (stripLeft > endLeft ? "along" : "across") : undefined);
  return root;
}

function lay(one: BoxOnBoard, part: Part, box: Box, from: CutDirection | undefined): void {
  const size = sizeOf(one, box);
  const trimmed = trims(one, box, from).reduce((left, direction) => cutAt(left, direction, size)[0], part);
  if ("type" in box.made) trimmed.held = heldBy(one, box.made.type, box.made.way);
  else {
    const { direction, near, far } = box.made;
    const [first, rest] = cutAt(trimmed, direction, sizeOf(one, near));
    lay(one, first, near, direction);
    if (rest) lay(one, rest, far, direction);
  }
}

/**
 * Directions in which a part is cut down to a box before the box is cut apart. With stages to be kept, the other
 * side is left to the parts of the box, which a later cut trims in any case.
 */
function trims({ free }: BoxOnBoard, { made }: Box, from: CutDirection | undefined): CutDirection[] {
  const own = "type" in made ? undefined : made.direction;
  if (own && !free) return from === undefined || from === own ? [own] : [from, own];
  return (from ?? own) === "along" ? ["along", "across"] : ["across", "along"];
}

function heldBy({ take }: BoxOnBoard, type: number, { turned }: Way): NonNullable<Part["held"]> {
  const item = take(type);
  const way = item.ways.find((one) => one.turned === turned) as Way;
  return { item, way };
}

function sizeOf({ fine }: BoxOnBoard, { length, width }: Box): { length: number; width: number } {
  return { length: length / fine, width: width / fine };
}

/** A sheet's cuts as a box: its pieces as close together as the same cuts allow; nothing where it has none. */
export function boxOf(
  { cut, held }: Part,
  pieceOf: (held: NonNullable<Part["held"]>) => BoxOfOne,
): Box | undefined {
  if (held) {
    const made = pieceOf(held);
    return { length: made.way.length, width: made.way.width, made };
  }
  if (!cut) return undefined;
  const [near, far] = [boxOf(cut.near, pieceOf), boxOf(cut.far, pieceOf)];
  return near && far ? joined(near, far, cut.direction) : (near ?? far);
}
