/** Which solids a straight line meets. */
import { axes, type Vector3 } from "../../algebra/matrix3.js";
import type { Point2 } from "../../shape/index.js";
import { after, before, type Placed, placed } from "../overlap/placed.js";
import { contact } from "../overlap/region.js";
import type { Solid } from "../solid.js";

/** Places of a line within a box at which a solid that is no box is tried. */
const tries = 9;

/**
 * The solids that a straight line goes into. Exact for boxes; of other outlines and of holes, the line is tried at nine
 * places within the box round the solid.
 *
 * @throws Refusal when a solid does not lie along the axes
 */
export function solidsOnLine<S extends Solid>(
  from: Vector3,
  to: Vector3,
  solids: readonly S[],
): readonly S[] {
  return solids.filter((solid) => isMet(from, to, placed(solid)));
}

/**
 * Whether lines go into none of some solids, asked often: what stopped the line before is tried first.
 *
 * @throws Refusal when a solid does not lie along the axes
 */
export function freeLines(solids: readonly Solid[]): (from: Vector3, to: Vector3) => boolean {
  const targets = solids.map((solid) => placed(solid));
  let last: Placed | undefined;
  return (from, to) => {
    if (last && isMet(from, to, last)) return false;
    const hit = targets.find((target) => isMet(from, to, target));
    last = hit ?? last;
    return hit === undefined;
  };
}

function isMet(from: Vector3, to: Vector3, solid: Placed): boolean {
  const { low, high } = solid;
  let [start, end] = [0, 1];
  // From which to which share of it the line lies within the box round the solid.
  for (const i of axes) {
    const way = to[i] - from[i];
    if (Math.abs(way) < 1e-12) {
      if (from[i] <= low[i] + contact || from[i] >= high[i] - contact) return false;
      continue;
    }
    const [a, b] = [(low[i] - from[i]) / way, (high[i] - from[i]) / way];
    if (a < b) {
      if (a > start) start = a;
      if (b < end) end = b;
    } else {
      if (b > start) start = b;
      if (a < end) end = a;
    }
    if (end <= start) return false;
  }
  const length = Math.sqrt((to[0] - from[0]) ** 2 + (to[1] - from[1]) ** 2 + (to[2] - from[2]) ** 2);
  if ((end - start) * length <= contact) return false;
  const { rings, isBox } = solid.region();
  if (isBox) return true;
  const [u, v] = [after(solid.normal), before(solid.normal)];
  for (let i = 0; i < tries; i++) {
    const share = start + ((end - start) * (i + 0.5)) / tries;
    const at = { x: from[u] + share * (to[u] - from[u]), y: from[v] + share * (to[v] - from[v]) };
    if (rings.every((ring, n) => isInside(ring, at) === (n === 0))) return true;
  }
  return false;
}

function isInside(ring: readonly Point2[], { x, y }: Point2): boolean {
  let inside = false;
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] ?? a;
    if (a.y > y !== b.y > y && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)) inside = !inside;
  }
  return inside;
}
