/** Small dense systems: three by three, and as many as a case has joints. */
import type { BoxSpot } from "./box-problem.js";

/** Rows of a matrix of three. */
export type Matrix3 = readonly [BoxSpot, BoxSpot, BoxSpot];

/**
 * Inverse of a symmetric matrix of three rows.
 *
 * @throws RangeError when it gives way
 */
export function inverse3([[a, b, c], [, d, e], [, , f]]: Matrix3): Matrix3 {
  const cofactors = [d * f - e * e, c * e - b * f, b * e - c * d] as const;
  const determinant = a * cofactors[0] + b * cofactors[1] + c * cofactors[2];
  if (!(determinant > 0)) throw new RangeError(`a matrix of three rows gives way, got ${determinant}`);
  const [xx, xy, xz] = cofactors.map((each) => each / determinant) as unknown as BoxSpot;
  const [yy, yz] = [(a * f - c * c) / determinant, (b * c - a * e) / determinant];
  const zz = (a * d - b * b) / determinant;
  return [
    [xx, xy, xz],
    [xy, yy, yz],
    [xz, yz, zz],
  ];
}

/**
 * Solves a square system by elimination with the largest pivot.
 *
 * @param matrix one row after another; overwritten
 * @param right one value a row; overwritten
 * @returns the unknowns
 */
export function solveSquare(matrix: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  for (let column = 0; column < size; column++) {
    const pivot = largestBelow(matrix, size, column);
    swapRows(matrix, right, size, column, pivot);
    const start = column * size;
    for (let row = column + 1; row < size; row++) {
      const share = matrix[row * size + column]! / matrix[start + column]!;
      if (share === 0) continue;
      for (let k = column; k < size; k++) matrix[row * size + k]! -= share * matrix[start + k]!;
      right[row]! -= share * right[column]!;
    }
  }
  for (let row = size - 1; row >= 0; row--) {
    for (let k = row + 1; k < size; k++) right[row]! -= matrix[row * size + k]! * right[k]!;
    right[row]! /= matrix[row * (size + 1)]!;
  }
  return right;
}

function largestBelow(matrix: Float64Array, size: number, column: number): number {
  let best = column;
  for (let row = column + 1; row < size; row++)
    if (Math.abs(matrix[row * size + column]!) > Math.abs(matrix[best * size + column]!)) best = row;
  return best;
}

function swapRows(matrix: Float64Array, right: Float64Array, size: number, a: number, b: number): void {
  if (a === b) return;
  const row = matrix.slice(a * size, (a + 1) * size);
  matrix.copyWithin(a * size, b * size, (b + 1) * size);
  matrix.set(row, b * size);
  [right[a], right[b]] = [right[b]!, right[a]!];
}
