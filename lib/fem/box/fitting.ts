/**
 * A piece of hardware on a box: it is held by its fasteners, so it moves as they do on average, and what pulls at it
 * pulls at them. The mean is that of least squares over movements and, in the plane of the sheet, turns (the
 * interpolation constraint of general-purpose solvers), so that a rigid movement is met exactly and a force is shared
 * out in balance.
 */

import { add as addTo, at as entry, sumOf, under } from "../../algebra/lists.js";
import {
  axes,
  crossProduct,
  difference,
  inverse,
  type Matrix3,
  matrix3,
  scalarProduct,
  unitVector,
  vector3,
} from "../../algebra/matrix3.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { spaceDofs } from "../element/index.js";
import { locate } from "../panel/index.js";
import type { BoxSpot, FaceName } from "./box-problem.js";
import { frames, onFace } from "./box-problem.js";
import type { BoxStructure } from "./meshed-box.js";

/** Places of fasteners on one face, in the face's own axes. */
export interface FaceSpots {
  /** The face they are on. */
  readonly face: FaceName;
  /** Their places on it, m. */
  readonly spots: readonly Point2[];
}

/** A piece of hardware at its place. */
export interface Fitting {
  /** What messages call it. */
  readonly name: string;
  /** Where its movement is told and forces act, in the box. */
  readonly at: BoxSpot;
  /** Degrees of freedom of the box it moves with. */
  readonly dofs: Int32Array;
  /** Its movement along x, y, z and turns about them from those degrees of freedom: six rows, one after another. */
  readonly motion: Float64Array;
}

/** How a fastener's place moves with the degrees of freedom of its element. */
interface Fastener {
  /** Its place in the box. */
  readonly spot: BoxSpot;
  /** Nodes of the element it is in, by their numbers in the box. */
  readonly nodes: Int32Array;
  /** How much each of those nodes counts; they add up to 1. */
  readonly weights: Float64Array;
  /** Axis across the sheet, about which a sheet has no turn of its own. */
  readonly across: 0 | 1 | 2;
}

/**
 * Lays a fitting on a box.
 *
 * @param structure the box
 * @param name what messages call it
 * @param on its fasteners
 * @param at where forces act on it, in the box; it need not touch a face
 * @throws Refusal that names the fitting when a fastener is on no material, or they do not hold it every way
 */
export function fittingOn(
  structure: BoxStructure,
  name: string,
  on: readonly FaceSpots[],
  at: BoxSpot,
): Fitting {
  const fasteners = on.flatMap((spots) => fastenersOn(structure, name, spots));
  const middle = meanOf(fasteners.map(({ spot }) => spot));
  const arms = fasteners.map(({ spot }) => difference(spot, middle));
  const lever = arms.reduce((sum, arm) => sum + scalarProduct(arm, arm), 0) / arms.length;
  if (!(lever > 1e-12))
    throw new Refusal(`${structure.problem.name}, ${name}: two fasteners apart from each other are needed`);
  const dofs = dofsOf(fasteners);
  const columns = new Map([...dofs].map((dof, column) => [dof, column]));
  const motion = new Float64Array(spaceDofs * dofs.length);
  const add = (row: number, node: number, kind: number, value: number): void => {
    addTo(motion, row * dofs.length + under(columns, spaceDofs * node + kind), value);
  };
  const turnFrom = inverse(turnWeights(fasteners, arms, lever));
  fasteners.forEach(({ nodes, weights, across }, i) => {
    const arm = entry(arms, i);
    nodes.forEach((node, k) => {
      const weight = entry(weights, k);
      for (const axis of axes) {
        add(axis, node, axis, weight / fasteners.length);
        // What a movement along the axis, and a turn about it, say of the three turns.
        const moved = crossProduct(arm, unitVector(axis));
        for (const row of axes) {
          add(3 + row, node, axis, weight * scalarProduct(turnFrom[row], moved));
          if (axis !== across) add(3 + row, node, 3 + axis, weight * lever * turnFrom[row][axis]);
        }
      }
    });
  });
  carryTo(motion, dofs.length, difference(at, middle));
  return { name, at, dofs, motion };
}

