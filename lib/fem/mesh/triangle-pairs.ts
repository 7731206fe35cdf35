import type { Spot } from "./outline.js";
import { endsOf, sidesOf } from "./quad-mesh.js";

/** A pair whose worst corner is further from a right angle than this stays two triangles, rad. */
const farthestFromSquare = (50 * Math.PI) / 180;

/**
 * Triangles joined in pairs, the best squares first; the rest stay triangles.
 *
 * @param places corners
 * @param triangles counterclockwise
 * @param stays whether the side between two places must remain
 */
export function pairedFaces(
  places: readonly Spot[],
  triangles: readonly (readonly [number, number, number])[],
  stays: (a: Spot, b: Spot) => boolean,
): readonly (readonly number[])[] {
  const pairs = possiblePairs(places, triangles, stays).sort((a, b) => a.away - b.away);
  const used = new Set<number>();
  const squares: (readonly number[])[] = [];
  for (const { first, second, square } of pairs) {
    if (used.has(first) || used.has(second)) continue;
    used.add(first).add(second);
    squares.push(square);
  }
  return [...squares, ...triangles.filter((_, i) => !used.has(i))];
}

interface Pair {
  readonly first: number;
  readonly second: number;
  readonly square: readonly number[];
  /** How far the worst corner is from a right angle, rad. */
  readonly away: number;
}

function possiblePairs(
  places: readonly Spot[],
  triangles: readonly (readonly [number, number, number])[],
  stays: (a: Spot, b: Spot) => boolean,
): Pair[] {
  const owners = new Map<number, number[]>();
  triangles.forEach((triangle, index) => {
    for (const key of sidesOf([triangle]).keys()) owners.set(key, [...(owners.get(key) ?? []), index]);
  });
  return [...owners].flatMap(([key, [first, second]]): Pair[] => {
    if (first === undefined || second === undefined) return [];
    const [a, b] = endsOf(key);
    if (stays(places[a]!, places[b]!)) return [];
    const square = joined(triangles[first]!, triangles[second]!, a, b);
    const away = Math.max(...square.map((_, i) => fromSquare(places, square, i)));
    return away < farthestFromSquare ? [{ first, second, square, away }] : [];
  });
}

/** The four corners of two triangles that share the side a b, counterclockwise. */
function joined(
  first: readonly number[],
  second: readonly number[],
  a: number,
  b: number,
): readonly number[] {
  const apex = first.findIndex((corner) => corner !== a && corner !== b);
  const far = second.find((corner) => corner !== a && corner !== b)!;
  return [first[apex]!, first[(apex + 1) % 3]!, far, first[(apex + 2) % 3]!];
}

function fromSquare(places: readonly Spot[], square: readonly number[], i: number): number {
  const [before, at, after] = [3, 0, 1].map((step) => places[square[(i + step) % 4]!]!) as [Spot, Spot, Spot];
  const [px, py, nx, ny] = [before[0] - at[0], before[1] - at[1], after[0] - at[0], after[1] - at[1]];
  const angle = Math.atan2(nx * py - ny * px, px * nx + py * ny);
  return Math.abs(angle - Math.PI / 2);
}
