/** Edges that give: springs between the two faces that meet, spread along the edge. */
import { lineThree, sideShapes, spaceFreedoms } from "../element/index.js";
import type { Piece } from "../solve/index.js";
import {
  type BoxProblem,
  type BoxSeam,
  type BoxSpot,
  extents,
  type FaceName,
  frames,
} from "./box-problem.js";
import type { BoxStructure, MeshedFace } from "./box-structure.js";
import { type LineSide, sidesAlong } from "./line-sides.js";

/** A side of a seam: the nodes of both faces, in the same order. */
export interface SeamSide extends LineSide {
  /** Those of the seam's second face; `nodes` are those of the first. */
  readonly others: readonly [number, number, number];
}

/** A seam laid along its edge of the box. */
export interface LaidSeam {
  readonly seam: BoxSeam;
  /** The axis it runs along. */
  readonly axis: 0 | 1 | 2;
  readonly sides: readonly SeamSide[];
}

/**
 * Finds the sides of a seam.
 *
 * @throws RangeError that names the faces when they do not touch
 */
export function laidSeam(
  { problem, nodes, faces }: Pick<BoxStructure, "problem" | "nodes" | "faces">,
  seam: BoxSeam,
): LaidSeam {
  const [one, other] = seam.faces.map((name) => faceOf(problem, faces, name)) as [MeshedFace, MeshedFace];
  const { axis, from, to } = edgeBetween(problem, seam.faces);
  const mates = sidesAlong(nodes, other, from, to);
  const sides = sidesAlong(nodes, one, from, to).flatMap((side): SeamSide[] => {
    const mate = mates.find(({ along }) => Math.abs(along - side.along) < 1e-6 * side.length);
    return mate ? [{ ...side, others: mate.nodes }] : [];
  });
  if (sides.length === 0)
    throw new RangeError(`${problem.name}: nothing is left of the seam of ${seam.faces.join(" and ")}`);
  return { seam, axis, sides };
}

function faceOf({ name: box }: BoxProblem, faces: readonly MeshedFace[], name: FaceName): MeshedFace {
  const face = faces.find((one) => one.name === name);
  if (!face) throw new RangeError(`${box}: a seam needs face ${name}, which is open`);
  return face;
}

/** The edge of the box where two faces meet. */
export function edgeBetween(
  problem: BoxProblem,
  [one, other]: readonly [FaceName, FaceName],
): { readonly axis: 0 | 1 | 2; readonly from: BoxSpot; readonly to: BoxSpot } {
  const across = [one, other].map((name) => frames[name].axes[2]);
  const size = extents(problem);
  if (across[0] === across[1]) {
    const apart = one === other ? 0 : size[across[0]!];
    throw new RangeError(
      `${problem.name}: ${one} and ${other} do not touch, they are ${(1000 * apart).toFixed(0)} mm apart`,
    );
  }
  const axis = ([0, 1, 2] as const).find((each) => !across.includes(each))!;
  const end = (at: number): BoxSpot => {
    const spot: [number, number, number] = [at, at, at];
    for (const name of [one, other]) {
      const { axes, far } = frames[name];
      spot[axes[2]] = far ? size[axes[2]] : 0;
    }
    return spot;
  };
  return { axis, from: end(0), to: end(size[axis]) };
}

/** What a seam resists at a node: three movements and the turn about itself; a sheet has no turn across its plane. */
const kinds = 4;
/** Three nodes of one face, then three of the other. */
const rows = 6 * kinds;

/**
 * One spring a side.
 *
 * @throws RangeError for a stiffness that is negative or no number
 */
export function seamSprings(nodes: readonly BoxSpot[], { seam, axis, sides }: LaidSeam): readonly Piece[] {
  for (const field of ["slip", "parting", "turning"] as const)
    if (!(seam[field] >= 0 && seam[field] < Infinity))
      throw new RangeError(
        `seam of ${seam.faces.join(" and ")}: ${field} must not be negative, got ${seam[field]}`,
      );
  const across = ([0, 1, 2] as const).map((way) => (way === axis ? seam.slip : seam.parting));
  return sides.map((side) => ({
    freedoms: Int32Array.from(
      [...side.nodes, ...side.others].flatMap((node) =>
        [0, 1, 2, 3 + axis].map((freedom) => spaceFreedoms * node + freedom),
      ),
    ),
    matrix: sideMatrix(side.length, [...across, seam.turning]),
    middle: nodes[side.nodes[1]]!,
  }));
}

/** Integral of the squared gaps along a side, each kind with its stiffness. */
function sideMatrix(length: number, stiffness: readonly number[]): Float64Array {
  const matrix = new Float64Array(rows ** 2);
  for (const { at, weight } of lineThree) {
    const shapes = sideShapes(at);
    const gap = [...shapes.map((shape) => -shape), ...shapes];
    stiffness.forEach((each, kind) => {
      gap.forEach((a, i) => {
        gap.forEach((b, j) => {
          matrix[(kinds * i + kind) * rows + kinds * j + kind]! += (each * weight * length * a * b) / 2;
        });
      });
    });
  }
  return matrix;
}
