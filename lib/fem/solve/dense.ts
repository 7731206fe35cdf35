/** The dense part of the solver: factors the first columns of a symmetric matrix, all in one array. */

/** Rows that the kernel works on at once; a matrix is padded by so many less one empty rows. */
export const kernelRows = 4;
/** Columns factored together, and depth of one pass: what stays in the processor's nearest memory. */
const panel = 32;
const depthOfPass = 96;

/**
 * Cholesky's factors of the first `columns` columns, and what is left of the rest (the lower half only).
 *
 * @param a square matrix of `size` rows, one after another, padded by kernelRows - 1 rows; overwritten
 * @param size rows
 * @param columns to eliminate
 * @param isLoose called with each column and its pivot; true stops
 * @returns the column whose pivot was loose, or -1
 */
export function eliminate(
  a: Float64Array,
  size: number,
  columns: number,
  isLoose: (column: number, pivot: number) => boolean,
): number {
  for (let from = 0; from < columns; from += panel) {
    const to = Math.min(from + panel, columns);
    subtractProducts(a, size, from, to, from);
    const loose = factorPanel(a, size, from, to, isLoose);
    if (loose >= 0) return loose;
  }
  subtractProducts(a, size, columns, size, columns);
  return -1;
}

/** Columns from..to, already freed of the columns before `from`. */
function factorPanel(
  a: Float64Array,
  size: number,
  from: number,
  to: number,
  isLoose: (column: number, pivot: number) => boolean,
): number {
  for (let row = from; row < size; row++) {
    const start = row * size;
    const end = Math.min(row, to);
    for (let column = from; column < end; column++) {
      const other = column * size;
      let rest = a[start + column]!;
      for (let k = from; k < column; k++) rest -= a[start + k]! * a[other + k]!;
      a[start + column] = rest * a[other + column]!;
    }
    if (row >= to) continue;
    let pivot = a[start + row]!;
    for (let k = from; k < row; k++) pivot -= a[start + k]! ** 2;
    if (isLoose(row, pivot)) return row;
    // The reciprocal is kept, so that rows below multiply.
    a[start + row] = 1 / Math.sqrt(pivot);
  }
  return -1;
}

/** Columns first..last of all rows from `first` on, less the products of their first `depth` columns. */
function subtractProducts(a: Float64Array, size: number, first: number, last: number, depth: number): void {
  for (let from = 0; from < depth; from += depthOfPass) {
    const to = Math.min(from + depthOfPass, depth);
    let column = first;
    for (; column + 1 < last; column += 2) subtractPair(a, size, column, from, to);
    if (column < last) subtractOne(a, size, column, from, to);
  }
}

/** Two columns, four rows at a time: eight sums that the processor keeps at hand. */
function subtractPair(a: Float64Array, size: number, column: number, from: number, to: number): void {
  const c0 = column * size;
  const c1 = c0 + size;
  for (let row = column; row < size; row += kernelRows) {
    const r0 = row * size;
    const r1 = r0 + size;
    const r2 = r1 + size;
    const r3 = r2 + size;
    let s00 = 0;
    let s01 = 0;
    let s10 = 0;
    let s11 = 0;
    let s20 = 0;
    let s21 = 0;
    let s30 = 0;
    let s31 = 0;
    for (let k = from; k < to; k++) {
      const x0 = a[c0 + k]!;
      const x1 = a[c1 + k]!;
      const y0 = a[r0 + k]!;
      const y1 = a[r1 + k]!;
      const y2 = a[r2 + k]!;
      const y3 = a[r3 + k]!;
      s00 += y0 * x0;
      s01 += y0 * x1;
      s10 += y1 * x0;
      s11 += y1 * x1;
      s20 += y2 * x0;
      s21 += y2 * x1;
      s30 += y3 * x0;
      s31 += y3 * x1;
    }
    a[r0 + column]! -= s00;
    a[r0 + column + 1]! -= s01;
    a[r1 + column]! -= s10;
    a[r1 + column + 1]! -= s11;
    a[r2 + column]! -= s20;
    a[r2 + column + 1]! -= s21;
    a[r3 + column]! -= s30;
    a[r3 + column + 1]! -= s31;
  }
}

function subtractOne(a: Float64Array, size: number, column: number, from: number, to: number): void {
  const other = column * size;
  for (let row = column; row < size; row++) {
    const start = row * size;
    let sum = 0;
    for (let k = from; k < to; k++) sum += a[start + k]! * a[other + k]!;
    a[start + column]! -= sum;
  }
}
