/** The broad phase: which boxes share more than contact, before anything is asked of what is in them. */
import { axes } from "../../algebra/matrix3.js";
import type { SolidReach } from "./placed.js";
import { contact } from "./region.js";

/** Whether two boxes share more than contact. */
export function boxesMeet(a: SolidReach, b: SolidReach): boolean {
  for (const i of axes)
    if (Math.min(a.high[i], b.high[i]) - Math.max(a.low[i], b.low[i]) <= contact) return false;
  return true;
}

/** The six sides of boxes, one after another: low x, y, z, high x, y, z. */
function sidesOf(boxes: readonly SolidReach[]): Float64Array {
  const sides = new Float64Array(6 * boxes.length);
  for (const [i, { low, high }] of boxes.entries()) {
    sides.set(low, 6 * i);
    sides.set(high, 6 * i + 3);
  }
  return sides;
}

/** How far two boxes reach into each other along an axis, m. */
function sharedAlong(sides: Float64Array, a: number, b: number, axis: number): number {
  const [lowA = 0, lowB = 0] = [sides[6 * a + axis], sides[6 * b + axis]];
  const [highA = 0, highB = 0] = [sides[6 * a + 3 + axis], sides[6 * b + 3 + axis]];
  return Math.min(highA, highB) - Math.max(lowA, lowB);
}

/** Pairs whose boxes share more than contact: a sweep along x. */
export function nearPairs<P extends SolidReach>(all: readonly P[]): readonly (readonly [P, P])[] {
  const sorted = [...all].sort((a, b) => a.low[0] - b.low[0]);
  const sides = sidesOf(sorted);
  // What still stands at the place of the sweep, as it came.
  const open = new Int32Array(sorted.length);
  let count = 0;
  const pairs: (readonly [P, P])[] = [];
  for (const [i, next] of sorted.entries()) {
    const reached = next.low[0] + contact;
    let kept = 0;
    for (let n = 0; n < count; n++) {
      const j = open[n] ?? 0;
      if (!((sides[6 * j + 3] ?? 0) > reached)) continue;
      open[kept++] = j;
      if (sharedAlong(sides, i, j, 1) <= contact || sharedAlong(sides, i, j, 2) <= contact) continue;
      const one = sorted[j];
      if (one && sharedAlong(sides, i, j, 0) > contact) pairs.push([one, next]);
    }
    open[kept] = i;
    count = kept + 1;
  }
  return pairs;
}

/** Of some boxes those that share more than contact with another, asked often; as they stand in their list. */
export function nearOf<P extends SolidReach>(all: readonly P[]): (box: SolidReach) => readonly P[] {
  const sides = sidesOf(all);
  return ({ low, high }) => {
    const [x, y, z] = low;
    const [right, back, top] = high;
    const near: P[] = [];
    for (let i = 0, at = 0; i < all.length; i++, at += 6) {
      if (Math.min(sides[at + 3] ?? 0, right) - Math.max(sides[at] ?? 0, x) <= contact) continue;
      if (Math.min(sides[at + 4] ?? 0, back) - Math.max(sides[at + 1] ?? 0, y) <= contact) continue;
      if (Math.min(sides[at + 5] ?? 0, top) - Math.max(sides[at + 2] ?? 0, z) <= contact) continue;
      near.push(all[i] as P);
    }
    return near;
  };
}
