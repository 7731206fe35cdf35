/**
 * Sparse Cholesky factors by fronts (I. S. Duff, J. K. Reid, The multifrontal solution of indefinite sparse
 * symmetric linear equations, 1983): pieces are added into small dense matrices, which are eliminated and passed on.
 */
import { eliminate, kernelRows } from "./dense.js";
import { dissect, type Front } from "./dissection.js";
import type { Piece } from "./piece.js";
import { displacementsUnder } from "./substitute.js";

/** A structure ready to be solved for any number of loads. */
export interface Factors {
  /** In the order of elimination. */
  readonly fronts: readonly FactoredFront[];
  /** 1 for each freedom that cannot move. */
  readonly held: Uint8Array;
  /** Numbers kept. */
  readonly fill: number;
}

/** One step of elimination, done. */
export interface FactoredFront {
  readonly freedoms: Int32Array;
  readonly eliminated: number;
  /** A row a freedom, a column for each eliminated one; reciprocals on the diagonal. */
  readonly rows: Float64Array;
}

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
  const place = new Int32Array(held.length);
  const fronts: FactoredFront[] = [];
  let fill = 0;
  /** Eliminates a front and everything before it; what it passes on is the lower half of a square. */
  const pass = (front: Front): Float64Array => {
    const before = front.halves.map((half) => ({ half, left: pass(half) }));
    const { freedoms, eliminated } = front;
    const size = freedoms.length;
    const matrix = new Float64Array((size + kernelRows - 1) * size);
    for (let i = 0; i < size; i++) place[freedoms[i]!] = i;
    for (const { half, left } of before) addLeft(matrix, size, half, left, place);
    for (const piece of front.pieces) addPiece(matrix, size, pieces[piece]!, held, place);
    const loose = eliminate(matrix, size, eliminated, (_, pivot) => !(pivot > 0));
    if (loose >= 0) throw new LooseFreedom(freedoms[loose]!);
    fronts.push({ freedoms, eliminated, rows: leading(matrix, size, eliminated) });
    fill += size * eliminated;
    return trailing(matrix, size, eliminated);
  };
  pass(dissect(pieces, held));
  const factors = { fronts, held, fill };
  refuseLoose(factors, diagonalOf(pieces, held.length));
  return factors;
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

function addPiece(
  matrix: Float64Array,
  size: number,
  piece: Piece,
  held: Uint8Array,
  place: Int32Array,
): void {
  const { freedoms, matrix: own } = piece;
  const count = freedoms.length;
  for (let i = 0; i < count; i++) {
    if (held[freedoms[i]!]) continue;
    const row = place[freedoms[i]!]!;
    for (let j = 0; j < count; j++) {
      if (held[freedoms[j]!]) continue;
      const column = place[freedoms[j]!]!;
      if (column <= row) matrix[row * size + column]! += own[i * count + j]!;
    }
  }
}

function addLeft(
  matrix: Float64Array,
  size: number,
  half: Front,
  left: Float64Array,
  place: Int32Array,
): void {
  const { freedoms, eliminated } = half;
  const count = freedoms.length - eliminated;
  for (let i = 0; i < count; i++) {
    const row = place[freedoms[eliminated + i]!]!;
    for (let j = 0; j <= i; j++) {
      const column = place[freedoms[eliminated + j]!]!;
      const at = row >= column ? row * size + column : column * size + row;
      matrix[at]! += left[i * count + j]!;
    }
  }
}

function leading(matrix: Float64Array, size: number, columns: number): Float64Array {
  const rows = new Float64Array(size * columns);
  for (let i = 0; i < size; i++)
    rows.set(matrix.subarray(i * size, i * size + Math.min(columns, i + 1)), i * columns);
  return rows;
}

function trailing(matrix: Float64Array, size: number, columns: number): Float64Array {
  const count = size - columns;
  const left = new Float64Array(count * count);
  for (let i = 0; i < count; i++) {
    const start = (columns + i) * size + columns;
    left.set(matrix.subarray(start, start + i + 1), i * count);
  }
  return left;
}
