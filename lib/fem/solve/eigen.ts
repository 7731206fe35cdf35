/**
 * Lowest natural frequencies and buckling loads: Lanczos' iteration on K^-1 B in the energy product, with full
 * re-orthogonalisation (B. N. Parlett, The Symmetric Eigenvalue Problem, ch. 13 and 15).
 */

import { symmetricEigen } from "../../algebra/eigenvalues.js";
import { add, at as entry } from "../../algebra/lists.js";
import { type Piece, timesPieces } from "./piece.js";
import type { Factors } from "./substitute.js";
import { displacementsUnder } from "./substitute.js";

/** A shape in which K x = value B x. */
export interface Mode {
  /** The factor of B: a frequency squared, or a multiple of the load. */
  readonly value: number;
  /** One value a degree of freedom, largest 1. */
  readonly shape: Float64Array;
}

/** Steps of the iteration: some ten for each mode asked for. */
const stepsFor = (count: number): number => 14 + 5 * count;

/**
 * The lowest positive values for which K x = value B x.
 *
 * @param factors of K
 * @param pieces of B: mass, or minus the geometric stiffness
 * @param count how many
 * @returns lowest first; fewer when B has fewer
 */
export function lowestModes(factors: Factors, pieces: readonly Piece[], count: number): readonly Mode[] {
  const basis: Float64Array[] = [];
  /** K times each vector of the basis. */
  const pulls: Float64Array[] = [];
  const steps = Math.min(
    stepsFor(count),
    factors.held.reduce((sum, held) => sum + (held ? 0 : 1), 0),
  );
  const projected: number[][] = [];
  let pull = heldOut(factors, startVector(factors.held.length));
  let next = displacementsUnder(factors, pull);
  for (let step = 0; step < steps; step++) {
    for (let pass = 0; pass < 2; pass++) orthogonalise(next, pull, basis, pulls);
    const length = Math.sqrt(Math.max(0, dot(next, pull)));
    if (!(length > 1e-12)) break;
    basis.push(next.map((value) => value / length));
    pulls.push(pull.map((value) => value / length));
    const newest = entry(basis, step);
    pull = heldOut(factors, timesPieces(pieces, newest));
    projected.push(basis.map((vector) => dot(vector, pull)));
    next = displacementsUnder(factors, pull);
  }
  return modesOf(projected, basis, count);
}

function modesOf(projected: readonly number[][], basis: readonly Float64Array[], count: number): Mode[] {
  const size = basis.length;
  const full = Float64Array.from({ length: size * size }, (_, at) => {
    const [row, column] = [Math.floor(at / size), at % size];
    return entry(entry(projected, Math.max(row, column)), Math.min(row, column));
  });
  const { values, vectors } = symmetricEigen(full, size);
  const scale = Math.max(...values.map(Math.abs));
  return values
    .map((inverse, i) => ({ inverse, i }))
    .filter(({ inverse }) => inverse > 1e-10 * scale)
    .sort((a, b) => b.inverse - a.inverse)
    .slice(0, count)
    .map(({ inverse, i }) => ({ value: 1 / inverse, shape: combined(basis, vectors, i) }));
}

function combined(basis: readonly Float64Array[], vectors: Float64Array, column: number): Float64Array {
  const size = basis.length;
  const shape = new Float64Array(entry(basis, 0).length);
  basis.forEach((vector, row) => {
    const share = entry(vectors, row * size + column);
    for (let i = 0; i < shape.length; i++) add(shape, i, share * entry(vector, i));
  });
  const largest = shape.reduce((most, value) => (Math.abs(value) > Math.abs(most) ? value : most), 0);
  return shape.map((value) => value / largest);
}

function orthogonalise(
  vector: Float64Array,
  pull: Float64Array,
  basis: readonly Float64Array[],
  pulls: readonly Float64Array[],
): void {
  basis.forEach((known, i) => {
    const knownPull = entry(pulls, i);
    const share = dot(vector, knownPull);
    for (let k = 0; k < vector.length; k++) {
      vector[k]! -= share * known[k]!;
      pull[k]! -= share * knownPull[k]!;
    }
  });
}

/** A start without symmetry, the same every time. */
function startVector(size: number): Float64Array {
  return Float64Array.from({ length: size }, (_, i) => Math.sin(1 + 12.9898 * i) + 0.3);
}

function heldOut({ held }: Factors, vector: Float64Array): Float64Array {
  return vector.map((value, dof) => (held[dof] ? 0 : value));
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
