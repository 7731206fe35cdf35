/** Inputs that err together: the same rule behind two lengths, the same fit behind slope and intercept. */

/** How far two inputs err together, from -1 to 1. */
export interface Correlation {
  readonly between: readonly [string, string];
  readonly coefficient: number;
}

/**
 * The correlations as a matrix over the named inputs: 1 on the diagonal, 0 where nothing was said.
 *
 * @throws RangeError for a name that is not among the inputs, or a coefficient beyond -1 to 1
 */
export function correlationMatrix(
  names: readonly string[],
  correlations: readonly Correlation[],
): readonly (readonly number[])[] {
  const matrix = names.map((_, i) => names.map((_, j) => (i === j ? 1 : 0)));
  for (const { between, coefficient } of correlations) {
    const [i, j] = between.map((name) => names.indexOf(name)) as [number, number];
    if (i < 0 || j < 0 || i === j) {
      throw new RangeError(
        `correlation: expected two different inputs among ${names.join(", ")}, got ${between.join(" and ")}`,
      );
    }
    if (!(Math.abs(coefficient) <= 1)) {
      throw new RangeError(`correlation: ${between.join(" and ")} must be from -1 to 1, got ${coefficient}`);
    }
    (matrix[i] as number[])[j] = coefficient;
    (matrix[j] as number[])[i] = coefficient;
  }
  return matrix;
}

/**
 * Lower triangle L with L L^T = the matrix, by Cholesky's method; turns independent draws into correlated ones.
 *
 * @throws RangeError when the correlations contradict each other
 */
export function choleskyTriangle(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const rows: number[][] = [];
  for (const [i, entries] of matrix.entries()) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : (rows[j] ?? []);
      const rest = (entries[j] ?? 0) - row.reduce((sum, one, k) => sum + one * (other[k] ?? 0), 0);
      row.push(j === i ? diagonal(rest) : ratioOrZero(rest, other[j] ?? 0));
    }
    rows.push(row);
  }
  return rows;
}

/** Fully correlated inputs leave a rounding of zero. */
const rounding = 1e-12;

function diagonal(square: number): number {
  if (square < -rounding) throw contradiction();
  return square < rounding ? 0 : Math.sqrt(square);
}

function ratioOrZero(rest: number, by: number): number {
  if (by !== 0) return rest / by;
  if (Math.abs(rest) > rounding) throw contradiction();
  return 0;
}

function contradiction(): RangeError {
  return new RangeError("correlation: the coefficients contradict each other");
}
