/** Three-by-three matrices, as layered plates need them. */

/** Three rows of three. */
export type Matrix3 = readonly [Row3, Row3, Row3];
type Row3 = readonly [number, number, number];

const axes = [0, 1, 2] as const;

function build(entry: (row: 0 | 1 | 2, column: 0 | 1 | 2) => number): Matrix3 {
  const row = (i: 0 | 1 | 2): Row3 => [entry(i, 0), entry(i, 1), entry(i, 2)];
  return [row(0), row(1), row(2)];
}

/** Sum of matrices, each with its weight. */
export function weightedSum(
  parts: readonly { readonly matrix: Matrix3; readonly weight: number }[],
): Matrix3 {
  return build((i, j) => parts.reduce((sum, { matrix, weight }) => sum + weight * matrix[i][j], 0));
}

/** a b */
export function product(a: Matrix3, b: Matrix3): Matrix3 {
  return build((i, j) => axes.reduce<number>((sum, k) => sum + a[i][k] * b[k][j], 0));
}

/**
 * The inverse, by cofactors.
 *
 * @throws RangeError when there is none
 */
export function inverse(m: Matrix3): Matrix3 {
  const next = (i: number): 0 | 1 | 2 => ((i + 1) % 3) as 0 | 1 | 2;
  const cofactor = (i: 0 | 1 | 2, j: 0 | 1 | 2): number => {
    const [a, b, c, d] = [next(i), next(next(i)), next(j), next(next(j))];
    return m[a][c] * m[b][d] - m[a][d] * m[b][c];
  };
  const determinant = axes.reduce<number>((sum, j) => sum + m[0][j] * cofactor(0, j), 0);
  if (determinant === 0) throw new RangeError("matrix inverse: the matrix has none");
  return build((i, j) => cofactor(j, i) / determinant);
}
