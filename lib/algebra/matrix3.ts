/** Vectors of three numbers and matrices of three rows: places in space, layered plates, best fits. */

/** Along x, y, z, or any other three numbers that belong together. */
export type Vector3 = readonly [number, number, number];

/** Three rows of three. */
export type Matrix3 = readonly [Vector3, Vector3, Vector3];

/** One of three. */
export type Axis = 0 | 1 | 2;

/** All three, in order. */
export const axes: readonly [0, 1, 2] = [0, 1, 2];

/** A vector from its entries. */
export function vector3(entry: (axis: Axis) => number): Vector3 {
  return [entry(0), entry(1), entry(2)];
}

/** A matrix from its entries. */
export function matrix3(entry: (row: Axis, column: Axis) => number): Matrix3 {
  const row = (i: Axis): Vector3 => vector3((j) => entry(i, j));
  return [row(0), row(1), row(2)];
}

/** The vector of length 1 along an axis. */
export function unitVector(along: Axis): Vector3 {
  return vector3((axis) => (axis === along ? 1 : 0));
}

/** a - b */
export function difference(a: Vector3, b: Vector3): Vector3 {
  return vector3((axis) => a[axis] - b[axis]);
}

/** Scalar product. */
export function scalarProduct(a: Vector3, b: Vector3): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Vector product. */
export function crossProduct([ax, ay, az]: Vector3, [bx, by, bz]: Vector3): Vector3 {
  return [ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx];
}

/** How far apart two places are. */
export function distance(a: Vector3, b: Vector3): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** Sum of matrices, each with its weight. */
export function weightedSum(
  parts: readonly { readonly matrix: Matrix3; readonly weight: number }[],
): Matrix3 {
  return matrix3((i, j) => parts.reduce((sum, { matrix, weight }) => sum + weight * matrix[i][j], 0));
}

/** a b */
export function product(a: Matrix3, b: Matrix3): Matrix3 {
  return matrix3((i, j) => axes.reduce<number>((sum, k) => sum + a[i][k] * b[k][j], 0));
}

/** A determinant below this share of the product of the rows' lengths is one of rounding. */
const rounding = 1e-15;

/**
 * The inverse, by cofactors.
 *
 * @throws RangeError when there is none
 */
export function inverse(m: Matrix3): Matrix3 {
  const [[a, b, c], [d, e, f], [g, h, i]] = m;
  const [first, second, third] = [e * i - f * h, f * g - d * i, d * h - e * g];
  const determinant = a * first + b * second + c * third;
  const size = m.reduce((volume, row) => volume * Math.hypot(...row), 1);
  if (!(Math.abs(determinant) > rounding * size)) throw new RangeError("matrix inverse: the matrix has none");
  const rows: Matrix3 = [
    [first, c * h - b * i, b * f - c * e],
    [second, a * i - c * g, c * d - a * f],
    [third, b * g - a * h, a * e - b * d],
  ];
  return matrix3((row, column) => rows[row][column] / determinant);
}
