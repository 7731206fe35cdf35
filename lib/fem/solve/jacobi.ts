/** Eigenvalues of a small symmetric matrix by Jacobi's rotations (Golub and Van Loan, Matrix Computations, 8.5). */

/** Values, and vectors as columns. */
export interface SmallEigen {
  readonly values: readonly number[];
  /** One row after another. */
  readonly vectors: Float64Array;
}

/**
 * All eigenvalues and vectors, in no order.
 *
 * @param matrix symmetric, one row after another; overwritten
 * @param size rows
 */
export function symmetricEigen(matrix: Float64Array, size: number): SmallEigen {
  const vectors = Float64Array.from({ length: size * size }, (_, at) => (at % (size + 1) === 0 ? 1 : 0));
  const scale = Math.sqrt(matrix.reduce((sum, value) => sum + value * value, 0));
  for (let sweep = 0; sweep < 30 && largestOff(matrix, size) > 1e-14 * scale; sweep++) {
    for (let p = 0; p < size; p++) {
      for (let q = p + 1; q < size; q++) rotate(matrix, vectors, size, p, q);
    }
  }
  return { values: Array.from({ length: size }, (_, i) => matrix[i * (size + 1)]!), vectors };
}

function largestOff(matrix: Float64Array, size: number): number {
  let largest = 0;
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < row; column++)
      largest = Math.max(largest, Math.abs(matrix[row * size + column]!));
  }
  return largest;
}

/** Turns p and q so that their product vanishes. */
function rotate(matrix: Float64Array, vectors: Float64Array, size: number, p: number, q: number): void {
  const off = matrix[p * size + q]!;
  if (off === 0) return;
  const ratio = (matrix[q * (size + 1)]! - matrix[p * (size + 1)]!) / (2 * off);
  const tangent = (ratio < 0 ? -1 : 1) / (Math.abs(ratio) + Math.hypot(1, ratio));
  const cosine = 1 / Math.hypot(1, tangent);
  const sine = tangent * cosine;
  for (let i = 0; i < size; i++) turn(matrix, p * size + i, q * size + i, cosine, sine);
  for (let i = 0; i < size; i++) {
    turn(matrix, i * size + p, i * size + q, cosine, sine);
    turn(vectors, i * size + p, i * size + q, cosine, sine);
  }
}

function turn(values: Float64Array, p: number, q: number, cosine: number, sine: number): void {
  const [first, second] = [values[p]!, values[q]!];
  values[p] = cosine * first - sine * second;
  values[q] = sine * first + cosine * second;
}
