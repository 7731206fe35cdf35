/** Small rules for numbers that all of this room shares. */

/** A nanometre. It takes up the rounding of sums; no saw sees it. */
export const hair = 1e-9;

/** Whether a size goes into a room, up to the rounding of sums. */
export function fits(size: number, room: number): boolean {
  return size <= room + hair;
}

/** The largest whole number that divides two others. */
export function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
