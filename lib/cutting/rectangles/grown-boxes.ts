/** Boxes of a set that grows piece by piece: quickly found, but there may be others. */
import { type Box, joined, offer, single } from "./box.js";
import { type CutLevel, topLevels } from "./cut-levels.js";
import type { Way } from "./item.js";

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
    const added = this.singles[type] as readonly Box[];
    if (!boxes) return this.levels.map(() => added);
    const grown: (readonly Box[])[] = [];
    for (const [level, { directions, below }] of this.levels.entries()) {
      const front = below === undefined ? [] : [...(grown[below] as readonly Box[])];
      for (const box of boxes[level] as readonly Box[]) {
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
