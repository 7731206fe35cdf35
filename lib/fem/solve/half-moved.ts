/**
 * Loads half solved. With the factors L of a structure (K = L L^T), the work of one load on the movement under another
 * is the product of both after substitution forwards alone: a K^-1 b = (L^-1 a) (L^-1 b). A load at a place touches few
 * fronts that way, while the movement that it makes touches all.
 */

import {
  type FactoredFront,
  type Factors,
  forwardsFour,
  isBare,
  mostEliminated,
  substituteBack,
  together,
} from "./substitute.js";

/** A load after substitution forwards, in the fronts where it left something. */
export interface HalfMoved {
  /** Numbers of the fronts, ascending. */
  readonly fronts: Int32Array;
  /** Where the values of each front begin; one more, where the last end. */
  readonly starts: Int32Array;
  /** Of each front, one value for each degree of freedom eliminated there, N^0.5 m^0.5. */
  readonly values: Float64Array;
}

/**
 * Half solves loads.
 *
 * @param factors of the structure
 * @param loads one value a degree of freedom each; what lies on held ones goes into the supports
 * @returns one a load, in order
 */
export function halvesUnder({ fronts, held }: Factors, loads: readonly Float64Array[]): readonly HalfMoved[] {
  const found: HalfMoved[] = [];
  const own = new Float64Array(together * mostEliminated(fronts));
  const x = new Float64Array(together * held.length);
  for (let first = 0; first < loads.length; first += together) {
    const group = loads.slice(first, first + together);
    x.fill(0);
    group.forEach((load, k) => {
      for (let dof = 0; dof < held.length; dof++) if (!held[dof]) x[together * dof + k] = load[dof]!;
    });
    const touched: number[] = [];
    fronts.forEach((front, number) => {
      if (isBare(front, x, together)) return;
      touched.push(number);
      forwardsFour(front, x, own);
    });
    group.forEach((_, k) => {
      found.push(gathered(fronts, touched, x, k));
    });
  }
  return found;
}

/** What one of the loads taken together left. */
function gathered(
  fronts: readonly FactoredFront[],
  touched: readonly number[],
  x: Float64Array,
  k: number,
): HalfMoved {
  const left = touched.filter((number) => {
    const { dofs, eliminated } = fronts[number]!;
    for (let i = 0; i < eliminated; i++) if (x[together * dofs[i]! + k] !== 0) return true;
    return false;
  });
  const starts = new Int32Array(left.length + 1);
  left.forEach((number, i) => {
    starts[i + 1] = starts[i]! + fronts[number]!.eliminated;
  });
  const values = new Float64Array(starts[left.length]!);
  left.forEach((number, i) => {
    const { dofs, eliminated } = fronts[number]!;
    for (let j = 0; j < eliminated; j++) values[starts[i]! + j] = x[together * dofs[j]! + k]!;
  });
  return { fronts: Int32Array.from(left), starts, values };
}

/** Work of one load on the movement under another, N m. */
export function workOn(one: HalfMoved, other: HalfMoved): number {
  let [i, j, work] = [0, 0, 0];
  while (i < one.fronts.length && j < other.fronts.length) {
    const apart = one.fronts[i]! - other.fronts[j]!;
    if (apart === 0) {
      const [from, to, start] = [one.starts[i]!, one.starts[i + 1]!, other.starts[j]!];
      for (let k = from; k < to; k++) work += one.values[k]! * other.values[start + k - from]!;
    }
    if (apart <= 0) i++;
    if (apart >= 0) j++;
  }
  return work;
}

/** A load half solved, and how often it acts. */
export interface ShareOfHalf {
  /** The load. */
  readonly half: HalfMoved;
  /** How often it acts. */
  readonly share: number;
}

/**
 * Displacements under a sum of loads that are half solved.
 *
 * @returns one value a degree of freedom, 0 where held
 */
export function movedUnder({ fronts, held }: Factors, shares: readonly ShareOfHalf[]): Float64Array {
  const x = new Float64Array(held.length);
  for (const { half, share } of shares)
    half.fronts.forEach((number, i) => {
      const { dofs } = fronts[number]!;
      const [from, to] = [half.starts[i]!, half.starts[i + 1]!];
      for (let k = from; k < to; k++) x[dofs[k - from]!]! += share * half.values[k]!;
    });
  substituteBack(fronts, x);
  return x;
}
