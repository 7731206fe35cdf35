/**
 * The order of elimination: nested dissection of the pieces by place (A. George, Nested dissection of a regular
 * finite element mesh, 1973). The pieces are halved across their longest extent, again and again; what two halves
 * share is eliminated after both. Where the pieces lie is known, so no graph has to be searched.
 */
import type { Piece } from "./piece.js";

/** One step of elimination. */
export interface Front {
  /** Halves that come before; none at a leaf. */
  readonly halves: readonly Front[];
  /** Pieces added here, at a leaf. */
  readonly pieces: Int32Array;
  /** Degrees of freedom: first those eliminated here, then those shared with the rest. */
  readonly dofs: Int32Array;
  /** How many are eliminated here. */
  readonly eliminated: number;
}

/** Pieces in a leaf; fewer make more, smaller fronts. */
const leafSize = 4;
/** How far from the middle a cut may lie to run between rows of elements, as a share of the pieces. */
const offMiddle = 0.12;
/** Places nearer than this share of the extent lie in the same row. */
const sameRow = 1e-6;

/** What is known of all pieces. */
interface Whole {
  /** All pieces of the structure. */
  readonly pieces: readonly Piece[];
  /** 1 for each degree of freedom that cannot move. */
  readonly held: Uint8Array;
  /** Pieces that touch each degree of freedom. */
  readonly touching: Int32Array;
  /** 1 more than where a degree of freedom stands in the list being made; 0 when it is not in it. */
  readonly listed: Int32Array;
}

/** A front, and how many pieces of each degree of freedom it passes on came before. */
interface Divided {
  /** The front. */
  readonly front: Front;
  /** Of each degree of freedom it passes on, how many pieces came before. */
  readonly times: readonly number[];
}

/**
 * Orders the elimination.
 *
 * @param pieces of the structure
 * @param held 1 for each degree of freedom that cannot move and is left out
 */
export function dissect(pieces: readonly Piece[], held: Uint8Array): Front {
  const touching = new Int32Array(held.length);
  for (const { dofs } of pieces) for (let i = 0; i < dofs.length; i++) touching[dofs[i]!]! += 1;
  const whole = { pieces, held, touching, listed: new Int32Array(held.length) };
  return divide(
    whole,
    Int32Array.from(pieces, (_, index) => index),
  ).front;
}

function divide(whole: Whole, members: Int32Array): Divided {
  const list = { dofs: [] as number[], times: [] as number[] };
  if (members.length <= leafSize) {
    for (const member of members) listPiece(whole, whole.pieces[member]!.dofs, list);
    return divided(whole, [], members, list);
  }
  const halves = halved(whole.pieces, members).map((half) => divide(whole, half));
  for (const { front, times } of halves)
    for (let i = 0; i < times.length; i++)
      listDof(whole.listed, front.dofs[front.eliminated + i]!, times[i]!, list);
  return divided(
    whole,
    halves.map(({ front }) => front),
    new Int32Array(0),
    list,
  );
}

/** Degrees of freedom met in a front, and how many of their pieces came so far. */
interface DofList {
  /** The degrees of freedom, in the order they were met. */
  readonly dofs: number[];
  /** Of each, how many pieces came so far. */
  readonly times: number[];
}

function listPiece({ held, listed }: Whole, dofs: Int32Array, list: DofList): void {
  for (let i = 0; i < dofs.length; i++) if (held[dofs[i]!] === 0) listDof(listed, dofs[i]!, 1, list);
}

function listDof(listed: Int32Array, dof: number, by: number, list: DofList): void {
  const at = listed[dof]!;
  if (at > 0) {
    list.times[at - 1]! += by;
    return;
  }
  list.times.push(by);
  listed[dof] = list.dofs.push(dof);
}

/** Eliminates the degrees of freedom all of whose pieces came before, and passes the others on. */
function divided(
  { touching, listed }: Whole,
  halves: readonly Front[],
  pieces: Int32Array,
  { dofs, times }: DofList,
): Divided {
  const complete: number[] = [];
  const passed: number[] = [];
  const timesPassed: number[] = [];
  for (let i = 0; i < dofs.length; i++) {
    const dof = dofs[i]!;
    listed[dof] = 0;
    if (times[i] === touching[dof]) complete.push(dof);
    else {
      passed.push(dof);
      timesPassed.push(times[i]!);
    }
  }
  const ordered = new Int32Array(dofs.length);
  ordered.set(complete);
  ordered.set(passed, complete.length);
  return { front: { halves, pieces, dofs: ordered, eliminated: complete.length }, times: timesPassed };
}

/** Two halves by the place of the middles along the longest extent. */
function halved(pieces: readonly Piece[], members: Int32Array): readonly [Int32Array, Int32Array] {
  const [axis, extent] = longestAxis(pieces, members);
  const places = new Float64Array(members.length);
  for (let i = 0; i < members.length; i++) places[i] = pieces[members[i]!]!.middle[axis];
  const sorted = places.slice().sort();
  const cut = cutNear(sorted, sameRow * extent);
  const border = (sorted[cut - 1]! + sorted[cut]!) / 2;
  const before = new Int32Array(cut);
  const after = new Int32Array(members.length - cut);
  let [first, second] = [0, 0];
  for (let i = 0; i < members.length; i++) {
    // Where no border runs between rows, the row that is cut is filled up in order.
    const low = places[i]! <= border;
    if ((low && first < cut) || second === after.length) before[first++] = members[i]!;
    else after[second++] = members[i]!;
  }
  return [before, after];
}

/** How many places come before the cut: half, or a little more or less where a row ends. */
function cutNear(sorted: Float64Array, row: number): number {
  const half = sorted.length >> 1;
  const most = Math.floor(offMiddle * sorted.length);
  for (let off = 0; off <= most; off++) {
    for (const cut of [half - off, half + off])
      if (cut > 0 && cut < sorted.length && sorted[cut]! - sorted[cut - 1]! > row) return cut;
  }
  return half;
}

function longestAxis(
  pieces: readonly Piece[],
  members: Int32Array,
): readonly [axis: 0 | 1 | 2, extent: number] {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < members.length; i++) {
    const { middle } = pieces[members[i]!]!;
    for (let axis = 0; axis < 3; axis++) {
      if (middle[axis]! < low[axis]!) low[axis] = middle[axis]!;
      if (middle[axis]! > high[axis]!) high[axis] = middle[axis]!;
    }
  }
  const extents = low.map((from, axis) => high[axis]! - from);
  const longest = Math.max(...extents);
  return [extents.indexOf(longest) as 0 | 1 | 2, longest];
}

/** How much room the fronts of a structure need, in numbers. */
export interface FrontRoom {
  /** For all factors. */
  readonly fill: number;
  /** For the squares that wait to be taken over, at their most. */
  readonly waiting: number;
}

/** Works out the room. */
export function frontRoom(front: Front): FrontRoom {
  let [fill, used, waiting] = [0, 0, 0];
  const visit = ({ halves, dofs, eliminated }: Front): void => {
    for (const half of halves) visit(half);
    fill += dofs.length * eliminated;
    for (const half of halves) used -= squareOf(half);
    used += (dofs.length - eliminated) ** 2;
    waiting = Math.max(waiting, used);
  };
  visit(front);
  return { fill, waiting };
}

/** Numbers in the square that a front passes on. */
export function squareOf({ dofs, eliminated }: Front): number {
  return (dofs.length - eliminated) ** 2;
}
