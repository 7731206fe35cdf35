/**
 * Triangles that follow lines, by refinement of Delaunay's triangulation: sides that are missing or crowded are
 * halved, poor or large triangles get their circumcentre (J. Ruppert, A Delaunay refinement algorithm for quality
 * 2-dimensional mesh generation, 1995). The triangulation itself is the delaunator package's.
 */
import Delaunator from "delaunator";
import { type Arc, apart, type Spot } from "./outline.js";
import { keyOf, onArc } from "./quad-mesh.js";
import type { SizeAt } from "./size.js";

/** What to triangulate. */
export interface TriangleTask {
  /** Places that stay where they are; sides join pairs of them. */
  readonly places: readonly Spot[];
  /** Places to begin with, which may be moved. */
  readonly seeds: readonly Spot[];
  /** Pairs of places that must be joined by sides. */
  readonly sides: readonly (readonly [number, number])[];
  /** Circles that halved sides return to. */
  readonly arcs: readonly Arc[];
  readonly size: SizeAt;
  /** Whether a side must stay whole: one that another face shares. */
  readonly stays: (a: Spot, b: Spot) => boolean;
  /** Whether a place belongs to the panel. */
  readonly inside: (place: Spot) => boolean;
}

/** Triangles by their corners. */
export interface Triangles {
  readonly places: readonly Spot[];
  readonly corners: readonly (readonly [number, number, number])[];
}

/** Rounds of refinement; each may add many places. */
const mostRounds = 80;
/** More places than any sensible panel needs. */
const mostPlaces = 20_000;
/** A triangle sharper than this is improved, degrees. */
const sharpest = 24;
/** Rounds of smoothing. */
const smoothings = 4;

/**
 * Triangulates.
 *
 * @throws RangeError when the refinement does not come to an end
 */
export function triangulate(task: TriangleTask): Triangles {
  let places = [...task.places, ...task.seeds];
  let sides: readonly (readonly [number, number])[] = task.sides;
  for (let round = 0; round < mostRounds && places.length < mostPlaces; round++) {
    const corners = delaunay(places);
    const split = crowdedSides(places, sides, corners, task);
    if (split.size > 0) {
      ({ places, sides } = withHalved(places, sides, split, task.arcs));
      continue;
    }
    const added = improvements(places, sides, corners, task);
    if (added.sides.size === 0 && added.places.length === 0) return finished(places, sides, task);
    ({ places, sides } = withHalved([...places, ...added.places], sides, added.sides, task.arcs));
  }
  throw new RangeError(
    "panel mesh: two outlines come so close that the mesh does not end; part them or let them meet",
  );
}

/** All triangles over the places. */
function delaunay(places: readonly Spot[]): [number, number, number][] {
  const { triangles } = Delaunator.from(places as Spot[]);
  return Array.from({ length: triangles.length / 3 }, (_, i) => [
    triangles[3 * i]!,
    triangles[3 * i + 2]!,
    triangles[3 * i + 1]!,
  ]);
}

/** Sides that are no side of a triangle, too long, or have a corner in their circle. */
function crowdedSides(
  places: readonly Spot[],
  sides: readonly (readonly [number, number])[],
  corners: readonly (readonly number[])[],
  { size, stays }: TriangleTask,
): Set<number> {
  const apexes = apexesOf(corners);
  const split = new Set<number>();
  sides.forEach(([a, b], index) => {
    const [from, to] = [places[a]!, places[b]!];
    if (stays(from, to)) return;
    const middle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const facing = apexes.get(keyOf(a, b));
    const reach = apart(from, to) / 2;
    const crowded = facing?.some((apex) => apart(places[apex]!, middle) < 0.999 * reach) ?? true;
    if (crowded || 2 * reach > 1.45 * size(middle)) split.add(index);
  });
  return split;
}

function apexesOf(corners: readonly (readonly number[])[]): Map<string, number[]> {
  const apexes = new Map<string, number[]>();
  for (const triangle of corners) {
    triangle.forEach((a, i) => {
      const key = keyOf(a, triangle[(i + 1) % 3]!);
      const apex = triangle[(i + 2) % 3]!;
      const known = apexes.get(key);
      if (known) known.push(apex);
      else apexes.set(key, [apex]);
    });
  }
  return apexes;
}

