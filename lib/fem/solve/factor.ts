/**
 * Sparse Cholesky factors by fronts (I. S. Duff, J. K. Reid, The multifrontal solution of indefinite sparse
 * symmetric linear equations, 1983): pieces are added into small dense matrices, which are eliminated and passed on.
 */
import { type DenseFront, denseFront, eliminate } from "./dense.js";
import { dissect, type Front, frontRoom, squareOf } from "./dissection.js";
import type { Piece } from "./piece.js";
import { displacementsUnder, type FactoredFront, type Factors } from "./substitute.js";

/** A freedom that nothing resists. */
export class LooseFreedom extends RangeError {
  /** Number of the freedom in the structure. */
  readonly freedom: number;

  constructor(freedom: number) {
    super(`solver: freedom ${freedom} moves without resistance`);
    this.freedom = freedom;
  }
}

/**
 * Resistance to the softest motion, as a share of what its freedoms resist one by one, below which it is round-off.
 * A sheet a ten-thousandth of its span thick and clamped on one side has 1e-13, a loose one 1e-17.
 */
const looseShare = 1e-15;

/**
 * Factors the structure.
 *
 * @param pieces everything that resists
 * @param held 1 for each freedom that cannot move
 * @throws LooseFreedom when a freedom moves without resistance
 */
export function factorPieces(pieces: readonly Piece[], held: Uint8Array): Factors {
  const first = dissect(pieces, held);
  const { fill, waiting } = frontRoom(first);
  const store = new Float64Array(fill);
  const stack = new Float64Array(waiting);
  const place = new Int32Array(held.length);
  const fronts: FactoredFront[] = [];
  let [stored, top] = [0, 0];
  /** Eliminates a front and everything before it, and leaves what it passes on upon the stack. */
  const pass = (front: Front): void => {
    const bottom = top;
    for (const half of front.halves) pass(half);
    const { freedoms, eliminated } = front;
    for (let i = 0; i < freedoms.length; i++) place[freedoms[i]!] = i;
    const dense = denseFront(freedoms.length, eliminated);
    top = bottom;
    for (const half of front.halves) {
      addLeft(dense, half, stack.subarray(top, top + squareOf(half)), place);
      top += squareOf(half);
    }
    for (const piece of front.pieces) addPiece(dense, pieces[piece]!, held, place);
    const loose = eliminate(dense, (pivot) => !(pivot > 0));
    if (loose >= 0) throw new LooseFreedom(freedoms[loose]!);
    const rows = store.subarray(stored, stored + freedoms.length * eliminated);
    keepRows(dense, rows);
    stored += rows.length;
    fronts.push({ freedoms, eliminated, rows });
    stack.set(dense.left.subarray(0, squareOf(front)), bottom);
    top = bottom + squareOf(front);
  };
  pass(first);
  const factors = { fronts, held, fill };
  refuseLoose(factors, diagonalOf(pieces, held.length));
  return factors;
}

/** The factors, without what lies above the diagonal. */
function keepRows({ rows, stride, columns, size }: DenseFront, kept: Float64Array): void {
  for (let i = 0; i < size; i++)
    kept.set(rows.subarray(i * stride, i * stride + Math.min(columns, i + 1)), i * columns);
}

/** Pushes everything a little: what is loose moves without end, almost free of resistance. */
function refuseLoose(factors: Factors, stiffness: Float64Array): void {
  const push = stiffness.map((value, freedom) =>
    factors.held[freedom] ? 0 : Math.sin(1 + 12.9 * freedom) * Math.sqrt(value),
  );
  const moved = displacementsUnder(factors, push);
  let [work, apart, farthest] = [0, 0, 0];
  const reach = (freedom: number): number => stiffness[freedom]! * moved[freedom]! ** 2;
  for (let freedom = 0; freedom < moved.length; freedom++) {
    work += push[freedom]! * moved[freedom]!;
    apart += reach(freedom);
    if (reach(freedom) > reach(farthest)) farthest = freedom;
  }
  if (!(work > looseShare * apart)) throw new LooseFreedom(farthest);
}

function diagonalOf(pieces: readonly Piece[], size: number): Float64Array {
  const diagonal = new Float64Array(size);
  for (const { freedoms, matrix } of pieces) {
    for (let i = 0; i < freedoms.length; i++)
      diagonal[freedoms[i]!]! += Math.abs(matrix[i * (freedoms.length + 1)]!);
  }
  return diagonal;
}

function addPiece(front: DenseFront, { freedoms, matrix }: Piece, held: Uint8Array, place: Int32Array): void {
  const count = freedoms.length;
  const places = new Int32Array(count);
  for (let i = 0; i < count; i++) places[i] = held[freedoms[i]!] ? -1 : place[freedoms[i]!]!;
  for (let i = 0; i < count; i++)
    if (places[i]! >= 0) addRow(front, places[i]!, places, i + 1, matrix, i * count);
}

function addLeft(
  front: DenseFront,
  { freedoms, eliminated }: Front,
  left: Float64Array,
  place: Int32Array,
): void {
  const count = freedoms.length - eliminated;
  const places = new Int32Array(count);
  for (let i = 0; i < count; i++) places[i] = place[freedoms[eliminated + i]!]!;
  for (let i = 0; i < count; i++) addRow(front, places[i]!, places, i + 1, left, i * count);
}

/** Adds the first `count` values of a row of a symmetric matrix, each to the lower half. */
function addRow(
  { rows, left, columns, stride, size }: DenseFront,
  row: number,
  places: Int32Array,
  count: number,
  values: Float64Array,
  start: number,
): void {
  const width = size - columns;
  for (let j = 0; j < count; j++) {
    const column = places[j]!;
    if (column < 0) continue;
    const low = Math.min(column, row);
    const high = Math.max(column, row);
    if (low < columns) rows[high * stride + low]! += values[start + j]!;
    else left[(high - columns) * width + low - columns]! += values[start + j]!;
  }
}
