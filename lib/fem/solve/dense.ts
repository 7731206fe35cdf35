/**
 * The dense part of the solver. A front of `size` degrees of freedom is added up and eliminated in the kernel's memory, in two
 * parts: its leading columns, one row a degree of freedom, which become Cholesky's factors where they stand; and the
 * square of what is left, one row a degree of freedom that is passed on, of which only the lower half counts.
 */
import { rowsBeyond, rowUnit, subtractProducts, zeros } from "./product-kernel.js";

/** Columns factored together, a multiple of the kernel's row unit. */
const panel = 8;
/** Depth of one pass: what stays in the processor's nearest memory. */
const depthOfPass = 128;
/** Bytes of a number. */
const bytes = 8;

/** A front in the kernel's memory, until the next one takes its place. */
export interface DenseFront {
  /** Its degrees of freedom. */
  readonly size: number;
  /** How many are eliminated. */
  readonly columns: number;
  /** The leading columns, a row every `stride` numbers. */
  readonly rows: Float64Array;
  /** Numbers from one row of the leading columns to the next. */
  readonly stride: number;
  /** The square that is left, `size - columns` rows. */
  readonly left: Float64Array;
}

/** A front of zeros. */
export function denseFront(size: number, columns: number): DenseFront {
  const stride = rowUnit * Math.ceil(columns / rowUnit);
  const width = size - columns;
  const leading = (size + rowsBeyond) * stride;
  const all = zeros(leading + (width + rowsBeyond) * width);
  return { size, columns, stride, rows: all.subarray(0, leading), left: all.subarray(leading) };
}

/**
 * Factors the leading columns, with reciprocals on the diagonal, and takes their products from the square.
 *
 * @param isLoose called with each pivot; true stops
 * @returns the column whose pivot was loose, or -1
 */
export function eliminate(front: DenseFront, isUnconstrained: (pivot: number) => boolean): number {
  const { size, columns, stride, rows, left } = front;
  for (let from = 0; from < columns; from += panel) {
    const to = Math.min(from + panel, columns);
    subtract(rows, stride, 0, front, from, to, size, from);
    const loose = factorPanel(front, from, to, isUnconstrained);
    if (loose >= 0) return loose;
  }
  const width = size - columns;
  subtract(left, width, columns, front, 0, width, width, stride);
  return -1;
}

/** Columns from..to, already freed of the columns before `from`. */
function factorPanel(
  { rows: a, stride, size }: DenseFront,
  from: number,
  to: number,
  isUnconstrained: (pivot: number) => boolean,
): number {
  for (let row = from; row < size; row++) {
    const start = row * stride;
    const end = Math.min(row, to);
    for (let column = from; column < end; column++) {
      const other = column * stride;
      let rest = a[start + column]!;
      for (let k = from; k < column; k++) rest -= a[start + k]! * a[other + k]!;
      a[start + column] = rest * a[other + column]!;
    }
    if (row >= to) continue;
    let pivot = a[start + row]!;
    for (let k = from; k < row; k++) pivot -= a[start + k]! ** 2;
    if (isUnconstrained(pivot)) return row;
    // The reciprocal is kept, so that rows below multiply.
    a[start + row] = 1 / Math.sqrt(pivot);
  }
  return -1;
}

/** Takes the products of the first `depth` columns from columns first..last; row 0 of the target is row `skipped`. */
function subtract(
  target: Float64Array,
  width: number,
  skipped: number,
  { rows, stride }: DenseFront,
  first: number,
  last: number,
  count: number,
  depth: number,
): void {
  const start = rows.byteOffset + bytes * skipped * stride;
  for (let from = 0; from < depth; from += depthOfPass) {
    const part = Math.min(depthOfPass, depth - from);
    subtractProducts(
      target.byteOffset,
      bytes * width,
      start + bytes * from,
      bytes * stride,
      first,
      last,
      count,
      bytes * part,
    );
  }
}
