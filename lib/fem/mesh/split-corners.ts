/** The mesh of any panel: triangles joined in pairs where they make a good square, then all of them split. */

import { apart, type Point2 } from "../../shape/index.js";
import { type Arc, arcsOf, isMaterial, type Outline } from "./outline.js";
import { toSide } from "./outline-faults.js";
import { type PlanarSides, planarSides } from "./planar-sides.js";
import { endsOf, keyOf, onArc, type Quad, sidesOf } from "./quad-mesh.js";
import type { CornerMesh } from "./refinement.js";
import type { MeshGuides, SizeAt } from "./size.js";
import { triangulate } from "./triangles.js";

/** Splitting halves every side, so triangles are made twice as large as the elements wanted. */
const triangleScale = 1.6;

/**
 * Meshes by triangles.
 *
 * @param outline any
 * @param guides sides and places the mesh must follow
 * @param size of elements
 */
export function splitCorners(outline: Outline, guides: MeshGuides, size: SizeAt): CornerMesh {
  const arcs = outline.cutouts.flatMap(arcsOf);
  const triangleSize: SizeAt = (place) => triangleScale * size(place);
  const planar = planarSides(outline, guides, triangleSize);
  const { places, corners } = triangulate({
    places: planar.places,
    seeds: seeds(outline, planar, triangleSize),
    sides: planar.sides,
    arcs,
    size: triangleSize,
    stays: (a, b) => guides.shared && followsBox(a, b, whole(outline)),
  });
  const onGuides = (a: Point2, b: Point2): boolean => guides.boxes.some((box) => followsBox(a, b, box));
  return splitFaces(places, pairedFaces(places, corners, onGuides), arcs);
}

function whole({ length, width }: Outline): MeshGuides["boxes"][number] {
  return { left: 0, bottom: 0, width: length, height: width };
}

/** A regular start: a square lattice of places that keep their distance from all sides. */
function seeds({ length, width, ...rest }: Outline, { places, sides }: PlanarSides, size: SizeAt): Point2[] {
  const outline = { length, width, ...rest };
  const largest = Math.max(
    size({ x: 0, y: 0 }),
    size({ x: length, y: 0 }),
    size({ x: 0, y: width }),
    size({ x: length, y: width }),
  );
  const [columns, rows] = [length, width].map((extent) => Math.max(1, Math.round(extent / largest)));
  const lattice = Array.from({ length: (columns! - 1) * (rows! - 1) }, (_, i): Point2 => {
    const [column, row] = [1 + (i % (columns! - 1)), 1 + Math.floor(i / (columns! - 1))];
    return { x: (column * length) / columns!, y: (row * width) / rows! };
  });
  return lattice.filter(
    (place) =>
      isMaterial(outline, place) &&
      sides.every(([a, b]) => toSide(place, places[a]!, places[b]!) > 0.55 * size(place)) &&
      places.every((other) => apart(place, other) > 0.55 * size(place)),
  );
}

/** Whether a side runs along the border of a box. */
function followsBox(
  a: Point2,
  b: Point2,
  { left, bottom, width, height }: MeshGuides["boxes"][number],
): boolean {
  const near = 1e-7 * (width + height);
  const both = (axis: "x" | "y", at: number): boolean =>
    Math.abs(a[axis] - at) < near && Math.abs(b[axis] - at) < near;
  return both("x", left) || both("x", left + width) || both("y", bottom) || both("y", bottom + height);
}

/** Every face split into squares from its middle to the middles of its sides. */
function splitFaces(
  places: readonly Point2[],
  faces: readonly (readonly number[])[],
  arcs: readonly Arc[],
): CornerMesh {
  const all = [...places];
  const middles = new Map<number, number>();
  for (const [key, { ends, uses }] of sidesOf(faces)) {
    const [a, b] = [places[ends[0]]!, places[ends[1]]!];
    middles.set(key, all.push(onArc(a, b, uses === 1 ? arcs : [])) - 1);
  }
  const quads = faces.flatMap((face): Quad[] => {
    const mids = face.map((a, i) => middles.get(keyOf(a, face[(i + 1) % face.length]!))!);
    const centre = all.push(middleOf(mids.map((mid) => all[mid]!))) - 1;
    return face.map((corner, i) => [corner, mids[i]!, centre, mids[(i + face.length - 1) % face.length]!]);
  });
  return { places: all, quads };
}

function middleOf(places: readonly Point2[]): Point2 {
  const mean = (axis: "x" | "y"): number => places.reduce((sum, at) => sum + at[axis], 0) / places.length;
  return { x: mean("x"), y: mean("y") };
}

/** A pair whose worst corner is further from a right angle than this stays two triangles, rad. */
const farthestFromSquare = (50 * Math.PI) / 180;

/**
 * Triangles joined in pairs, the best squares first; the rest stay triangles.
 *
 * @param places corners
 * @param triangles counterclockwise
 * @param stays whether the side between two places must remain
 */
function pairedFaces(
  places: readonly Point2[],
  triangles: readonly (readonly [number, number, number])[],
  stays: (a: Point2, b: Point2) => boolean,
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
  /** Number of one triangle. */
  readonly first: number;
  /** Number of the other. */
  readonly second: number;
  /** The four corners that both have together. */
  readonly square: readonly number[];
  /** How far the worst corner is from a right angle, rad. */
  readonly away: number;
}

function possiblePairs(
  places: readonly Point2[],
  triangles: readonly (readonly [number, number, number])[],
  stays: (a: Point2, b: Point2) => boolean,
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

function fromSquare(places: readonly Point2[], square: readonly number[], i: number): number {
  const [before, at, after] = [3, 0, 1].map((step) => places[square[(i + step) % 4]!]!) as [
    Point2,
    Point2,
    Point2,
  ];
  const [px, py, nx, ny] = [before.x - at.x, before.y - at.y, after.x - at.x, after.y - at.y];
  const angle = Math.atan2(nx * py - ny * px, px * nx + py * ny);
  return Math.abs(angle - Math.PI / 2);
}
