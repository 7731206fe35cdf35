/** Solves the equations of a stable structure: a symmetric positive matrix, row by row in one list. */

/**
 * The solution x of A x = b by Cholesky's factors A = L L^T. Overwrites the lower half of A.
 *
 * @param matrix A, n rows of n; only the lower half is read
 * @param right b, n values
 * @returns x
 * @throws RangeError when a pivot is not positive: the structure can move without resistance
 */
export function solvePositive(matrix: Float64Array, right: Float64Array): Float64Array {
  factor(matrix, right.length);
  return substitute(matrix, right);
}

/** Rows that share the reading of every row before them. */
const band = 4;

function factor(matrix: Float64Array, size: number): void {
  const inBands = size - (size % band);
  for (let row = 0; row < size; row++) {
    const top = row - (row % band);
    if (row === top && row < inBands)
      for (let column = 0; column < top; column++) bandColumn(matrix, size, top, column);
    for (let column = row < inBands ? top : 0; column < row; column++) {
      const rest = remainder(matrix, size, row, column);
      matrix[row * size + column] = rest / matrix[column * size + column]!;
    }
    const pivot = remainder(matrix, size, row, row);
    if (!(pivot > 0))
      throw new RangeError("plate series: the plate can move without bending, hold it better");
    matrix[row * size + row] = Math.sqrt(pivot);
  }
}

/** A_rc less the products of the factors already found. */
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
  const at = (row: number, column: number): number => factors[row * size + column] as number;
  for (let row = 0; row < size; row++) {
    let rest = x[row] as number;
    for (let k = 0; k < row; k++) rest -= at(row, k) * (x[k] as number);
    x[row] = rest / at(row, row);
  }
  for (let row = size - 1; row >= 0; row--) {
    let rest = x[row] as number;
    for (let k = row + 1; k < size; k++) rest -= at(k, row) * (x[k] as number);
    x[row] = rest / at(row, row);
  }
  return x;
}
