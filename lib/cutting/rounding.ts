/** A nanometre. It takes up the rounding of sums; no saw sees it. */
export const hair = 1e-9;

/** Whether a size goes into a room, up to the rounding of sums. */
export function fits(size: number, room: number): boolean {
  return size <= room + hair;
}

/** The next whole number up, where a sum that is whole but for its rounding stays where it is. */
export function wholeUp(value: number): number {
  return Math.max(0, Math.ceil(value - hair));
}
