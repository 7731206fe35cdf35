/** What the fasteners of a seam carry. */
import { sideShapes, spaceFreedoms } from "../element/index.js";
import { type BoxSeam, type BoxSpot, type FaceName, frames } from "./box-problem.js";
import type { BoxStructure } from "./box-structure.js";
import { laidSeam, type SeamSide } from "./seam-springs.js";

/** Force on each metre at a place of a seam, with which its first face holds the second. */
export interface SeamFlow {
  readonly at: BoxSpot;
  /** What of the seam's length it stands for, m. */
  readonly length: number;
  /** Along x, y, z of the box, N/m. */
  readonly force: BoxSpot;
  /** What fasteners carry of it, N/m: slip and parting. Where the edges press on each other they bear by themselves. */
  readonly carried: number;
}

/** Places looked at on each side of an element. */
const samples = 6;

/**
 * Forces along a seam, place by place from its low end.
 *
 * @param structure of the box
 * @param displacement of all its freedoms
 * @param seam one of the box's own
 */
export function seamFlows(
  structure: BoxStructure,
  displacement: Float64Array,
  seam: BoxSeam,
): readonly SeamFlow[] {
  const { axis, sides } = laidSeam(structure, seam);
  return sides.flatMap((side) =>
    Array.from({ length: samples }, (_, i): SeamFlow => {
      const shapes = meanShapes((2 * i) / samples - 1, (2 * i + 2) / samples - 1);
      const at = placeOn(structure.nodes, side, shapes);
      const force = gapAt(displacement, side, shapes).map(
        (gap, way) => (way === axis ? seam.slip : seam.parting) * gap,
      ) as unknown as BoxSpot;
      return { at, length: side.length / samples, force, carried: carriedOf(seam, axis, force) };
    }),
  );
}

/** Means of the parabolas over a part of a side, by Simpson's rule, which is exact for them. */
function meanShapes(from: number, to: number): readonly number[] {
  const [low, middle, high] = [from, (from + to) / 2, to].map(sideShapes);
  return low!.map((value, k) => (value + 4 * middle![k]! + high![k]!) / 6);
}

function placeOn(nodes: readonly BoxSpot[], side: SeamSide, shapes: readonly number[]): BoxSpot {
  const along = (axis: 0 | 1 | 2): number =>
    shapes.reduce((sum, shape, k) => sum + shape * nodes[side.nodes[k]!]![axis], 0);
  return [along(0), along(1), along(2)];
}

/** How far the first face has moved past the second. */
function gapAt(displacement: Float64Array, { nodes, others }: SeamSide, shapes: readonly number[]): BoxSpot {
  const way = (axis: 0 | 1 | 2): number =>
    shapes.reduce((sum, shape, k) => {
      const [own, other] = [nodes[k]!, others[k]!].map((node) => displacement[spaceFreedoms * node + axis]!);
      return sum + shape * (own! - other!);
    }, 0);
  return [way(0), way(1), way(2)];
}

function carriedOf({ faces: [one, other] }: BoxSeam, axis: 0 | 1 | 2, force: BoxSpot): number {
  // The first face pulls the second outwards only where that has moved in; the second the first likewise.
  const parting = [Math.max(0, outwards(one, force)), Math.max(0, -outwards(other, force))];
  return Math.hypot(force[axis], ...parting);
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
  let most = { peak: 0, at: flows[0]!.at };
  flows.forEach((_, first) => {
    const { mean, middle } = overPitch(flows, first, Math.min(pitch, whole));
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
    const part = Math.min(left, flows[last]!.length);
    sum += part * flows[last]!.carried;
    left -= part;
    last++;
  }
  return { mean: left > 1e-9 * pitch ? 0 : sum / pitch, middle: flows[Math.floor((first + last - 1) / 2)]! };
}
