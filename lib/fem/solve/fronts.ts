/** Room for the fronts, laid out before any number is worked out. */
import type { Front } from "./dissection.js";

/** How much room the fronts of a structure need, in numbers. */
export interface FrontRoom {
  /** For all factors. */
  readonly fill: number;
  /** For the squares passed on, at odd and at even depths: what a front takes over and what it leaves lie apart. */
  readonly squares: readonly [number, number];
}

/** Works out the room. */
export function frontRoom(front: Front): FrontRoom {
  let fill = 0;
  const used = [0, 0];
  const most: [number, number] = [0, 0];
  const visit = ({ halves, freedoms, eliminated }: Front, depth: number): void => {
    for (const half of halves) visit(half, depth + 1);
    fill += freedoms.length * eliminated;
    const side = depth % 2;
    used[side]! += squareOf(freedoms.length - eliminated);
    most[side] = Math.max(most[side]!, used[side]!);
    for (const half of halves) used[1 - side]! -= squareOf(half.freedoms.length - half.eliminated);
  };
  visit(front, 0);
  return { fill, squares: most };
}

function squareOf(count: number): number {
  return count * count;
}
