/**
 * Edges that give: springs between the two faces that meet, spread along the edge, and what their fasteners carry.
 */

import { add, at as entry } from "../../algebra/lists.js";
import { vector3 } from "../../algebra/matrix3.js";
import { memoize } from "../../kept/index.js";
import { Refusal } from "../../refusal.js";
import { lineThree, sideShapes, spaceDofs } from "../element/index.js";
import type { Piece } from "../solve/index.js";
import {
  type BoxProblem,
  type BoxSeam,
  type BoxSpot,
  extents,
  type FaceName,
  frames,
} from "./box-problem.js";
import { type BoxStructure, type LineSide, type MeshedFace, sidesAlong } from "./meshed-box.js";

/** A side of a seam: the nodes of both faces, in the same order. */
export interface SeamSide extends LineSide {
  /** Those of the seam's second face; `nodes` are those of the first. */
  readonly others: readonly [number, number, number];
}

/** A seam laid along its edge of the box. */
export interface LaidSeam {
  /** The seam as it was described. */
  readonly seam: BoxSeam;
  /** The axis it runs along. */
  readonly axis: 0 | 1 | 2;
  /** The sides of elements along it, in order. */
  readonly sides: readonly SeamSide[];
}

/**
 * Finds the sides of a seam.
 *
 * @throws Refusal that names the faces when they do not touch
 */
export function laidSeam(
  { problem, nodes, faces }: Pick<BoxStructure, "problem" | "nodes" | "faces">,
  seam: BoxSeam,
): LaidSeam {
  const [one, other] = [
    faceOf(problem, faces, seam.faces[0]),
    faceOf(problem, faces, seam.faces[1]),
  ] as const;
  const { axis, from, to } = edgeBetween(problem, seam.faces);
  const mates = sidesAlong(nodes, other, from, to);
  const sides = sidesAlong(nodes, one, from, to).flatMap((side): SeamSide[] => {
    const mate = mates.find(({ along }) => Math.abs(along - side.along) < 1e-6 * side.length);
    return mate ? [{ ...side, others: mate.nodes }] : [];
  });
  if (sides.length === 0)
    throw new Refusal(`${problem.name}: nothing is left of the seam of ${seam.faces.join(" and ")}`);
  return { seam, axis, sides };
}

/** A seam of a box as it was laid, once for all load cases. */
const keptSeam = memoize((structure: BoxStructure, seam: BoxSeam) => laidSeam(structure, seam));

/** @throws Refusal that names the face when it is open */
function faceOf({ name: box }: BoxProblem, faces: readonly MeshedFace[], name: FaceName): MeshedFace {
  const face = faces.find((one) => one.name === name);
  if (!face) throw new Refusal(`${box}: a seam needs face ${name}, which is open`);
  return face;
}

/**
 * The edge of the box where two faces meet.
 *
 * @throws Refusal that names the faces when they do not touch
 */
export function edgeBetween(
  problem: BoxProblem,
  [one, other]: readonly [FaceName, FaceName],
): { readonly axis: 0 | 1 | 2; readonly from: BoxSpot; readonly to: BoxSpot } {
  const across = [one, other].map((name) => frames[name].axes[2]);
  const size = extents(problem);
  if (across[0] === across[1]) {
    const apart = one === other ? 0 : size[entry(across, 0)];
    throw new Refusal(
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
 * @throws Refusal for a stiffness that is negative or no number
 */
export function seamSprings(nodes: readonly BoxSpot[], { seam, axis, sides }: LaidSeam): readonly Piece[] {
  for (const field of ["slip", "opening", "rotational"] as const)
    if (!(seam[field] >= 0 && seam[field] < Infinity))
      throw new Refusal(
        `seam of ${seam.faces.join(" and ")}: ${field} must not be negative, got ${seam[field]}`,
      );
  const across = ([0, 1, 2] as const).map((way) => (way === axis ? seam.slip : seam.opening));
  return sides.map((side) => ({
    dofs: Int32Array.from(
      [...side.nodes, ...side.others].flatMap((node) =>
        [0, 1, 2, 3 + axis].map((dof) => spaceDofs * node + dof),
      ),
    ),
    matrix: sideMatrix(side.length, [...across, seam.rotational]),
    middle: entry(nodes, side.nodes[1]),
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
          add(matrix, (kinds * i + kind) * rows + kinds * j + kind, (each * weight * length * a * b) / 2);
        });
      });
    });
  }
  return matrix;
}

/** Force on each metre at a place of a seam, with which its first face holds the second. */
export interface SeamFlow {
  /** The place, in the box. */
  readonly at: BoxSpot;
  /** What of the seam's length it stands for, m. */
  readonly length: number;
  /** Along x, y, z of the box, N/m. */
  readonly force: BoxSpot;
  /**
   * What fasteners carry of it, N/m: slip and opening. Where the edges press on each other they bear by themselves.
   */
  readonly carried: number;
}

