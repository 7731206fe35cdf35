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
 * @param isUnconstrained called with each pivot; true stops
 * @returns the column whose pivot nothing resists, or -1
 */
export function eliminate(front: DenseFront, isUnconstrained: (pivot: number) => boolean): number {
  const { size, columns, stride, rows, left } = front;
  for (let from = 0; from < columns; from += panel) {
    const to = Math.min(from + panel, columns);
    subtractKnown(front, from, { numbers: rows, width: stride, firstRow: 0, from, to, count: size });
    const found = factorPanel(front, from, to, isUnconstrained);
    if (found >= 0) return found;
  }
  const width = size - columns;
  subtractKnown(front, stride, {
    numbers: left,
    width,
    firstRow: columns,
    from: 0,
    to: width,
    count: width,
  });
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

/** A part of a front from which products are taken. */
interface Target {
  /** Its numbers in the kernel's memory. */
  readonly numbers: Float64Array;
  /** Numbers from one of its rows to the next. */
  readonly width: number;
  /** The row of the front that is its row 0. */
  readonly firstRow: number;
  /** Its first column that changes. */
  readonly from: number;
  /** The column after the last that changes. */
  readonly to: number;
  /** How many rows it has. */
  readonly count: number;
}

/** Takes the products of the first `depth` columns, which are known, from a part of the front. */
function subtractKnown({ rows, stride }: DenseFront, depth: number, target: Target): void {
  const { numbers, width, firstRow, from, to, count } = target;
  const start = rows.byteOffset + bytes * firstRow * stride;
  for (let done = 0; done < depth; done += depthOfPass) {
    const part = bytes * Math.min(depthOfPass, depth - done);
    const first = start + bytes * done;
    subtractProducts(numbers.byteOffset, bytes * width, first, bytes * stride, from, to, count, part);
  }
}
