/**
 * Least squares by Householder reflections, in long numbers: G. H. Golub, Numerical methods for solving
 * linear least squares problems (1965). Never forms the normal equations, which would double the loss of digits.
 */
import { at } from "./lists.js";
import {
  type LongNumber,
  minus,
  negated,
  over,
  plus,
  root,
  short,
  times,
  total,
  zero,
} from "./long-number.js";

/** A fit b to X b = y, with what is needed to judge it. */
export interface LeastSquares {
  /** The fitted b. */
  readonly solution: readonly LongNumber[];
  /** Inverse of R, row by row: R^-1 R^-T is the inverse of X^T X. */
  readonly inverseTriangle: readonly (readonly LongNumber[])[];
  /** Sum of squared residuals. */
  readonly unexplained: LongNumber;
}

/** A column this small beside its own length depends on the columns before it. */
const dependent = 1e-22;

/**
 * Solves X b = y in the least-squares sense.
 *
 * @param columns of X, each as long as y
 * @returns undefined when the columns depend on each other
 */
export function leastSquares(
  columns: readonly (readonly LongNumber[])[],
  y: readonly LongNumber[],
): LeastSquares | undefined {
  const work = columns.map((column) => [...column]);
  let rest: readonly LongNumber[] = y;
  for (const [k, column] of work.entries()) {
    const length = sizeOf(columns[k] ?? []);
    const mirror = mirrorOf(column, k);
    if (!mirror || short(mirror.tail) <= dependent * short(length)) return undefined;
    for (let j = k; j < work.length; j++) work[j] = reflected(work[j] ?? [], mirror);
    rest = reflected(rest, mirror);
  }
  const inverseTriangle = inverted(work);
  return {
    inverseTriangle,
    solution: inverseTriangle.map((row) => total(row.map((one, j) => times(one, rest[j] ?? zero)))),
    unexplained: total(rest.slice(work.length).map((one) => times(one, one))),
  };
}

/** A plane that reflects a column onto its k-th axis. */
interface Mirror {
  /** Any vector across the plane. */
  readonly normal: readonly LongNumber[];
  /** Half the squared length of the normal. */
  readonly half: LongNumber;
  /** Length of the column from the k-th row down. */
  readonly tail: LongNumber;
}

function sizeOf(values: readonly LongNumber[]): LongNumber {
  return root(total(values.map((one) => times(one, one))));
}

function mirrorOf(column: readonly LongNumber[], k: number): Mirror | undefined {
  const tail = sizeOf(column.slice(k));
  if (short(tail) === 0) return undefined;
  const first = column[k] ?? zero;
  // Away from the column's own sign, so that nothing cancels.
  const head = first[0] < 0 ? minus(first, tail) : plus(first, tail);
  const normal = column.map((one, i) => (i < k ? zero : i === k ? head : one));
  return { normal, tail, half: times(tail, first[0] < 0 ? negated(head) : head) };
}

function reflected(column: readonly LongNumber[], { normal, half }: Mirror): LongNumber[] {
  const share = over(total(column.map((one, i) => times(one, normal[i] ?? zero))), half);
  return column.map((one, i) => minus(one, times(share, normal[i] ?? zero)));
}

/** Inverse of the upper triangle that the reflections left, by back substitution. */
function inverted(columns: readonly (readonly LongNumber[])[]): LongNumber[][] {
  const size = columns.length;
  const entry = (i: number, j: number): LongNumber => columns[j]?.[i] ?? zero;
  const inverse = columns.map(() => columns.map(() => zero));
  for (let j = 0; j < size; j++) {
    for (let i = j; i >= 0; i--) {
      let sum: LongNumber = i === j ? [1, 0] : zero;
      for (let k = i + 1; k <= j; k++) sum = minus(sum, times(entry(i, k), inverse[k]?.[j] ?? zero));
      at(inverse, i)[j] = over(sum, entry(i, i));
    }
  }
  return inverse;
}
