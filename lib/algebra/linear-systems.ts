/** Solves small dense systems of equations A x = b; a matrix is one list, row after row. */
import { at } from "./lists.js";

/**
 * Solves a square system by elimination with the largest pivot.
 *
 * @param matrix A, n rows of n; overwritten
 * @param right b, n values; overwritten
 * @returns x
 */
export function solveSquare(matrix: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  for (let column = 0; column < size; column++) {
    exchangeRows(matrix, right, column, largestBelow(matrix, size, column));
    const start = column * size;
    for (let row = column + 1; row < size; row++) {
      const share = matrix[row * size + column]! / matrix[start + column]!;
      if (share === 0) continue;
      for (let k = column; k < size; k++) matrix[row * size + k]! -= share * matrix[start + k]!;
      right[row]! -= share * right[column]!;
    }
  }
  for (let row = size - 1; row >= 0; row--) {
    const start = row * size;
    let rest = at(right, row);
    for (let k = row + 1; k < size; k++) rest -= at(matrix, start + k) * at(right, k);
    right[row] = rest / at(matrix, start + row);
  }
  return right;
}

function largestBelow(matrix: Float64Array, size: number, column: number): number {
  const entry = (row: number): number => Math.abs(at(matrix, row * size + column));
  let best = column;
  for (let row = column + 1; row < size; row++) if (entry(row) > entry(best)) best = row;
  return best;
}

function exchangeRows(matrix: Float64Array, right: Float64Array, a: number, b: number): void {
  if (a === b) return;
  const size = right.length;
  const row = matrix.slice(a * size, (a + 1) * size);
  matrix.copyWithin(a * size, b * size, (b + 1) * size);
  matrix.set(row, b * size);
  [right[a], right[b]] = [at(right, b), at(right, a)];
}

/**
 * Solves the equations of a stable structure by Cholesky's factors A = L L^T.
 *
 * @param matrix A, symmetric and positive, n rows of n; only the lower half is read, and overwritten
 * @param right b, n values
 * @returns x, or undefined when a pivot is not positive: the structure can move without resistance
 */
export function solvePositive(matrix: Float64Array, right: Float64Array): Float64Array | undefined {
  return factor(matrix, right.length) ? substitute(matrix, right) : undefined;
}

/** Rows that share the reading of every row before them. */
const band = 4;

/** Puts the factors in place of the matrix; false where a pivot is not positive. */
function factor(matrix: Float64Array, size: number): boolean {
  const inBands = size - (size % band);
  for (let row = 0; row < size; row++) {
    const top = row - (row % band);
    if (row === top && row < inBands)
      for (let column = 0; column < top; column++) bandColumn(matrix, size, top, column);
    for (let column = row < inBands ? top : 0; column < row; column++) {
      const rest = remainder(matrix, size, row, column);
      matrix[row * size + column] = rest / at(matrix, column * size + column);
    }
    const pivot = remainder(matrix, size, row, row);
    if (!(pivot > 0)) return false;
    matrix[row * size + row] = Math.sqrt(pivot);
  }
  return true;
}

/** The entry of A less the products of the factors already found. */
function remainder(matrix: Float64Array, size: number, row: number, column: number): number {
  const [a, b] = [row * size, column * size];
  let rest = matrix[a + column]!;
  for (let k = 0; k < column; k++) rest -= matrix[a + k]! * matrix[b + k]!;
  return rest;
}

/** One column of the factors in all rows of a band. */
function bandColumn(matrix: Float64Array, size: number, top: number, column: number): void {
  const b = column * size;
  const p = top * size;
  const [q, r, s] = [p + size, p + 2 * size, p + 3 * size];
  let [one, two, three, four] = [0, 0, 0, 0];
  for (let k = 0; k < column; k++) {
    const known = matrix[b + k]!;
    one += matrix[p + k]! * known;
    two += matrix[q + k]! * known;
    three += matrix[r + k]! * known;
    four += matrix[s + k]! * known;
  }
  const pivot = matrix[b + column]!;
  matrix[p + column] = (matrix[p + column]! - one) / pivot;
  matrix[q + column] = (matrix[q + column]! - two) / pivot;
  matrix[r + column] = (matrix[r + column]! - three) / pivot;
  matrix[s + column] = (matrix[s + column]! - four) / pivot;
}

function substitute(factors: Float64Array, right: Float64Array): Float64Array {
  const size = right.length;
  const x = Float64Array.from(right);
  const factorAt = (row: number, column: number): number => at(factors, row * size + column);
  for (let row = 0; row < size; row++) {
    let rest = at(x, row);
    for (let k = 0; k < row; k++) rest -= factorAt(row, k) * at(x, k);
    x[row] = rest / factorAt(row, row);
  }
  for (let row = size - 1; row >= 0; row--) {
    let rest = at(x, row);
    for (let k = row + 1; k < size; k++) rest -= factorAt(k, row) * at(x, k);
    x[row] = rest / factorAt(row, row);
  }
  return x;
}
