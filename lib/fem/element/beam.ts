/**
 * A beam with three nodes along a side of the shell's elements, its section beside the line it runs along: an edge
 * extrusion, a batten. Timoshenko's beam with parabolas for movements and turns and two places of integration, which
 * is the mixed interpolation that does not lock (K. J. Bathe, Finite Element Procedures, 1996, 5.4.1). The section
 * turns with its node, so that what lies aside is carried along stiffly.
 */
import { add as addTo, at as entry } from "../../algebra/lists.js";
import { Refusal } from "../../refusal.js";
import { nearHalf, sideShapes } from "./shape.js";

/** Nodes of a beam: both ends and the middle. */
const nodesPerBeam = 3;
/** Degrees of freedom of a node in space: along x, y, z and the turns about them. */
export const spaceDofs = 6;
/** Rows of a beam's matrix: node by node. */
export const beamRows: number = nodesPerBeam * spaceDofs;

/** How far a point of the section lies from the line of nodes, along the section's axes, m. */
export interface BeamOffset {
  /** Along the first axis across the beam, m. */
  readonly a: number;
  /** Along the second axis across the beam, m. */
  readonly b: number;
}

/**
 * A section in the two directions across its axis: a follows the axis, b follows a (x, y, z, x, ...). Second moments
 * are about the centroid: `aa` the integral of b^2, for turning about a.
 */
export interface BeamSection {
  /** E A, N. */
  readonly axial: number;
  /** E times the integrals of b^2, a^2 and a b about the centroid, N m2. */
  readonly bending: { readonly aa: number; readonly bb: number; readonly ab: number };
  /** G J, N m2. */
  readonly torsion: number;
  /** Stiffness against shear along a and b, any correction included, N. */
  readonly shear: { readonly a: number; readonly b: number };
  /** Where axial forces act without bending. */
  readonly centroid: BeamOffset;
  /** Where forces across act without twisting: the corner of an angle. */
  readonly shearCentre: BeamOffset;
}

/** Strains of a beam at one place, one row of 18 each. */
interface BeamStrains {
  /** Stretch of the centroid's line. */
  readonly axial: Float64Array;
  /** Curvature about the first axis, 1/m. */
  readonly bendA: Float64Array;
  /** Curvature about the second axis, 1/m. */
  readonly bendB: Float64Array;
  /** Twist on each metre, rad/m. */
  readonly twist: Float64Array;
  /** Shear along the first axis. */
  readonly shearA: Float64Array;
  /** Shear along the second axis. */
  readonly shearB: Float64Array;
}

/**
 * Stiffness of a beam with its nodes on a straight line along an axis, the middle node half way.
 *
 * @param axis it runs along: 0, 1, 2 for x, y, z
 * @param length from end to end, m
 * @param section its stiffness and where it lies
 * @throws Refusal for a length or a stiffness that is not positive, or a bending stiffness that gives way
 */
export function beamMatrix(axis: 0 | 1 | 2, length: number, section: BeamSection): Float64Array {
  refuse(length, section);
  const { axial, bending, torsion, shear } = section;
  const matrix = new Float64Array(beamRows ** 2);
  for (const at of [-nearHalf, nearHalf]) {
    const strains = beamStrains(axis, length, section, at);
    const add = (stiffness: number, left: Float64Array, right: Float64Array): void => {
      for (let i = 0; i < beamRows; i++)
        for (let j = 0; j < beamRows; j++)
          addTo(matrix, beamRows * i + j, (length / 2) * stiffness * entry(left, i) * entry(right, j));
    };
    add(axial, strains.axial, strains.axial);
    add(bending.aa, strains.bendA, strains.bendA);
    add(bending.bb, strains.bendB, strains.bendB);
    add(-bending.ab, strains.bendA, strains.bendB);
    add(-bending.ab, strains.bendB, strains.bendA);
    add(torsion, strains.twist, strains.twist);
    add(shear.a, strains.shearA, strains.shearA);
    add(shear.b, strains.shearB, strains.shearB);
  }
  return matrix;
}

/** @throws Refusal that names the size that is out of range */
function refuse(length: number, { axial, bending, torsion, shear }: BeamSection): void {
  const sizes = {
    length,
    axial,
    "bending.aa": bending.aa,
    "bending.bb": bending.bb,
    torsion,
    "shear.a": shear.a,
  };
  for (const [name, value] of Object.entries({ ...sizes, "shear.b": shear.b }))
    if (!(value > 0 && value < Infinity)) throw new Refusal(`beam: ${name} must be positive, got ${value}`);
  if (!(bending.ab ** 2 < bending.aa * bending.bb))
    throw new Refusal(`beam: bending.ab must be smaller than aa and bb allow, got ${bending.ab}`);
}

/**
 * Strains at a place of the square from -1 to 1: of the centroid's line, about a and b, of twist, and across at the
 * shear centre.
 */
function beamStrains(
  axis: 0 | 1 | 2,
  length: number,
  { centroid, shearCentre }: BeamSection,
  at: number,
): BeamStrains {
  const [a, b] = [(axis + 1) % 3, (axis + 2) % 3];
  const values = sideShapes(at);
  const slopes = [at - 1 / 2, -2 * at, at + 1 / 2].map((slope) => (2 * slope) / length);
  const row = (
    terms: readonly (readonly [dof: number, weights: readonly number[], by: number])[],
  ): Float64Array => {
    const result = new Float64Array(beamRows);
    for (const [dof, weights, by] of terms)
      weights.forEach((weight, node) => {
        addTo(result, spaceDofs * node + dof, by * weight);
      });
    return result;
  };
  const turn = (direction: number): number => 3 + direction;
  return {
    axial: row([
      [axis, slopes, 1],
      [turn(a), slopes, centroid.b],
      [turn(b), slopes, -centroid.a],
    ]),
    bendA: row([[turn(a), slopes, 1]]),
    bendB: row([[turn(b), slopes, 1]]),
    twist: row([[turn(axis), slopes, 1]]),
    // A turn about the axis moves the shear centre across; a bent line asks the section to turn with it.
    shearA: row([
      [a, slopes, 1],
      [turn(axis), slopes, -shearCentre.b],
      [turn(b), values, -1],
    ]),
    shearB: row([
      [b, slopes, 1],
      [turn(axis), slopes, shearCentre.a],
      [turn(a), values, 1],
    ]),
  };
}
