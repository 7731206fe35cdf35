/** Solids as prisms with straight sides, ready to be projected, ordered and cut. */
import { crossProduct, scalarProduct, type Vector3 } from "../../algebra/matrix3.js";
import type { Solid } from "../../assembly/index.js";
import { type Point2, type Shape, sampled } from "../../shape/index.js";
import { along } from "./camera.js";

/** A closed path of straight sides. */
export interface Ring {
  /** Its corners in order. */
  readonly points: readonly Point2[];
  /** Whether the side that begins at each corner is a line of the solid, not of a cut through it. */
  readonly real: readonly boolean[];
}

/** A box around a prism, along the prism's own directions. */
export interface OrientedBox {
  /** Its middle. */
  readonly centre: Vector3;
  /** Its three square unit directions: x and y of the outline, and the normal. */
  readonly axes: readonly [Vector3, Vector3, Vector3];
  /** Half its size along each. */
  readonly half: readonly [number, number, number];
}

/** A prism with straight sides. */
export interface Prism<S extends Solid = Solid> {
  /** What it is of. */
  readonly solid: S;
  /** Its outline first, then its holes. */
  readonly rings: readonly Ring[];
  /** How far along the normal it begins and ends, m. */
  readonly from: number;
  /** m */
  readonly to: number;
  /** Whether its two ends are surfaces of the solid, not of a cut. */
  readonly ends: readonly [boolean, boolean];
  /** The box around it. */
  readonly box: OrientedBox;
}

/** Arcs are drawn with a corner at least every so many radians. */
const turn = Math.PI / 9;

const known = new WeakMap<Solid, Prism>();

/** A solid with its arcs made straight, made once for each. */
export function prismOf<S extends Solid>(solid: S): Prism<S> {
  const found = (known.get(solid) as Prism<S> | undefined) ?? newPrism(solid);
  known.set(solid, found);
  return found;
}

function newPrism<S extends Solid>(solid: S): Prism<S> {
  const rings = [solid.outline, ...solid.holes].map(ringOf);
  return boxed({ solid, rings, from: 0, to: solid.depth, ends: [true, true] });
}

function ringOf(shape: Shape): Ring {
  const points = sampled(shape, turn);
  return { points, real: points.map(() => true) };
}

function boxed<S extends Solid>(prism: Omit<Prism<S>, "box">): Prism<S> {
  const { solid, rings, from, to } = prism;
  const { x, y, origin } = solid.place;
  const normal = crossProduct(x, y);
  const { left, right, bottom, top } = reach(rings[0]?.points ?? []);
  const centre = along(
    along(along(origin, x, (left + right) / 2), y, (bottom + top) / 2),
    normal,
    (from + to) / 2,
  );
  const half = [(right - left) / 2, (top - bottom) / 2, (to - from) / 2] as const;
  return { ...prism, box: { centre, axes: [x, y, normal], half } };
}

/** How far points reach. */
export function reach(points: readonly Point2[]) {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const { x, y } of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return { left, right, bottom, top };
}

/** How far a box reaches along a direction. */
export function reachAlong(
  { centre, axes, half }: OrientedBox,
  direction: Vector3,
): readonly [number, number] {
  const middle = scalarProduct(centre, direction);
  const far =
    half[0] * Math.abs(scalarProduct(axes[0], direction)) +
    half[1] * Math.abs(scalarProduct(axes[1], direction)) +
    half[2] * Math.abs(scalarProduct(axes[2], direction));
  return [middle - far, middle + far];
}

/** The place of a corner, so far along the normal. */
export function placeOf({ solid: { place }, box }: Prism, { x, y }: Point2, out: number): Vector3 {
  return along(along(along(place.origin, place.x, x), place.y, y), box.axes[2], out);
}

/**
 * The two pieces of a prism on the sides of a plane that is square to one of its own directions; undefined where the plane
 * is slanted to it or passes beside it.
 */
export function cutBy<S extends Solid>(
  prism: Prism<S>,
  plane: { readonly normal: Vector3; readonly at: number },
): readonly [Prism<S>, Prism<S>] | undefined {
  const [low, high] = reachAlong(prism.box, plane.normal);
  const { axes } = prism.box;
  const own = axes.findIndex((axis) => Math.abs(scalarProduct(axis, plane.normal)) > 1 - 1e-9);
  const axis = axes[own];
  if (!axis || low > plane.at - 1e-6 || high < plane.at + 1e-6) return undefined;
  const sign = Math.sign(scalarProduct(axis, plane.normal));
  const at = sign * (plane.at - scalarProduct(prism.solid.place.origin, plane.normal));
  if (own === 2) {
    const { ends, from, to } = prism;
    return [
      boxed({ ...prism, from, to: at, ends: [ends[0], false] }),
      boxed({ ...prism, from: at, to, ends: [false, ends[1]] }),
    ];
  }
  const coordinate = own === 0 ? "x" : "y";
  const side = (keep: 1 | -1): Prism<S> => {
    const rings = prism.rings.map((ring) => clippedRing(ring, coordinate, at, keep));
    return boxed({ ...prism, rings: rings.filter(({ points }) => points.length > 2) });
  };
  return [side(-1), side(1)];
}

/** The part of a ring on one side of a line along an axis; sides along the cut are no lines of the solid. */
function clippedRing({ points, real }: Ring, coordinate: "x" | "y", at: number, keep: 1 | -1): Ring {
  const kept: Point2[] = [];
  const drawn: boolean[] = [];
  const add = (point: Point2, side: boolean): void => {
    kept.push(point);
    drawn.push(side);
  };
  for (const [i, point] of points.entries()) {
    const next = points[(i + 1) % points.length] ?? point;
    const [here, there] = [keep * (point[coordinate] - at), keep * (next[coordinate] - at)];
    const side = real[i] ?? true;
    const share = here / (here - there);
    const crossing = { x: point.x + share * (next.x - point.x), y: point.y + share * (next.y - point.y) };
    if (here >= 0) add(point, here > 0 || there > 0 ? side : false);
    if (here > 0 && there < 0) add(crossing, false);
    if (here < 0 && there > 0) add(crossing, side);
  }
  return { points: kept, real: drawn };
}
