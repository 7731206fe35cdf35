/**
 * Triangles that follow lines, by refinement of Delaunay's triangulation: sides that are missing or crowded are
 * halved, poor or large triangles get their circumcentre (J. Ruppert, A Delaunay refinement algorithm for quality
 * 2-dimensional mesh generation, 1995). The triangulation itself is the delaunator package's.
 */

import Delaunator from "delaunator";
import { Refusal } from "../../refusal.js";
import { apart, halfWay, type Point2, turnOf } from "../../shape/index.js";
import type { Arc } from "./outline.js";
import type { PlanarSide } from "./planar-sides.js";
import { keyOf, onArc } from "./quad-mesh.js";
import type { SizeAt } from "./size.js";

/** What to triangulate. */
export interface TriangleTask {
  /** Places that stay where they are; sides join pairs of them. */
  readonly places: readonly Point2[];
  /** Places to begin with, which may be moved. */
  readonly seeds: readonly Point2[];
  /** Pairs of places that must be joined by sides. */
  readonly sides: readonly PlanarSide[];
  /** Circles that halved sides return to. */
  readonly arcs: readonly Arc[];
  /** How large triangles may be. */
  readonly size: SizeAt;
  /** Whether a side must stay whole: one that another face shares. */
  readonly stays: (a: Point2, b: Point2) => boolean;
}

/** Triangles by their corners. */
export interface Triangles {
  /** Corners of the triangles, m. */
  readonly places: readonly Point2[];
  /** Three corners each, counterclockwise. */
  readonly corners: readonly (readonly [number, number, number])[];
}

/** Rounds of refinement; each may add many places. */
const mostRounds = 80;
/** More places than any sensible panel needs. */
const mostPlaces = 20_000;
/** A triangle sharper than this is improved, degrees. */
const sharpest = 24;
/** A side that is so many times shorter than wanted is not halved for being crowded. */
const shortSideRatio = 30;
/** Rounds of smoothing. */
const smoothings = 4;

/**
 * Triangulates.
 *
 * @throws Refusal when the refinement does not come to an end
 */
export function triangulate(task: TriangleTask): Triangles {
  let places = [...task.places, ...task.seeds];
  let { sides } = task;
  const unit = Math.max(...task.places.map(({ x, y }) => Math.abs(x) + Math.abs(y)));
  const halving: Halving = { arcs: task.arcs, sharp: sharpPlaces(task), unit };
  for (let round = 0; round < mostRounds && places.length < mostPlaces; round++) {
    const corners = delaunay(places);
    const split = crowdedSides(places, sides, corners, task);
    if (split.size > 0) {
      ({ places, sides } = withHalved(places, sides, split, halving));
      continue;
    }
    const added = improvements(places, sides, corners, task);
    if (added.sides.size === 0 && added.places.length === 0) return finished(places, sides, task);
    ({ places, sides } = withHalved([...places, ...added.places], sides, added.sides, halving));
  }
  throw new Refusal(
    "panel mesh: two outlines come so close that the mesh does not end; part them or let them meet",
  );
}

/** All triangles over the places. */
function delaunay(places: Point2[]): [number, number, number][] {
  const { triangles } = Delaunator.from(
    places,
    ({ x }) => x,
    ({ y }) => y,
  );
  return Array.from({ length: triangles.length / 3 }, (_, i) => [
    triangles[3 * i]!,
    triangles[3 * i + 2]!,
    triangles[3 * i + 1]!,
  ]);
}

/** Sides that are no side of a triangle, too long, or have a corner in their circle. */
function crowdedSides(
  places: readonly Point2[],
  sides: readonly PlanarSide[],
  corners: readonly (readonly number[])[],
  { size, stays }: TriangleTask,
): Set<number> {
  const apexes = apexesOf(corners);
  const split = new Set<number>();
  sides.forEach(([a, b], index) => {
    const [from, to] = [places[a]!, places[b]!];
    if (stays(from, to)) return;
    const middle = halfWay(from, to);
    const facing = apexes.get(keyOf(a, b));
    const reach = apart(from, to) / 2;
    const wanted = size(middle);
    const long = 2 * reach > wanted / shortSideRatio;
    const crowded = facing?.some((apex) => long && apart(places[apex]!, middle) < 0.999 * reach) ?? true;
    if (crowded || 2 * reach > 1.45 * wanted) split.add(index);
  });
  return split;
}

