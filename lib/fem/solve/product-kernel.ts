/** The innermost loops of the solver, and the memory they work in. */
import {
  body,
  type Code,
  get,
  isBelow,
  listed,
  named,
  noPair,
  pairAt,
  plus,
  plusPair,
  put,
  repeat,
  section,
  sumOfPair,
  takeFrom,
  times,
  timesPair,
  when,
  whole,
} from "./wasm-encoder.js";

/** Rows and columns of products that are added up at once, which the processor keeps at hand. */
const tile = { rows: 4, columns: 2 } as const;
/** Rows are as long as a multiple of this, filled up with zeros. */
export const rowUnit = 4;
/** Rows of zeros that follow the last one. */
export const rowsBeyond: number = tile.rows - 1;

/** What the machine keeps, whose typing Node's own leaves out. */
declare const WebAssembly: {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object) => { readonly exports: unknown };
};

/**
 * Takes from a matrix the products of rows: row i, column j loses the product of rows i and j. Addresses and strides
 * in bytes; columns first..last, from the diagonal down to the last of `count` rows; depth of a product in bytes, a
 * multiple of four numbers.
 */
export type SubtractProducts = (
  target: number,
  targetStride: number,
  rows: number,
  rowStride: number,
  first: number,
  last: number,
  count: number,
  depth: number,
) => void;

interface Kernel {
  /** Where the numbers are that it works on. */
  readonly memory: { readonly buffer: ArrayBufferLike; grow(pages: number): number };
  /** The loops themselves. */
  readonly subtractProducts: SubtractProducts;
}

const [target, targetStride, rows, rowStride, first, last, count, depth] = [0, 1, 2, 3, 4, 5, 6, 7] as const;
const [column, row, along, at, columnAt, rowAt, columnPair, rowPair, sums] = [
  8, 9, 10, 11, 12, 14, 18, 20, 21,
] as const;
const wholeLocals = columnPair - column;
const pairLocals = 3 + tile.rows * tile.columns;

const tileRows = [...Array(tile.rows).keys()];
const sumAt = (i: number, j: number): number => sums + tile.columns * i + j;

/** Adds the products of two numbers each, so many bytes on, to the sums. */
function products(columns: readonly number[], on: number): Code {
  return [
    ...columns.flatMap((j) => put(columnPair + j, pairAt(plus(get(columnAt + j), get(along)), on))),
    ...tileRows.flatMap((i) => [
      ...put(rowPair, pairAt(plus(get(rowAt + i), get(along)), on)),
      ...columns.flatMap((j) =>
        put(sumAt(i, j), plusPair(get(sumAt(i, j)), timesPair(get(rowPair), get(columnPair + j)))),
      ),
    ]),
  ];
}

/** One or two columns, four rows at a time from the diagonal down. */
function strip(width: 1 | 2): Code {
  const columns = [...Array(width).keys()];
  const startOf = (number: Code): Code => plus(get(rows), times(number, get(rowStride)));
  return [
    ...put(columnAt, startOf(get(column))),
    ...put(columnAt + 1, plus(get(columnAt), get(rowStride))),
    ...put(row, get(column)),
    ...repeat(
      [
        ...put(rowAt, startOf(get(row))),
        ...[1, 2, 3].flatMap((i) => put(rowAt + i, plus(get(rowAt + i - 1), get(rowStride)))),
        ...tileRows.flatMap((i) => columns.flatMap((j) => put(sumAt(i, j), noPair))),
        ...put(along, whole(0)),
        ...repeat(
          [...products(columns, 0), ...products(columns, 16), ...put(along, plus(get(along), whole(32)))],
          isBelow(get(along), get(depth)),
        ),
        ...put(at, plus(plus(get(target), times(get(row), get(targetStride))), times(get(column), whole(8)))),
        ...tileRows.flatMap((i) => [
          ...columns.flatMap((j) => takeFrom(get(at), 8 * j, sumOfPair(get(sumAt(i, j))))),
          ...put(at, plus(get(at), get(targetStride))),
        ]),
        ...put(row, plus(get(row), whole(tile.rows))),
      ],
      isBelow(get(row), get(count)),
    ),
    ...put(column, plus(get(column), whole(width))),
  ];
}

function program(): Code {
  const twoLeft = isBelow(plus(get(column), whole(1)), get(last));
  return [
    ...put(column, get(first)),
    ...when(twoLeft, repeat(strip(2), twoLeft)),
    ...when(isBelow(get(column), get(last)), strip(1)),
  ];
}

/** The module's bytes: one function of eight whole numbers, and a memory. */
function moduleBytes(): Uint8Array {
  const header = [0, 0x61, 0x73, 0x6d, 1, 0, 0, 0];
  return Uint8Array.from([
    ...header,
    ...section(1, listed([[0x60, ...listed(Array<Code>(8).fill([0x7f])), ...listed([])]])),
    ...section(3, listed([[0]])),
    ...section(5, listed([[0, 1]])),
    ...section(
      7,
      listed([
        [...named("memory"), 2, 0],
        [...named("subtractProducts"), 0, 0],
      ]),
    ),
    ...section(10, listed([body(wholeLocals, pairLocals, program())])),
  ]);
}

const kernel = new WebAssembly.Instance(new WebAssembly.Module(moduleBytes())).exports as Kernel;

/** The innermost loops. */
export const subtractProducts: SubtractProducts = kernel.subtractProducts;

/** Bytes of a page of the kernel's memory. */
const page = 65_536;

/** The first numbers of the kernel's memory, all zeros; what was there before is gone. */
export function zeros(numbers: number): Float64Array {
  const missing = Math.ceil((8 * numbers - kernel.memory.buffer.byteLength) / page);
  if (missing > 0) kernel.memory.grow(missing);
  return new Float64Array(kernel.memory.buffer, 0, numbers).fill(0);
}
