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
  readonly pieces: readonly number[];
  /** Freedoms: first those eliminated here, then those shared with the rest. */
  readonly freedoms: Int32Array;
  /** How many are eliminated here. */
  readonly eliminated: number;
}

/** Pieces in a leaf; fewer make more, smaller fronts. */
const leafSize = 4;

/**
 * Orders the elimination.
 *
 * @param pieces of the structure
 * @param held 1 for each freedom that cannot move and is left out
 */
export function dissect(pieces: readonly Piece[], held: Uint8Array): Front {
  const touching = new Int32Array(held.length);
  for (const { freedoms } of pieces) for (const freedom of freedoms) touching[freedom]!++;
  return divide(
    pieces,
    pieces.map((_, index) => index),
    held,
    touching,
  ).front;
}

/** A front, and for each freedom it passes on, how many of its pieces came before. */
interface Divided {
  readonly front: Front;
  readonly passed: ReadonlyMap<number, number>;
}

function divide(
  pieces: readonly Piece[],
  members: readonly number[],
  held: Uint8Array,
  touching: Int32Array,
): Divided {
  const counts = new Map<number, number>();
  const count = (freedom: number, by: number): void => {
    counts.set(freedom, (counts.get(freedom) ?? 0) + by);
  };
  if (members.length <= leafSize) {
    for (const member of members)
      for (const freedom of pieces[member]!.freedoms) if (!held[freedom]) count(freedom, 1);
    return divided([], members, counts, touching);
  }
  const halves = halved(pieces, members).map((half) => divide(pieces, half, held, touching));
  for (const { passed } of halves) for (const [freedom, times] of passed) count(freedom, times);
  return divided(
    halves.map(({ front }) => front),
    [],
    counts,
    touching,
  );
}

/** Eliminates the freedoms all of whose pieces came before, and passes the others on. */
function divided(
  halves: readonly Front[],
  pieces: readonly number[],
  counts: ReadonlyMap<number, number>,
  touching: Int32Array,
): Divided {
  const complete: number[] = [];
  const passed = new Map<number, number>();
  for (const [freedom, times] of counts) {
    if (times === touching[freedom]) complete.push(freedom);
    else passed.set(freedom, times);
  }
  const freedoms = Int32Array.from([...complete, ...passed.keys()]);
  return { front: { halves, pieces, freedoms, eliminated: complete.length }, passed };
}

/** Two halves by the place of the middles along the longest extent. */
function halved(pieces: readonly Piece[], members: readonly number[]): [number[], number[]] {
  const axis = longestAxis(pieces, members);
  const sorted = [...members].sort((a, b) => pieces[a]!.middle[axis]! - pieces[b]!.middle[axis]!);
  const half = sorted.length >> 1;
  return [sorted.slice(0, half), sorted.slice(half)];
}

function longestAxis(pieces: readonly Piece[], members: readonly number[]): 0 | 1 | 2 {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const member of members) {
    for (const axis of [0, 1, 2] as const) {
      low[axis] = Math.min(low[axis]!, pieces[member]!.middle[axis]);
      high[axis] = Math.max(high[axis]!, pieces[member]!.middle[axis]);
    }
  }
  const extent = low.map((from, axis) => high[axis]! - from);
  return extent.indexOf(Math.max(...extent)) as 0 | 1 | 2;
}
