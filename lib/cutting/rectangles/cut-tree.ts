/** A sheet cut in two, and its parts again: straight cuts from edge to edge. */
import { hair } from "../numbers.js";
import type { Item, Laid, Way } from "./item.js";

/** Which way a cut runs. */
export type CutDirection = "along" | "across";

/** A part of a sheet. It is cut further, or holds a piece, or is left over. */
export interface Part {
  /** Nearest edge, along the sheet. */ readonly x: number;
  /** Nearest edge, across the sheet. */ readonly y: number;
  /** Along the sheet. */ readonly length: number;
  /** Across the sheet. */ readonly width: number;
  /** How many times the direction of cuts has changed on the way to this part, the first counted. */
  readonly stage: number;
  /** Direction of the cut it came from. */ readonly from?: CutDirection;
  /** The two sides of the cut through it. */
  cut?: { readonly direction: CutDirection; readonly near: Part; readonly far: Part };
  /** The piece it is. */ held?: { readonly item: Item; readonly way: Way };
}

/** A whole sheet, not yet cut. */
export function wholePart(length: number, width: number): Part {
  return { x: 0, y: 0, length, width, stage: 0 };
}

/**
 * Puts a piece into the near corner of a part: one cut at its width or length, another across the near side.
 *
 * @param first direction of the first of the two cuts
 * @param stages changes of direction allowed; one more is for trimming a piece, and what falls off then is waste
 * @returns the parts that are free for further pieces, or nothing where the cuts need too many stages
 */
export function place(
  part: Part,
  item: Item,
  way: Way,
  first: CutDirection,
  stages: number,
): Part[] | undefined {
  const second = first === "along" ? "across" : "along";
  const strip = stageOf(part, first, way);
  const trimmed = stageOf({ ...part, ...strip }, second, way);
  if (strip.stage > stages || trimmed.stage > stages + 1) return undefined;
  const [near, far] = cutOff(part, first, way, strip);
  const [piece, rest] = cutOff(near, second, way, trimmed);
  piece.held = { item, way };
  return [far, trimmed.stage > stages ? undefined : rest].filter((free) => free !== undefined);
}

/** Cuts a part at a size; the part itself, and no far side, where the cut would lie on its edge. */
export function cutAt(part: Part, direction: CutDirection, size: Extents): [Part, Part?] {
  return cutOff(part, direction, size, stageOf(part, direction, size));
}

/** How long and how wide a part is. */
export type Extents = Pick<Part, "length" | "width">;

type Staged = Pick<Part, "stage" | "from">;

/** The stage a part's sides are at after a cut; unchanged where the cut would lie on its edge. */
function stageOf(part: Part, direction: CutDirection, size: Extents): Staged {
  if (beyond(part, direction, size) <= hair)
    return { stage: part.stage, ...(part.from ? { from: part.from } : {}) };
  return { stage: part.from === direction ? part.stage : part.stage + 1, from: direction };
}

/** What a part has beyond a size, across the direction of a cut. */
function beyond(part: Part, direction: CutDirection, size: Extents): number {
  return direction === "along" ? part.width - size.width : part.length - size.length;
}

/** Cuts a part; the part itself where the cut would lie on its edge. */
function cutOff(
  part: Part,
  direction: CutDirection,
  { length, width }: Extents,
  staged: Staged,
): [Part, Part?] {
  const left = beyond(part, direction, { length, width });
  if (left <= hair) return [part];
  const along = direction === "along";
  const { x, y } = part;
  const near = { x, y, length: along ? part.length : length, width: along ? width : part.width, ...staged };
  const far = along
    ? { x, y: y + width, length: part.length, width: left, ...staged }
    : { x: x + length, y, length: left, width: part.width, ...staged };
  part.cut = { direction, near, far };
  return [near, far];
}

/** The parts that are neither cut nor hold a piece. */
export function leftOver(part: Part): Part[] {
  if (part.cut) return [...leftOver(part.cut.near), ...leftOver(part.cut.far)];
  return part.held ? [] : [part];
}

/** The pieces of a sheet where they lie, in the order they are cut free. */
export function laidOn({ cut, held, x, y }: Part): Laid[] {
  if (cut) return [...laidOn(cut.near), ...laidOn(cut.far)];
  return held ? [{ item: held.item, ...held.way, x, y }] : [];
}