/** @throws Refusal that names the fitting when its face is open or a fastener is on no material */
function fastenersOn(
  { problem, faces }: BoxStructure,
  name: string,
  { face, spots }: FaceSpots,
): readonly Fastener[] {
  const meshed = faces.find((one) => one.name === face);
  if (!meshed) throw new Refusal(`${problem.name}, ${name}: its face ${face} is open`);
  return spots.map((spot) => {
    try {
      const { nodes, weights } = locate(meshed.mesh, spot);
      return {
        spot: onFace(problem, face, spot),
        nodes: nodes.map((node) => entry(meshed.numbers, node)),
        weights,
        across: frames[face].axes[2],
      };
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      const place = [spot.x, spot.y].map((at) => (1000 * at).toFixed(0)).join(", ");
      throw new Refusal(`${problem.name}, ${name}: ${place} mm of ${face} is no material`);
    }
  });
}

/** Movements of the fasteners' nodes, and the turns that their sheets have. */
function dofsOf(fasteners: readonly Fastener[]): Int32Array {
  const found = new Set<number>();
  for (const { nodes, across } of fasteners)
    for (const node of nodes)
      for (let kind = 0; kind < spaceDofs; kind++)
        if (kind !== 3 + across) found.add(spaceDofs * node + kind);
  return Int32Array.from(found);
}

/** The normal matrix of least squares for the three turns. */
function turnWeights(fasteners: readonly Fastener[], arms: readonly BoxSpot[], lever: number): Matrix3 {
  return matrix3((i, j) =>
    sumOf(arms.entries(), ([k, arm]) => {
      const own = i === j ? scalarProduct(arm, arm) + (entry(fasteners, k).across === i ? 0 : lever) : 0;
      return own - arm[i] * arm[j];
    }),
  );
}

/** Adds turn times arm to the movement, so that it is that of a place beside the fasteners' middle. */
function carryTo(motion: Float64Array, columns: number, arm: BoxSpot): void {
  for (let column = 0; column < columns; column++) {
    const turn = vector3((axis) => entry(motion, (3 + axis) * columns + column));
    crossProduct(turn, arm).forEach((more, axis) => {
      addTo(motion, axis * columns + column, more);
    });
  }
}

/** The same piece of hardware, with forces that act on it elsewhere, in the box. */
export function actedOnAt(fitting: Fitting, at: BoxSpot): Fitting {
  const motion = fitting.motion.slice();
  carryTo(motion, fitting.dofs.length, difference(at, fitting.at));
  return { ...fitting, at, motion };
}

function meanOf(spots: readonly BoxSpot[]): BoxSpot {
  return vector3((axis) => sumOf(spots, (spot) => spot[axis]) / spots.length);
}

/** How a fitting moves: along x, y, z, m, and turns about them, rad. */
export function fittingMotion({ dofs, motion }: Fitting, displacement: Float64Array): Float64Array {
  const result = new Float64Array(spaceDofs);
  for (let row = 0; row < spaceDofs; row++)
    dofs.forEach((dof, i) => {
      addTo(result, row, entry(motion, row * dofs.length + i) * entry(displacement, dof));
    });
  return result;
}

/** What pulls at a fitting, as its fasteners share it out. */
export interface Pull {
  /** Degrees of freedom of the box. */
  readonly dofs: Int32Array;
  /** The force on each, N or N m. */
  readonly forces: Float64Array;
}

/** What a force at a fitting along x, y, z, N, and a moment about them, N m, share out to its fasteners. */
export function pullOn({ dofs, motion }: Fitting, force: BoxSpot, moment: BoxSpot = [0, 0, 0]): Pull {
  const forces = new Float64Array(dofs.length);
  [...force, ...moment].forEach((share, row) => {
    for (let i = 0; i < dofs.length; i++) addTo(forces, i, share * entry(motion, row * dofs.length + i));
  });
  return { dofs, forces };
}

/**
 * Adds to the forces on a box what a force on a fitting shares out to its fasteners.
 *
 * @param load on all degrees of freedom of the box
 * @param fitting pulled at
 * @param force along x, y, z, N
 * @param moment about x, y, z, N m
 */
export function pullAt(load: Float64Array, fitting: Fitting, force: BoxSpot, moment?: BoxSpot): void {
  addPull(load, pullOn(fitting, force, moment));
}

/** Adds a pull to the forces on all degrees of freedom of its box. */
export function addPull(load: Float64Array, { dofs, forces }: Pull): void {
  dofs.forEach((dof, i) => {
    addTo(load, dof, entry(forces, i));
  });
}
