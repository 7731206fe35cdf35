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

function factor(matrix: Float64Array, size: number): void {
  for (let row = 0; row < size; row++) {
    for (let column = 0; column < row; column++) {
      const rest = remainder(matrix, size, row, column);
      matrix[row * size + column] = rest / (matrix[column * size + column] as number);
    }
    const pivot = remainder(matrix, size, row, row);
    if (!(pivot > 0))
      throw new RangeError("plate series: the plate can move without bending, hold it better");
    matrix[row * size + row] = Math.sqrt(pivot);
  }
}

/** A_rc less the products of the factors already found: four sums side by side, as one waits for itself. */
function remainder(matrix: Float64Array, size: number, row: number, column: number): number {
  const [a, b] = [row * size, column * size];
  const fours = column - (column % 4);
  let [p, q, r, s] = [matrix[a + column]!, 0, 0, 0];
  for (let k = 0; k < fours; k += 4) {
    p -= matrix[a + k]! * matrix[b + k]!;
    q += matrix[a + k + 1]! * matrix[b + k + 1]!;
    r += matrix[a + k + 2]! * matrix[b + k + 2]!;
    s += matrix[a + k + 3]! * matrix[b + k + 3]!;
  }
  for (let k = fours; k < column; k++) p -= matrix[a + k]! * matrix[b + k]!;
  return p - (q + r + s);
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
