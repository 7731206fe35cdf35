/** A box that nothing holds, ready to be joined to others: how it gives way to forces in balance. */
import { displacementsUnder, type Factors, factorPieces, LooseFreedom } from "../solve/index.js";
import type { BoxSpot } from "./box-problem.js";
import { type BoxStructure, boxFreedoms, piecesOf } from "./box-structure.js";
import { cross } from "./fitting.js";
import { distance } from "./line-sides.js";
import { looseWords } from "./loose-words.js";

/** A box, factored while three of its nodes stand still: forces in balance leave nothing on those. */
export interface FreePart {
  readonly structure: BoxStructure;
  /** Where its 0, 0, 0 lies among the other parts. */
  readonly at: BoxSpot;
  readonly factors: Factors;
}

/**
 * Factors a box that nothing holds.
 *
 * @param structure the box
 * @param at where its 0, 0, 0 lies among the other parts
 * @throws RangeError when a part of it is loose in itself, naming where and how
 */
export function freePart(structure: BoxStructure, at: BoxSpot): FreePart {
  const pieces = piecesOf(structure);
  const held = new Uint8Array(boxFreedoms * structure.nodes.length).fill(1);
  for (const { freedoms } of pieces) for (const freedom of freedoms) held[freedom] = 0;
  for (const freedom of sixHolds(structure.nodes)) held[freedom] = 1;
  try {
    return { structure, at, factors: factorPieces(pieces, held) };
  } catch (error) {
    if (error instanceof LooseFreedom) throw new RangeError(looseWords(structure, error.freedom));
    throw error;
  }
}

/** Movement under forces, up to a rigid movement of the part. */
export function movedFree({ factors }: FreePart, load: Float64Array): Float64Array {
  return displacementsUnder(factors, load);
}

/** How a place moves along an axis when its body moves by 1 along x, y, z or turns by 1 about them at 0, 0, 0. */
export function rigidRow(spot: BoxSpot, along: BoxSpot): readonly number[] {
  return [...along, ...cross(spot, along)];
}

/** Six freedoms of three nodes far apart that leave no rigid movement. */
function sixHolds(nodes: readonly BoxSpot[]): readonly number[] {
  const first = 0;
  const second = farthest(nodes, (spot) => distance(spot, nodes[first]!));
  const line = nodes[second]!.map((at, axis) => at - nodes[first]![axis]!) as unknown as BoxSpot;
  const third = farthest(nodes, (spot) =>
    Math.hypot(...cross(line, spot.map((at, axis) => at - nodes[first]![axis]!) as unknown as BoxSpot)),
  );
  const reach = Math.hypot(...line);
  const kept: (readonly number[])[] = [];
  return [first, second, third].flatMap((node) =>
    [0, 1, 2].flatMap((axis) => {
      const along: BoxSpot = [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];
      const spot = nodes[node]!.map((at, k) => (at - nodes[first]![k]!) / reach) as unknown as BoxSpot;
      const row = withoutOthers(rigidRow(spot, along), kept);
      const size = Math.hypot(...row);
      // Far enough from what the holds before it stop already.
      if (kept.length === 6 || size < 0.2) return [];
      kept.push(row.map((value) => value / size));
      return [boxFreedoms * node + axis];
    }),
  );
}

function farthest(nodes: readonly BoxSpot[], away: (spot: BoxSpot) => number): number {
  return nodes.reduce((best, spot, node) => (away(spot) > away(nodes[best]!) ? node : best), 0);
}

function withoutOthers(row: readonly number[], kept: readonly (readonly number[])[]): readonly number[] {
  return kept.reduce((rest, other) => {
    const share = rest.reduce((sum, value, i) => sum + value * other[i]!, 0);
    return rest.map((value, i) => value - share * other[i]!);
  }, row);
}
