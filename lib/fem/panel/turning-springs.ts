/** An edge that turns against a stiffness: a riveted extrusion. */
import { freedomsPerNode, lineThree, sideShapes } from "../element/index.js";
import type { QuadMesh, Side } from "../mesh/index.js";
import type { Piece } from "../solve/index.js";

/**
 * One piece a side: the turn about the side against a stiffness.
 *
 * @param mesh of the panel
 * @param sides straight sides of the rim
 * @param turning N m a radian on each metre
 */
export function turningSprings(mesh: QuadMesh, sides: readonly Side[], turning: number): readonly Piece[] {
  return sides.map((side) => {
    const [first, , last] = side;
    const [dx, dy] = [mesh.x[last]! - mesh.x[first]!, mesh.y[last]! - mesh.y[first]!];
    const length = Math.hypot(dx, dy);
    // The fibre's turn across the side: its share of bx and of by.
    const normal = [-dy / length, dx / length];
    const row = (at: number): number[] => sideShapes(at).flatMap((shape) => normal.map((n) => n * shape));
    const matrix = new Float64Array(36);
    for (const { at, weight } of lineThree) {
      const values = row(at);
      values.forEach((a, i) => {
        values.forEach((b, j) => {
          matrix[6 * i + j]! += (turning * weight * length * a * b) / 2;
        });
      });
    }
    return {
      freedoms: Int32Array.from(
        side.flatMap((node) => [freedomsPerNode * node + 3, freedomsPerNode * node + 4]),
      ),
      matrix,
      middle: [mesh.x[side[1]]!, mesh.y[side[1]]!, 0],
    };
  });
}

/** How a force of 1 spread along sides is shared among their nodes: both ends a sixth, the middle two thirds. */
export function sideShares(mesh: QuadMesh, sides: readonly Side[]): ReadonlyMap<number, number> {
  const lengths = sides.map(([a, , b]) => Math.hypot(mesh.x[b]! - mesh.x[a]!, mesh.y[b]! - mesh.y[a]!));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const shares = new Map<number, number>();
  sides.forEach((side, i) => {
    side.forEach((node, k) => {
      const share = ((k === 1 ? 2 / 3 : 1 / 6) * lengths[i]!) / total;
      shares.set(node, (shares.get(node) ?? 0) + share);
    });
  });
  return shares;
}
