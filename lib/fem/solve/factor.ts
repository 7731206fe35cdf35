/**
 * Sparse Cholesky factors by fronts (I. S. Duff, J. K. Reid, The multifrontal solution of indefinite sparse
 * symmetric linear equations, 1983): pieces are added into small dense matrices, which are eliminated and passed on.
 */
import { Refusal } from "../../refusal.js";
import { type DenseFront, denseFront, eliminate } from "./dense.js";
import { dissect, type Front, frontRoom, squareOf } from "./dissection.js";
import type { Piece } from "./piece.js";
import { displacementsUnder, type FactoredFront, type Factors } from "./substitute.js";

/** A degree of freedom that nothing resists. */
export class UnconstrainedDof extends Refusal {
  /** Number of the degree of freedom in the structure. */
  readonly dof: number;

  constructor(dof: number) {
    super(`solver: degree of freedom ${dof} moves without resistance`);
    this.dof = dof;
  }
}

/**
 * Resistance to the softest motion, as a share of what its degrees of freedom resist one by one, below which it is
 * round-off. A sheet a ten-thousandth of its span thick and clamped on one side has 1e-13, a loose one 1e-17.
 */
const looseShare = 1e-15;

/**
 * Factors the structure.
 *
 * @param pieces everything that resists
 * @param held 1 for each degree of freedom that cannot move
 * @throws UnconstrainedDof when a degree of freedom moves without resistance
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
    const { dofs, eliminated } = front;
    for (let i = 0; i < dofs.length; i++) place[dofs[i]!] = i;
    const dense = denseFront(dofs.length, eliminated);
    top = bottom;
    for (const half of front.halves) {
      addLeft(dense, half, stack.subarray(top, top + squareOf(half)), place);
      top += squareOf(half);
    }
    for (const piece of front.pieces) addPiece(dense, pieces[piece]!, held, place);
    const loose = eliminate(dense, (pivot) => !(pivot > 0));
    if (loose >= 0) throw new UnconstrainedDof(dofs[loose]!);
    const rows = store.subarray(stored, stored + dofs.length * eliminated);
    keepRows(dense, rows);
    stored += rows.length;
    fronts.push({ dofs, eliminated, rows });
    stack.set(dense.left.subarray(0, squareOf(front)), bottom);
    top = bottom + squareOf(front);
  };
  pass(first);
  const factors = { fronts, held, fill };
  refuseUnconstrained(factors, diagonalOf(pieces, held.length));
  return factors;
}

/** The factors, without what lies above the diagonal. */
function keepRows({ rows, stride, columns, size }: DenseFront, kept: Float64Array): void {
  for (let i = 0; i < size; i++) {
    const [from, to, count] = [i * stride, i * columns, Math.min(columns, i + 1)];
    for (let k = 0; k < count; k++) kept[to + k] = rows[from + k]!;
  }
}

/**
 * Pushes everything a little: what is loose moves without end, almost free of resistance.
 *
 * @throws UnconstrainedDof when there is one
 */
function refuseUnconstrained(factors: Factors, stiffness: Float64Array): void {
  const push = new Float64Array(stiffness.length);
  for (let dof = 0; dof < push.length; dof++)
    if (!factors.held[dof]) push[dof] = Math.sin(1 + 12.9 * dof) * Math.sqrt(stiffness[dof]!);
  const moved = displacementsUnder(factors, push);
  let [work, apart, farthest, most] = [0, 0, 0, 0];
  for (let dof = 0; dof < moved.length; dof++) {
    work += push[dof]! * moved[dof]!;
    const reach = stiffness[dof]! * moved[dof]! ** 2;
    apart += reach;
    if (reach > most) [farthest, most] = [dof, reach];
  }
  if (!(work > looseShare * apart)) throw new UnconstrainedDof(farthest);
}

function diagonalOf(pieces: readonly Piece[], size: number): Float64Array {
  const diagonal = new Float64Array(size);
  for (const { dofs, matrix } of pieces) {
    for (let i = 0; i < dofs.length; i++) diagonal[dofs[i]!]! += Math.abs(matrix[i * (dofs.length + 1)]!);
  }
  return diagonal;
}

function addPiece(front: DenseFront, { dofs, matrix }: Piece, held: Uint8Array, place: Int32Array): void {
  const count = dofs.length;
  const places = new Int32Array(count);
  for (let i = 0; i < count; i++) places[i] = held[dofs[i]!] ? -1 : place[dofs[i]!]!;
  for (let i = 0; i < count; i++)
    if (places[i]! >= 0) addRow(front, places[i]!, places, i + 1, matrix, i * count);
}

function addLeft(
  front: DenseFront,
  { dofs, eliminated }: Front,
  left: Float64Array,
  place: Int32Array,
): void {
  const count = dofs.length - eliminated;
  const places = new Int32Array(count);
  for (let i = 0; i < count; i++) places[i] = place[dofs[eliminated + i]!]!;
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
  const isLeft = row >= columns;
  const own = (row - columns) * width - columns;
  const ownRow = row * stride;
  for (let j = 0; j < count; j++) {
    const column = places[j]!;
    if (column < 0) continue;
    if (isLeft && column >= columns) {
      if (column <= row) left[own + column]! += values[start + j]!;
      else left[(column - columns) * width + row - columns]! += values[start + j]!;
    } else if (column <= row) rows[ownRow + column]! += values[start + j]!;
    else rows[column * stride + row]! += values[start + j]!;
  }
}
