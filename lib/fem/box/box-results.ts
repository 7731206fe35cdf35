/** What a moved box shows. */
import type { BoxSpot } from "./box-problem.js";
import { boxFreedoms } from "./box-structure.js";
import type { BoxForce, MovedBox } from "./solve-box.js";

/** How a place has moved, m. */
export function movementAt({ structure: { nodes }, displacement }: MovedBox, spot: BoxSpot): BoxSpot {
  const away = (node: BoxSpot): number => Math.hypot(...node.map((at, axis) => at - spot[axis]!));
  const nearest = nodes.reduce((best, node, i) => (away(node) < away(nodes[best]!) ? i : best), 0);
  const [x = 0, y = 0, z = 0] = displacement.subarray(boxFreedoms * nearest, boxFreedoms * nearest + 3);
  return [x, y, z];
}

/** The farthest any place has moved, m. */
export function farthestMovement({ structure: { nodes }, displacement }: MovedBox): number {
  return nodes.reduce((most, _, node) => {
    const from = boxFreedoms * node;
    return Math.max(most, Math.hypot(displacement[from]!, displacement[from + 1]!, displacement[from + 2]!));
  }, 0);
}

/** How far a force has moved in its own direction, averaged over where it acts, m: its work over its size. */
export function wayOfForce({ displacement }: MovedBox, { on, force }: BoxForce): number {
  const work = on.nodes.reduce(
    (sum, node, i) =>
      sum +
      force.reduce(
        (part, each, axis) => part + on.shares[i]! * each * displacement[boxFreedoms * node + axis]!,
        0,
      ),
    0,
  );
  return work / Math.hypot(...force);
}