/** Circumcentres of poor triangles, or the sides that they would crowd. */
function improvements(
  places: readonly Spot[],
  sides: readonly (readonly [number, number])[],
  corners: readonly (readonly [number, number, number])[],
  { size, inside, stays }: TriangleTask,
): { places: Spot[]; sides: Set<number> } {
  const added = { places: [] as Spot[], sides: new Set<number>() };
  for (const triangle of corners) {
    const [a, b, c] = triangle.map((corner) => places[corner]!) as [Spot, Spot, Spot];
    const middle: Spot = [(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3];
    if (!inside(middle)) continue;
    const wanted = size(middle);
    const lengths = [apart(a, b), apart(b, c), apart(c, a)];
    const shortest = Math.min(...lengths);
    const circle = circumcircle(a, b, c);
    const poor =
      shortest < 2 * circle.radius * Math.sin((sharpest * Math.PI) / 180) && shortest > wanted / 12;
    if (!poor && circle.radius < 0.95 * wanted) continue;
    const crowds = sides.findIndex(([from, to]) => liesInCircleOf(circle.centre, places[from]!, places[to]!));
    if (crowds >= 0) {
      const [from, to] = sides[crowds]!.map((end) => places[end]!) as [Spot, Spot];
      if (!stays(from, to) && apart(from, to) > wanted / 4) added.sides.add(crowds);
      continue;
    }
    const room = added.places.every(
      (other) => apart(other, circle.centre) > 0.6 * Math.min(wanted, circle.radius),
    );
    if (room && inside(circle.centre)) added.places.push(circle.centre);
  }
  return added;
}

function liesInCircleOf(place: Spot, from: Spot, to: Spot): boolean {
  const middle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return apart(place, middle) < 0.999 * (apart(from, to) / 2);
}

function circumcircle(a: Spot, b: Spot, c: Spot): { centre: Spot; radius: number } {
  const [bx, by] = [b[0] - a[0], b[1] - a[1]];
  const [cx, cy] = [c[0] - a[0], c[1] - a[1]];
  const twice = 2 * (bx * cy - by * cx);
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * bb - by * cc) / twice, (bx * cc - cx * bb) / twice];
  return { centre: [a[0] + x, a[1] + y], radius: Math.hypot(x, y) };
}

function withHalved(
  places: readonly Spot[],
  sides: readonly (readonly [number, number])[],
  split: ReadonlySet<number>,
  arcs: readonly Arc[],
): { places: Spot[]; sides: (readonly [number, number])[] } {
  const all = [...places];
  const kept = sides.flatMap((side, index): (readonly [number, number])[] => {
    if (!split.has(index)) return [side];
    const [a, b] = side;
    const middle = all.push(onArc(places[a]!, places[b]!, arcs)) - 1;
    return [
      [a, middle],
      [middle, b],
    ];
  });
  return { places: all, sides: kept };
}

/** Evens the triangles out: free places move to the middle of their neighbours, as long as the sides stay. */
function finished(
  places: readonly Spot[],
  sides: readonly (readonly [number, number])[],
  { inside, places: kept }: TriangleTask,
): Triangles {
  const fixed = new Set([...kept.keys(), ...sides.flat()]);
  let best = [...places];
  for (let round = 0; round < smoothings; round++) {
    const moved = smoothed(best, delaunay(best), fixed);
    const apexes = apexesOf(delaunay(moved));
    if (!sides.every(([a, b]) => apexes.has(keyOf(a, b)))) break;
    best = moved;
  }
  const corners = delaunay(best).filter((triangle) => {
    const [a, b, c] = triangle.map((corner) => best[corner]!) as [Spot, Spot, Spot];
    return inside([(a[0] + b[0] + c[0]) / 3, (a[1] + b[1] + c[1]) / 3]);
  });
  return { places: best, corners };
}

function smoothed(
  places: readonly Spot[],
  corners: readonly (readonly number[])[],
  fixed: ReadonlySet<number>,
): Spot[] {
  const sums = places.map(() => [0, 0, 0]);
  for (const triangle of corners) {
    triangle.forEach((a, i) => {
      const other = places[triangle[(i + 1) % 3]!]!;
      const sum = sums[a]!;
      sum[0]! += other[0];
      sum[1]! += other[1];
      sum[2]! += 1;
    });
  }
  return places.map((place, i) => {
    const [x = 0, y = 0, count = 0] = sums[i]!;
    return fixed.has(i) || count === 0 ? place : [x / count, y / count];
  });
}
