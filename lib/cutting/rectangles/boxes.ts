/** Rectangles put together from pieces by straight cuts. */
import { at } from "../../algebra/lists.js";
import type { CutDirection } from "./cut-tree.js";
import type { Way } from "./item.js";

/** A rectangle in which some pieces lie, to be cut apart by straight cuts. */
export interface Box {
  /** Along the sheet. */ readonly length: number;
  /** Across the sheet. */ readonly width: number;
  /** What it is put together from. */ readonly made: BoxOfOne | BoxOfTwo;
}

/** A single piece. */
export interface BoxOfOne {
  /** Index of the type of piece. */ readonly type: number;
  /** How it lies. */ readonly way: Way;
}

/** Two boxes, one beyond the other across the cut between them. */
export interface BoxOfTwo {
  /** Of the cut between them. */ readonly direction: CutDirection;
  /** The one nearer to the sheet's corner. */ readonly near: Box;
  /** The one beyond the cut. */ readonly far: Box;
}

/** Two boxes with a cut between them. */
export function joined(near: Box, far: Box, direction: CutDirection): Box {
  const along = direction === "along";
  return {
    length: along ? Math.max(near.length, far.length) : near.length + far.length,
    width: along ? near.width + far.width : Math.max(near.width, far.width),
    made: { direction, near, far },
  };
}

/** A single piece as a box. */
export function single(type: number, way: Way): Box {
  return { length: way.length, width: way.width, made: { type, way } };
}

/** Adds a box to a list unless another is no larger, and drops what it undercuts. */
export function offer(boxes: Box[], box: Box): void {
  for (const one of boxes) if (one.length <= box.length && one.width <= box.width) return;
  let kept = 0;
  for (const one of boxes) if (one.length < box.length || one.width < box.width) boxes[kept++] = one;
  boxes.length = kept;
  boxes.push(box);
}

/** Boxes of one kind: those that begin with cuts of these directions, or are taken over from below. */
export interface CutLevel {
  /** Directions a first cut may have. */ readonly directions: readonly CutDirection[];
  /** Index of the level whose boxes need no cut of these directions. */ readonly below?: number;
}

/** One level where cuts may turn as they like; two a stage otherwise, one for each first direction. */
export function cutLevels(stages: number): readonly CutLevel[] {
  if (!Number.isFinite(stages)) return [{ directions: ["along", "across"] }];
  return Array.from({ length: 2 * stages }, (_, i): CutLevel => {
    const directions = [i % 2 === 0 ? "along" : "across"] as const;
    return i < 2 ? { directions } : { directions, below: i % 2 === 0 ? i - 1 : i - 3 };
  });
}

/** The levels that use all stages. */
export function topLevels(levels: readonly CutLevel[]): readonly number[] {
  return [...levels.keys()].slice(-2);
}

/** Boxes of one set, one list a level of cuts. */
export type Boxes = readonly (readonly Box[])[];

/** Boxes kept of a set. */
const widest = 12;

/** Puts pieces beside or above boxes. */
export class BoxGrower {
  private readonly singles: readonly (readonly Box[])[];
  private readonly top: readonly number[];

  constructor(
    types: readonly (readonly Way[])[],
    private readonly levels: readonly CutLevel[],
  ) {
    this.singles = types.map((ways, type) => ways.map((way) => single(type, way)));
    this.top = topLevels(levels);
  }

  /**
   * Boxes of a set with one piece more that go on a sheet.
   *
   * @param boxes of the set; nothing for the first piece
   */
  grown(boxes: Boxes | undefined, type: number, length: number, width: number): Boxes {
    const added = at(this.singles, type);
    if (!boxes) return this.levels.map(() => added);
    const grown: (readonly Box[])[] = [];
    for (const [level, { directions, below }] of this.levels.entries()) {
      const front = below === undefined ? [] : [...at(grown, below)];
      for (const box of at(boxes, level)) {
        for (const piece of added) {
          for (const direction of directions) {
            const larger = joined(box, piece, direction);
            if (larger.length <= length && larger.width <= width) offer(front, larger);
          }
        }
      }
      grown.push(front.length > widest ? front.slice(0, widest) : front);
    }
    return grown;
  }

  /** A box that goes on a sheet, if there is any. */
  fitting(boxes: Boxes, length: number, width: number): Box | undefined {
    for (const level of this.top) {
      const box = boxes[level]?.find((one) => one.length <= length && one.width <= width);
      if (box) return box;
    }
    return undefined;
  }
}