/** Places looked at on each side of an element. */
const samples = 6;

/**
 * Forces along a seam, place by place from its low end.
 *
 * @param structure of the box
 * @param displacement of all its degrees of freedom
 * @param seam one of the box's own
 */
export function seamFlows(
  structure: BoxStructure,
  displacement: Float64Array,
  seam: BoxSeam,
): readonly SeamFlow[] {
  const { axis, sides } = keptSeam(structure, seam);
  return sides.flatMap((side) =>
    Array.from({ length: samples }, (_, i): SeamFlow => {
      const shapes = meanShapes((2 * i) / samples - 1, (2 * i + 2) / samples - 1);
      const at = placeOn(structure.nodes, side, shapes);
      const gap = gapAt(displacement, side, shapes);
      const force = vector3((way) => (way === axis ? seam.slip : seam.opening) * gap[way]);
      return { at, length: side.length / samples, force, carried: carriedOf(seam, axis, force) };
    }),
  );
}

/** Means of the parabolas over a part of a side, by Simpson's rule, which is exact for them. */
function meanShapes(from: number, to: number): readonly number[] {
  const [low, middle, high] = [from, (from + to) / 2, to].map(sideShapes);
  return low!.map((value, k) => (value + 4 * entry(middle!, k) + entry(high!, k)) / 6);
}

function placeOn(nodes: readonly BoxSpot[], side: SeamSide, shapes: readonly number[]): BoxSpot {
  const along = (axis: 0 | 1 | 2): number =>
    shapes.reduce((sum, shape, k) => sum + shape * entry(nodes, entry(side.nodes, k))[axis], 0);
  return [along(0), along(1), along(2)];
}

/** How far the first face has moved past the second. */
function gapAt(displacement: Float64Array, { nodes, others }: SeamSide, shapes: readonly number[]): BoxSpot {
  const way = (axis: 0 | 1 | 2): number =>
    shapes.reduce((sum, shape, k) => {
      const [own, other] = [entry(nodes, k), entry(others, k)].map((node) =>
        entry(displacement, spaceDofs * node + axis),
      );
      return sum + shape * (own! - other!);
    }, 0);
  return [way(0), way(1), way(2)];
}

function carriedOf({ faces: [one, other] }: BoxSeam, axis: 0 | 1 | 2, force: BoxSpot): number {
  // The first face pulls the second outwards only where that has moved in; the second the first likewise.
  const opening = [Math.max(0, outwards(one, force)), Math.max(0, -outwards(other, force))];
  return Math.hypot(force[axis], ...opening);
}

/** The part of a force that points out of the box through a face. */
function outwards(face: FaceName, force: BoxSpot): number {
  const { axes, far } = frames[face];
  return far ? force[axes[2]] : -force[axes[2]];
}

/** What the fasteners of a seam carry on each metre, N/m. */
export interface SeamLoad {
  /** Over its whole length. */
  readonly mean: number;
  /** Over the pitch where most is carried: what the most loaded fastener takes, over the pitch. */
  readonly peak: number;
  /** Where that is. */
  readonly at: BoxSpot;
}

/**
 * Sums up a seam.
 *
 * @param flows along it
 * @param pitch of its fasteners, m
 */
export function seamLoad(flows: readonly SeamFlow[], pitch: number): SeamLoad {
  const whole = flows.reduce((sum, { length }) => sum + length, 0);
  const total = flows.reduce((sum, { carried, length }) => sum + carried * length, 0);
  let most = { peak: 0, at: entry(flows, 0).at };
  // From each place on, seen from either end: a seam in a mirror carries the same.
  for (const way of [flows, flows.toReversed()])
    way.forEach((_, first) => {
      const { mean, middle } = overPitch(way, first, Math.min(pitch, whole));
      if (mean > most.peak) most = { peak: mean, at: middle.at };
    });
  return { mean: total / whole, ...most };
}

/** Mean of what is carried over a pitch from a place on; less than a pitch at the end counts for nothing. */
function overPitch(
  flows: readonly SeamFlow[],
  first: number,
  pitch: number,
): { readonly mean: number; readonly middle: SeamFlow } {
  let [sum, left, last] = [0, pitch, first];
  while (last < flows.length && left > 1e-12 * pitch) {
    const part = Math.min(left, entry(flows, last).length);
    sum += part * entry(flows, last).carried;
    left -= part;
    last++;
  }
  return {
    mean: left > 1e-9 * pitch ? 0 : sum / pitch,
    middle: entry(flows, Math.floor((first + last - 1) / 2)),
  };
}
