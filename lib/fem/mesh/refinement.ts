/**
 * Smaller elements where they are needed. A thin row along the rim, pushed in between the rim and the rest of the
 * mesh: a sheet that shears turns within a thickness of its rim (B. Häggblad, K. J. Bathe, Specifications of boundary
 * conditions for Reissner/Mindlin plate bending finite elements, Int. J. Numer. Methods Eng. 30, 1990). And rings
 * around corners where strains pile up, each a fixed share of the one outside it (I. Babuska, B. Guo, The h-p version
 * of the finite element method, Comput. Mech. 1, 1986: the geometric mesh): only the elements that touch the corner
 * are divided, so no line of small elements runs through the rest of the panel.
 */
import { apart, type Point2 } from "../../shape/index.js";
import { type Quad, sidesOf } from "./quad-mesh.js";

/** Corners and squares of a mesh. */
export interface CornerMesh {
  /** Places of the corners, m. */
  readonly places: readonly Point2[];
  /** Four corners each, counterclockwise. */
  readonly quads: readonly Quad[];
}

/** The row takes no more than this share of the elements it narrows. */
const mostOfElement = 0.4;

/** A mesh with its row along the rims. */
export interface RimmedMesh extends CornerMesh {
  /** For each corner of the row, on the rim or inside, the corner on the rim. */
  readonly rimOf: ReadonlyMap<number, number>;
}

/**
 * Adds the row along all rims.
 *
 * @param mesh without the row
 * @param width of the row, m
 * @param shares of the row's width that are left at corners on the rim where it had to be narrowed
 */
export function withRimRow(
  { places, quads }: CornerMesh,
  width: number,
  shares: ReadonlyMap<number, number>,
): RimmedMesh {
  const sides = [...sidesOf(quads).values()];
  const rim = sides.filter(({ uses }) => uses === 1).map(({ ends }) => ends);
  const leaving = new Map(rim.map((ends) => [ends[0], ends]));
  const room = roomInside(places, sides);
  const all = [...places];
  const inner = new Map<number, number>();
  for (const before of rim) {
    const node = before[1];
    const after = leaving.get(node)!;
    const { x, y } = inwards(direction(places, before), direction(places, after));
    const by = (shares.get(node) ?? 1) * Math.min(width, mostOfElement * (room.get(node) ?? 0));
    inner.set(node, all.push({ x: places[node]!.x + by * x, y: places[node]!.y + by * y }) - 1);
  }
  const moved = quads.map((quad) => quad.map((corner) => inner.get(corner) ?? corner) as unknown as Quad);
  const added = rim.map(([a, b]): Quad => [a, b, inner.get(b)!, inner.get(a)!]);
  const rimOf = new Map(
    [...inner].flatMap(([node, inside]) => [[node, node] as const, [inside, node] as const]),
  );
  return { places: all, quads: [...moved, ...added], rimOf };
}

/** Length of the shortest side at each node that does not run along the rim; of any side where there is none. */
function roomInside(
  places: readonly Point2[],
  sides: readonly { readonly ends: readonly [number, number]; readonly uses: number }[],
): ReadonlyMap<number, number> {
  const room = new Map<number, number>();
  const inside = [...sides.filter(({ uses }) => uses === 2), ...sides.filter(({ uses }) => uses === 1)];
  const within = new Set(inside.filter(({ uses }) => uses === 2).flatMap(({ ends }) => ends));
  for (const { ends, uses } of inside) {
    const length = apart(places[ends[0]]!, places[ends[1]]!);
    for (const node of ends) {
      if (uses === 1 && within.has(node)) continue;
      room.set(node, Math.min(room.get(node) ?? Infinity, length));
    }
  }
  return room;
}

/** Where a corner goes when both its sides, with the material on their left, move in by 1. */
function inwards(before: Point2, after: Point2): Point2 {
  const [nx, ny] = [-before.y - after.y, before.x + after.x];
  const share = 2 / (nx * nx + ny * ny);
  return { x: nx * share, y: ny * share };
}

function direction(places: readonly Point2[], [a, b]: readonly [number, number]): Point2 {
  const [from, to] = [places[a]!, places[b]!];
  const length = apart(from, to);
  return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}

/** Size of a ring as a share of the one outside it. */
const ringShare = 0.25;
/** How many rings. */
const ringCount = 3;

/**
 * Adds rings around corners that are nodes of the mesh; places that are none are passed over.
 *
 * @param mesh without rings
 * @param corners where strains pile up
 */
export function withCornerRings(mesh: CornerMesh, corners: readonly Point2[]): CornerMesh {
  const near = 1e-7 * Math.max(...mesh.places.flatMap(({ x, y }) => [x, y]));
  return corners.reduce((before, corner) => {
    const node = before.places.findIndex((place) => apart(place, corner) < near);
    return node < 0 ? before : ringed(before, node);
  }, mesh);
}

function ringed({ places, quads }: CornerMesh, node: number): CornerMesh {
  const all = [...places];
  const { x: cx, y: cy } = places[node]!;
  const inwards = new Map<number, readonly number[]>();
  /** A place and what it becomes on each ring, the outermost first. */
  const towards = (from: number): readonly number[] => {
    const known = inwards.get(from);
    if (known) return known;
    const { x, y } = places[from]!;
    const added = Array.from({ length: ringCount }, (_, i) => {
      const share = ringShare ** (i + 1);
      return all.push({ x: cx + share * (x - cx), y: cy + share * (y - cy) }) - 1;
    });
    const line = [from, ...added];
    inwards.set(from, line);
    return line;
  };
  const divided = quads.flatMap((quad): readonly Quad[] => {
    const first = quad.indexOf(node);
    if (first < 0) return [quad];
    const [a, b, d] = [1, 2, 3].map((step) => towards(quad[(first + step) % 4]!)) as [
      number[],
      number[],
      number[],
    ];
    const rings = Array.from({ length: ringCount }, (_, i): Quad[] => [
      [a[i + 1]!, a[i]!, b[i]!, b[i + 1]!],
      [d[i + 1]!, b[i + 1]!, b[i]!, d[i]!],
    ]);
    return [[node, a[ringCount]!, b[ringCount]!, d[ringCount]!], ...rings.flat()];
  });
  return { places: all, quads: divided };
}
