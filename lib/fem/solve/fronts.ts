/** Room for the fronts, laid out before any number is worked out. */
import type { Front } from "./dissection.js";

/** How much room the fronts of a structure need, in numbers. */
export interface FrontRoom {
  /** For all factors. */
  readonly fill: number;
  /** For the squares that wait to be taken over, at their most. */
  readonly waiting: number;
}

/** Works out the room. */
export function frontRoom(front: Front): FrontRoom {
  let [fill, used, waiting] = [0, 0, 0];
  const visit = ({ halves, freedoms, eliminated }: Front): void => {
    for (const half of halves) visit(half);
    fill += freedoms.length * eliminated;
    for (const half of halves) used -= squareOf(half);
    used += (freedoms.length - eliminated) ** 2;
    waiting = Math.max(waiting, used);
  };
  visit(front);
  return { fill, waiting };
}

/** Numbers in the square that a front passes on. */
export function squareOf({ freedoms, eliminated }: Front): number {
  return (freedoms.length - eliminated) ** 2;
}