function apexesOf(corners: readonly (readonly number[])[]): Map<number, number[]> {
  const apexes = new Map<number, number[]>();
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

/** Whether a place lies in the material as its sides bound it: arcs as the chords they are now. */
function insideOf(places: readonly Point2[], sides: readonly PlanarSide[]): (place: Point2) => boolean {
  const edges = sides
    .filter(([, , bounds]) => bounds)
    .map(([a, b]) => {
      const [from, to] = [places[a]!, places[b]!];
      return [from.x, from.y, to.x, to.y] as const;
    });
  return ({ x, y }) => {
    let inside = false;
    for (const [ax, ay, bx, by] of edges)
      if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
    return inside;
  };
}

/** Circumcentres of poor triangles, or the sides that they would crowd. */
function improvements(
  places: readonly Point2[],
  sides: readonly PlanarSide[],
  corners: readonly (readonly [number, number, number])[],
  { size, stays }: TriangleTask,
): { places: Point2[]; sides: Set<number> } {
  const added = { places: [] as Point2[], sides: new Set<number>() };
  const inside = insideOf(places, sides);
  for (const triangle of corners) {
    const [a, b, c] = triangle.map((corner) => places[corner]!) as [Point2, Point2, Point2];
    const middle = { x: (a.x + b.x + c.x) / 3, y: (a.y + b.y + c.y) / 3 };
    if (!isSolid(a, b, c) || !inside(middle)) continue;
    const wanted = size(middle);
    const lengths = [apart(a, b), apart(b, c), apart(c, a)];
    const shortest = Math.min(...lengths);
    const circle = circumcircle(a, b, c);
    const poor =
      shortest < 2 * circle.radius * Math.sin((sharpest * Math.PI) / 180) && shortest > wanted / 12;
    if (!poor && circle.radius < 0.95 * wanted) continue;
    const crowds = sides.findIndex(([from, to]) => liesInCircleOf(circle.centre, places[from]!, places[to]!));
    if (crowds >= 0) {
      const [a, b] = sides[crowds]!;
      const [from, to] = [places[a]!, places[b]!];
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

function liesInCircleOf(place: Point2, from: Point2, to: Point2): boolean {
  const middle = halfWay(from, to);
  return apart(place, middle) < 0.999 * (apart(from, to) / 2);
}

function circumcircle(a: Point2, b: Point2, c: Point2): { centre: Point2; radius: number } {
  const [bx, by] = [b.x - a.x, b.y - a.y];
  const [cx, cy] = [c.x - a.x, c.y - a.y];
  const twice = 2 * (bx * cy - by * cx);
  const [bb, cc] = [bx * bx + by * by, cx * cx + cy * cy];
  const [x, y] = [(cy * bb - by * cc) / twice, (bx * cc - cx * bb) / twice];
  return { centre: { x: a.x + x, y: a.y + y }, radius: Math.hypot(x, y) };
}

/** What halving a side must heed. */
interface Halving {
  /** Circles that halved sides return to. */
  readonly arcs: readonly Arc[];
  /** Places where two sides meet at a sharp angle. */
  readonly sharp: ReadonlySet<number>;
  /** Length whose halves, quarters and so on are measured off from sharp corners, m. */
  readonly unit: number;
}

/** Two sides that meet below this angle crowd each other until they are equally long, rad. */
const crowdingAngle = Math.PI / 3;

function sharpPlaces({ places, sides }: TriangleTask): ReadonlySet<number> {
  const headings = new Map<number, number[]>();
  for (const [a, b] of sides)
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const angle = Math.atan2(places[to]!.y - places[from]!.y, places[to]!.x - places[from]!.x);
      headings.set(from, [...(headings.get(from) ?? []), angle]);
    }
  const isSharp = (angles: number[]): boolean =>
    angles
      .sort((a, b) => a - b)
      .some((angle, i) => {
        const next = angles[i + 1] ?? angles[0]! + 2 * Math.PI;
        return angles.length > 1 && next - angle < crowdingAngle;
      });
  return new Set([...headings].filter(([, angles]) => isSharp(angles)).map(([place]) => place));
}

function withHalved(
  places: readonly Point2[],
  sides: readonly PlanarSide[],
  split: ReadonlySet<number>,
  halving: Halving,
): { places: Point2[]; sides: PlanarSide[] } {
  const all = [...places];
  const kept = sides.flatMap((side, index): PlanarSide[] => {
    if (!split.has(index)) return [side];
    const [a, b, bounds] = side;
    const middle = all.push(halfOf(places, side, halving)) - 1;
    return [
      [a, middle, bounds],
      [middle, b, bounds],
    ];
  });
  return { places: all, sides: kept };
}

/**
 * The middle of a side; beside a sharp corner a half, quarter or so of the unit from it, so that its sides end alike.
 */
function halfOf(places: readonly Point2[], [a, b]: PlanarSide, { arcs, sharp, unit }: Halving): Point2 {
  const [from, to] = [places[a]!, places[b]!];
  if (sharp.has(a) === sharp.has(b)) return onArc(from, to, arcs);
  const length = apart(from, to);
  const away = (unit * 2 ** Math.round(Math.log2(length / 2 / unit))) / length;
  return onArc(from, to, arcs, sharp.has(a) ? away : 1 - away);
}

/** Evens the triangles out: free places move to the middle of their neighbours, as long as the sides stay. */
function finished(
  places: readonly Point2[],
  sides: readonly PlanarSide[],
  { places: kept }: TriangleTask,
): Triangles {
  const fixed = new Set([...kept.keys(), ...sides.map(([a]) => a), ...sides.map(([, b]) => b)]);
  const inside = insideOf(places, sides);
  let best = [...places];
  for (let round = 0; round < smoothings; round++) {
    const moved = smoothed(best, delaunay(best), fixed);
    const apexes = apexesOf(delaunay(moved));
    if (!sides.every(([a, b]) => apexes.has(keyOf(a, b)))) break;
    best = moved;
  }
  const corners = delaunay(best).filter((triangle) => {
    const [a, b, c] = triangle.map((corner) => best[corner]!) as [Point2, Point2, Point2];
    return isSolid(a, b, c) && inside({ x: (a.x + b.x + c.x) / 3, y: (a.y + b.y + c.y) / 3 });
  });
  return { places: best, corners };
}

/**
 * Each free place in the middle of its neighbours, unless a triangle around it gets flatter than the flattest was.
 */
function smoothed(
  places: readonly Point2[],
  corners: readonly (readonly [number, number, number])[],
  fixed: ReadonlySet<number>,
): Point2[] {
  const around = places.map((): (readonly [number, number, number])[] => []);
  for (const triangle of corners) for (const corner of triangle) around[corner]!.push(triangle);
  const all = [...places];
  const flattest = (triangles: readonly (readonly number[])[]): number =>
    Math.min(...triangles.map(([a, b, c]) => roundness(all[a!]!, all[b!]!, all[c!]!)));
  around.forEach((triangles, node) => {
    if (fixed.has(node) || triangles.length === 0) return;
    const [before, was] = [all[node]!, flattest(triangles)];
    all[node] = middleOfOthers(triangles, node, all);
    if (flattest(triangles) < was) all[node] = before;
  });
  return all;
}

function middleOfOthers(
  triangles: readonly (readonly number[])[],
  node: number,
  places: readonly Point2[],
): Point2 {
  const others = triangles.flat().filter((corner) => corner !== node);
  const mean = (axis: "x" | "y"): number =>
    others.reduce((sum, corner) => sum + places[corner]![axis], 0) / others.length;
  return { x: mean("x"), y: mean("y") };
}

/** A triangle flatter than this has its corners on one line but for rounding. */
const flat = 1e-6;

function isSolid(a: Point2, b: Point2, c: Point2): boolean {
  return roundness(a, b, c) > flat;
}

/** Twice a triangle's area over the square of its longest side: negative when turned over. */
function roundness(a: Point2, b: Point2, c: Point2): number {
  return turnOf(a, b, c) / Math.max(apart(a, b), apart(b, c), apart(c, a)) ** 2;
}
