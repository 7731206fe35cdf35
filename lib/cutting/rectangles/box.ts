/** Rectangles put together from pieces by straight cuts. */
import type { CutDirection } from "./cut-tree.js";
import type { Way } from "./item.js";

/** A rectangle in which some pieces lie, to be cut apart by straight cuts. */
export interface Box {
  readonly length: number;
  readonly width: number;
  readonly made: BoxOfOne | BoxOfTwo;
}

/** A single piece. */
export interface BoxOfOne {
  readonly type: number;
  readonly way: Way;
}

/** Two boxes, one beyond the other across the cut between them. */
export interface BoxOfTwo {
  readonly direction: CutDirection;
  readonly near: Box;
  readonly far: Box;
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
