/** Eigenvalues of a small symmetric matrix by Jacobi's rotations (Golub and Van Loan, Matrix Computations, 8.5). */
import { at } from "./lists.js";

/** The eigenvalues and eigenvectors of a symmetric matrix. */
export interface SymmetricEigen {
  /** The eigenvalues, in no order. */
  readonly values: readonly number[];
  /** The eigenvectors as columns, in the order of the values; one row of the matrix after another. */
  readonly vectors: Float64Array;
}

/**
 * All eigenvalues and vectors, in no order.
 *
 * @param matrix symmetric, one row after another; overwritten
 * @param size rows
 */
export function symmetricEigen(matrix: Float64Array, size: number): SymmetricEigen {
  const vectors = Float64Array.from({ length: size * size }, (_, place) =>
    place % (size + 1) === 0 ? 1 : 0,
  );
  const scale = Math.sqrt(matrix.reduce((sum, value) => sum + value * value, 0));
  for (let sweep = 0; sweep < 30 && largestOff(matrix, size) > 1e-14 * scale; sweep++) {
    for (let p = 0; p < size; p++) {
      for (let q = p + 1; q < size; q++) rotate({ matrix, vectors, size }, p, q);
    }
  }
  return { values: Array.from({ length: size }, (_, i) => at(matrix, i * (size + 1))), vectors };
}

function largestOff(matrix: Float64Array, size: number): number {
  let largest = 0;
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < row; column++)
      largest = Math.max(largest, Math.abs(at(matrix, row * size + column)));
  }
  return largest;
}

interface Rotated {
  /** What is left of the matrix, one row after another. */
  readonly matrix: Float64Array;
  /** The product of all rotations so far. */
  readonly vectors: Float64Array;
  /** Rows of either. */
  readonly size: number;
}

/** Turns p and q so that their product vanishes. */
function rotate({ matrix, vectors, size }: Rotated, p: number, q: number): void {
  const off = at(matrix, p * size + q);
  if (off === 0) return;
  const ratio = (at(matrix, q * (size + 1)) - at(matrix, p * (size + 1))) / (2 * off);
  const tangent = (ratio < 0 ? -1 : 1) / (Math.abs(ratio) + Math.hypot(1, ratio));
  const cosine = 1 / Math.hypot(1, tangent);
  const sine = tangent * cosine;
  const turn = (values: Float64Array, i: number, j: number): void => {
    const [first, second] = [at(values, i), at(values, j)];
    values[i] = cosine * first - sine * second;
    values[j] = sine * first + cosine * second;
  };
  for (let i = 0; i < size; i++) turn(matrix, p * size + i, q * size + i);
  for (let i = 0; i < size; i++) {
    turn(matrix, i * size + p, i * size + q);
    turn(vectors, i * size + p, i * size + q);
  }
}
