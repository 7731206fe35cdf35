/** Beams along the lines of a box's mesh. */
import { beamMatrix, spaceFreedoms } from "../element/index.js";
import type { Piece } from "../solve/index.js";
import type { BoxBeam } from "./box-problem.js";
import type { BoxStructure } from "./box-structure.js";
import { distance, sidesAlong } from "./line-sides.js";

/**
 * The pieces of a beam, one a side of the face's elements.
 *
 * @throws RangeError that names the beam when it runs along no axis, or where there is no material
 */
export function beamPieces(
  { problem, nodes, faces }: Pick<BoxStructure, "problem" | "nodes" | "faces">,
  beam: BoxBeam,
): readonly Piece[] {
  const { name, on, from, to, section } = beam;
  const words = `${problem.name}, ${name}`;
  const runs = ([0, 1, 2] as const).filter((axis) => Math.abs(to[axis] - from[axis]) > 1e-9);
  const [axis] = runs;
  if (axis === undefined || runs.length > 1) throw new RangeError(`${words}: a beam must run along an axis`);
  const face = faces.find((one) => one.name === on);
  if (!face) throw new RangeError(`${words}: its face ${on} is open`);
  const sides = sidesAlong(nodes, face, from, to);
  const covered = sides.reduce((sum, { length }) => sum + length, 0);
  const missing = distance(from, to) - covered;
  if (missing > 1e-6 * covered)
    throw new RangeError(`${words}: ${(1000 * missing).toFixed(0)} mm of it touch no material of ${on}`);
  return sides.map(({ nodes: own, length }) => ({
    freedoms: Int32Array.from(
      own.flatMap((node) => Array.from({ length: spaceFreedoms }, (_, kind) => spaceFreedoms * node + kind)),
    ),
    matrix: beamMatrix(axis, length, section),
    middle: nodes[own[1]]!,
  }));
}
