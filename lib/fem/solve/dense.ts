/**
 * The dense part of the solver. A front of `size` freedoms is kept in two parts: its leading columns, one row a
 * freedom, which become Cholesky's factors where they stand; and the square of what is left, one row a freedom that
 * is passed on, of which only the lower half counts.
 */

/** Columns factored together, and depth of one pass: what stays in the processor's nearest memory. */
const panel = 32;
const depthOfPass = 128;

/** The leading columns of a front. */
export interface Leading {
  /** Row after row, a row for each freedom of the front, as long as there are columns. */
  readonly rows: Float64Array;
  readonly size: number;
  readonly columns: number;
}

/**
 * Factors the leading columns and takes their products from the square that is left.
 *
 * @param leading columns; overwritten by the factors, with reciprocals on the diagonal
 * @param left square of `size - columns` rows; overwritten
 * @param isLoose called with each pivot; true stops
 * @returns the column whose pivot was loose, or -1
 */
export function eliminate(
  { rows, size, columns }: Leading,
  left: Float64Array,
  isLoose: (pivot: number) => boolean,
): number {
  for (let from = 0; from < columns; from += panel) {
    const to = Math.min(from + panel, columns);
    if (from > 0) subtractProducts(rows, columns, 0, rows, columns, from, to, size, from);
    const loose = factorPanel(rows, columns, size, from, to, isLoose);
    if (loose >= 0) return loose;
  }
  subtractProducts(left, size - columns, columns, rows, columns, 0, size - columns, size - columns, columns);
  return -1;
}

/** Columns from..to, already freed of the columns before `from`. */
function factorPanel(
  a: Float64Array,
  columns: number,
  size: number,
  from: number,
  to: number,
  isLoose: (pivot: number) => boolean,
): number {
  for (let row = from; row < size; row++) {
    const start = row * columns;
    const end = Math.min(row, to);
    for (let column = from; column < end; column++) {
      const other = column * columns;
      let rest = a[start + column]!;
      for (let k = from; k < column; k++) rest -= a[start + k]! * a[other + k]!;
      a[start + column] = rest * a[other + column]!;
    }
    if (row >= to) continue;
    let pivot = a[start + row]!;
    for (let k = from; k < row; k++) pivot -= a[start + k]! ** 2;
    if (isLoose(pivot)) return row;
    // The reciprocal is kept, so that rows below multiply.
    a[start + row] = 1 / Math.sqrt(pivot);
  }
  return -1;
}

/**
 * Takes from columns first..last of the target, from the diagonal down, the products of the rows' first `depth`
 * columns. Row 0 of the target belongs to row `skipped` of the rows.
 */
function subtractProducts(
  target: Float64Array,
  width: number,
  skipped: number,
  rows: Float64Array,
  columns: number,
  first: number,
  last: number,
  count: number,
  depth: number,
): void {
  for (let from = 0; from < depth; from += depthOfPass) {
    const to = Math.min(from + depthOfPass, depth);
    let column = first;
    for (; column + 1 < last; column += 2)
      subtractPair(target, width, skipped, rows, columns, column, count, from, to);
    if (column < last) subtractOne(target, width, skipped, rows, columns, column, column, count, from, to);
  }
}

/** Two columns, four rows at a time: eight sums that the processor keeps at hand. */
function subtractPair(
  target: Float64Array,
  width: number,
  skipped: number,
  rows: Float64Array,
  columns: number,
  column: number,
  count: number,
  from: number,
  to: number,
): void {
  const c0 = (skipped + column) * columns;
  const c1 = c0 + columns;
  let row = column;
  for (; row + 3 < count; row += 4) {
    const r0 = (skipped + row) * columns;
    const r1 = r0 + columns;
    const r2 = r1 + columns;
    const r3 = r2 + columns;
    let s00 = 0;
    let s01 = 0;
    let s10 = 0;
    let s11 = 0;
    let s20 = 0;
    let s21 = 0;
    let s30 = 0;
    let s31 = 0;
    for (let k = from; k < to; k++) {
      const x0 = rows[c0 + k]!;
      const x1 = rows[c1 + k]!;
      const y0 = rows[r0 + k]!;
      const y1 = rows[r1 + k]!;
      const y2 = rows[r2 + k]!;
      const y3 = rows[r3 + k]!;
      s00 += y0 * x0;
      s01 += y0 * x1;
      s10 += y1 * x0;
      s11 += y1 * x1;
      s20 += y2 * x0;
      s21 += y2 * x1;
      s30 += y3 * x0;
      s31 += y3 * x1;
    }
    const at = row * width + column;
    target[at]! -= s00;
    target[at + 1]! -= s01;
    target[at + width]! -= s10;
    target[at + width + 1]! -= s11;
    target[at + 2 * width]! -= s20;
    target[at + 2 * width + 1]! -= s21;
    target[at + 3 * width]! -= s30;
    target[at + 3 * width + 1]! -= s31;
  }
  subtractOne(target, width, skipped, rows, columns, column, row, count, from, to);
  subtractOne(target, width, skipped, rows, columns, column + 1, row, count, from, to);
}

/** One column, from a row down. */
function subtractOne(
  target: Float64Array,
  width: number,
  skipped: number,
  rows: Float64Array,
  columns: number,
  column: number,
  firstRow: number,
  count: number,
  from: number,
  to: number,
): void {
  const other = (skipped + column) * columns;
  for (let row = firstRow; row < count; row++) {
    const start = (skipped + row) * columns;
    let sum = 0;
    for (let k = from; k < to; k++) sum += rows[start + k]! * rows[other + k]!;
    target[row * width + column]! -= sum;
  }
}
