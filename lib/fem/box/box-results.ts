/** What a moved box shows. */
import type { QuadMesh } from "../mesh/index.js";
import { timesPieces } from "../solve/index.js";
import { type BoxSpot, type FaceName, frames } from "./box-problem.js";
import { boxFreedoms, piecesOf } from "./box-structure.js";
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

/** Energy that a box stores in its sheets, seams and beams, N m; springs added when it was factored are left out. */
export function storedEnergy({ structure, displacement }: MovedBox): number {
  return half(displacement, timesPieces(piecesOf(structure), displacement));
}

function half(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * b[i]!, 0) / 2;
}

/** With what the supports push back in all, along x, y, z, N. */
export function heldUp({ structure, displacement, forces, factors }: MovedBox): BoxSpot {
  const carried = timesPieces(piecesOf(structure), displacement);
  for (const { on, force } of forces)
    on.nodes.forEach((node, i) => {
      for (const axis of [0, 1, 2] as const)
        carried[boxFreedoms * node + axis]! -= on.shares[i]! * force[axis];
    });
  const sum = (axis: number): number =>
    carried.reduce(
      (total, value, freedom) =>
        total + (factors.held[freedom] && freedom % boxFreedoms === axis ? value : 0),
      0,
    );
  return [sum(0), sum(1), sum(2)];
}

/**
 * The largest deflection of a face across its own plane, measured from a plane (or saddle) through its four corners.
 *
 * @param name of the face
 * @returns m, as a size
 */
export function sagBetweenCorners(
  { structure, displacement }: Pick<MovedBox, "structure" | "displacement">,
  name: FaceName,
): number {
  const face = structure.faces.find((one) => one.name === name);
  if (!face) throw new RangeError(`${structure.problem.name}: there is no face ${name}`);
  const { axes } = frames[name];
  const across = (node: number): number => displacement[boxFreedoms * face.numbers[node]! + axes[2]]!;
  const { x, y } = face.mesh;
  const [length, width] = [Math.max(...x), Math.max(...y)];
  const corners = [0, 1].map((high) =>
    [0, 1].map((far) => across(nearest(face.mesh, far * length, high * width))),
  );
  let most = 0;
  for (let node = 0; node < x.length; node++) {
    const [a, b] = [x[node]! / length, y[node]! / width];
    const chord = corners.reduce(
      (sum, row, high) =>
        sum + row.reduce((part, value, far) => part + value * (far ? a : 1 - a), 0) * (high ? b : 1 - b),
      0,
    );
    most = Math.max(most, Math.abs(across(node) - chord));
  }
  return most;
}

function nearest({ x, y }: QuadMesh, atX: number, atY: number): number {
  let best = 0;
  for (let node = 0; node < x.length; node++)
    if (Math.hypot(x[node]! - atX, y[node]! - atY) < Math.hypot(x[best]! - atX, y[best]! - atY)) best = node;
  return best;
}
