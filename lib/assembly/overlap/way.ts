/** What moving solids hit on their whole way: straight along an axis, or about a hinge along one. */
import { type Axis, type Vector3, vector3 } from "../../algebra/matrix3.js";
import { Refusal } from "../../refusal.js";
import { type Box2, type Point2, polygon } from "../../shape/index.js";
import type { Solid } from "../solid.js";
import { cornersOf, hullOf, type Piece } from "./hull.js";
import { nearOf } from "./near.js";
import { type Overlap, overlapOf } from "./overlap.js";
import { after, before, type Placed, placed, type SolidReach } from "./placed.js";
import { boundsOfPoints, boxRegion, contact, ringOf, shared } from "./region.js";

/** The way that solids go together. */
export type Way =
  | {
      /** Straight out. */
      readonly kind: "slide";
      /** From where they stand to the end of their way, along an axis, m. */
      readonly by: Vector3;
    }
  | {
      /** About a hinge. */
      readonly kind: "turn";
      /** A point of the hinge line. */
      readonly about: Vector3;
      /** Unit direction of the hinge line, along an axis; the turn is right-handed about it. */
      readonly axis: Vector3;
      /** How far they turn, rad. */
      readonly angle: number;
    };

/**
 * Every pair of a moving and a standing solid that meets on the way. Of what moves sideways, holes and hollows count as
 * full. A turn is taken in steps between which a solid's path is hulled, within `turnTolerance`, at up to twelve heights.
 *
 * @throws Refusal when the way is along no axis
 */
export function overlapsOnWay<S extends Solid>(
  moving: readonly S[],
  standing: readonly S[],
  way: Way,
  meant: (one: S, other: S) => boolean,
): readonly Overlap<S>[] {
  const near = nearOf(standing.map((solid) => placed(solid)));
  return way.kind === "slide"
    ? moving.flatMap((solid) => {
        const swept = placed(slid(solid, way.by));
        return near(swept).flatMap((other) => {
          if (meant(solid, other.solid)) return [];
          const overlap = overlapOf(swept as Placed<S>, other);
          return overlap ? [{ ...overlap, one: solid }] : [];
        });
      })
    : moving.flatMap((solid) => turnOverlaps(placed(solid), near, way, meant));
}

/** The prism that a solid fills on a straight way along an axis. */
function slid<S extends Solid>(solid: S, by: Vector3): S {
  const axis = ([0, 1, 2] as const).filter((i) => Math.abs(by[i]) > contact);
  if (axis.length === 0) return solid;
  if (axis.length > 1) throw new Refusal("way of a solid: it must go along one axis");
  const { place, outline, depth } = solid;
  const { normal } = placed(solid);
  const far = by[axis[0] ?? 0];
  if (axis[0] === normal) {
    const out = vector3(
      (i) => place.x[after(i)] * place.y[before(i)] - place.x[before(i)] * place.y[after(i)],
    );
    const forward = far * out[normal];
    const origin = forward < 0 ? vector3((i) => place.origin[i] + by[i]) : place.origin;
    return { ...solid, depth: depth + Math.abs(far), place: { ...place, origin } };
  }
  const dot = (axisOf: Vector3): number => by[0] * axisOf[0] + by[1] * axisOf[1] + by[2] * axisOf[2];
  const shift = { x: dot(place.x), y: dot(place.y) };
  const ring = ringOf(outline);
  const both = [...ring, ...ring.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y }))];
  return { ...solid, outline: polygon(hullOf(both)), holes: [] };
}

type Turn = Extract<Way, { readonly kind: "turn" }>;

function turnOverlaps<S extends Solid>(
  moving: Placed<S>,
  near: (box: SolidReach) => readonly Placed<S>[],
  turn: Turn,
  meant: (one: S, other: S) => boolean,
): readonly Overlap<S>[] {
  const hinge = hingeAxis(turn);
  const [u, v] = [after(hinge), before(hinge)];
  const centre = { x: turn.about[u], y: turn.about[v] };
  const way = turn.axis[hinge] > 0 ? 1 : -1;
  const turned = turnedBounds(moving, centre, [u, v], way * turn.angle);
  const box = {
    low: vector3((i) => (i === hinge ? moving.low[hinge] : i === u ? turned.left : turned.bottom)),
    high: vector3((i) =>
      i === hinge ? moving.high[hinge] : i === u ? turned.left + turned.width : turned.bottom + turned.height,
    ),
  };
  const paths = new Map<string, Path>();
  const pathOf = (piece: Piece): Path => {
    const key = JSON.stringify(piece);
    const path = paths.get(key) ?? newPath(piece, centre, way * turn.angle);
    paths.set(key, path);
    return path;
  };
  return near(box).flatMap((other) => {
    if (meant(moving.solid, other.solid)) return [];
    const hit = heightsOf(moving, other, hinge)
      .map((height) => ({ height, hit: turnedInto(moving, other, hinge, height, pathOf) }))
      .reduce((worst, one) => (one.hit.depth > worst.hit.depth ? one : worst), nothing);
    if (hit.hit.depth <= contact) return [];
    const { at } = hit.hit;
    const place = vector3((i) => (i === hinge ? hit.height : i === u ? at.x : at.y));
    return [{ one: moving.solid, other: other.solid, depth: hit.hit.depth, low: place, high: place }];
  });
}

/** What a piece fills from step to step of its turn. */
type Path = readonly { readonly hull: Piece; readonly box: Box2 }[];

const nothing = { height: 0, hit: { depth: 0, at: { x: 0, y: 0 } } };

function hingeAxis({ axis }: Turn): Axis {
  const found = ([0, 1, 2] as const).find((i) => Math.abs(Math.abs(axis[i]) - 1) < 1e-9);
  if (found === undefined) throw new Refusal("way of a solid: its hinge must lie along one axis");
  return found;
}

/** The rectangle round all that the box round a solid fills on its turn, in the plane square to the hinge. */
function turnedBounds(
  { low, high }: Placed,
  centre: Point2,
  [u, v]: readonly [Axis, Axis],
  angle: number,
): Box2 {
  const corners = [low[u], high[u]].flatMap((x) => [low[v], high[v]].map((y) => ({ x, y })));
  const quarter = Math.PI / 2;
  return boundsOfPoints(
    corners.flatMap((corner) => {
      const [dx, dy] = [corner.x - centre.x, corner.y - centre.y];
      const [radius, from] = [Math.hypot(dx, dy), Math.atan2(dy, dx)];
      const [first, last] = [Math.min(from, from + angle), Math.max(from, from + angle)];
      // The farthest places of an arc: its ends, and where it runs along an axis.
      const tops = [-4, -3, -2, -1, 0, 1, 2, 3, 4].map((n) => n * quarter);
      return [first, last, ...tops.filter((top) => top > first && top < last)].map((at) => ({
        x: centre.x + radius * Math.cos(at),
        y: centre.y + radius * Math.sin(at),
      }));
    }),
  );
}

/** The most heights along a hinge at which two solids are compared. */
const mostHeights = 12;

/** How far a step of a turn leaves its arc at most, m. */
export const turnTolerance = 1e-4;

/** Heights along a hinge between which nothing of two solids begins or ends. */
function heightsOf(one: Placed, other: Placed, hinge: Axis): readonly number[] {
  const low = Math.max(one.low[hinge], other.low[hinge]);
  const high = Math.min(one.high[hinge], other.high[hinge]);
  if (high - low <= contact) return [];
  const corners = [one, other].flatMap((solid) => {
    if (solid.normal === hinge) return [];
    const level = after(solid.normal) === hinge ? "x" : "y";
    return solid.region().rings.flatMap((ring) => ring.map((point) => point[level]));
  });
  const inner = corners.filter((level) => level > low && level < high);
  const stops = [...new Set([low, ...inner, high])].sort((a, b) => a - b);
  const step = Math.max(1, Math.ceil(stops.length / mostHeights));
  return stops.slice(1).flatMap((stop, i) => (i % step === 0 ? [(stop + (stops[i] ?? low)) / 2] : []));
}

/** The convex pieces of a solid at a height along a hinge, in the plane square to it. */
function piecesAt({ normal, region, low, high }: Placed, hinge: Axis, height: number): readonly Piece[] {
  if (normal === hinge) {
    const own = region();
    return shared(own, boxRegion(own.bounds)).map(cornersOf);
  }
  const upright = after(normal) === hinge;
  const { bounds, rings } = region();
  const thin = contact * 4;
  const strip = upright
    ? { left: height - thin, width: 2 * thin, bottom: bounds.bottom, height: bounds.height }
    : { left: bounds.left, width: bounds.width, bottom: height - thin, height: 2 * thin };
  const other = after(hinge) === normal ? before(hinge) : after(hinge);
  return shared({ rings, bounds, isBox: false }, boxRegion(strip)).map((piece) => {
    const [from, to] = upright
      ? [piece.low, piece.high]
      : [Math.min(piece.lowLeft, piece.highLeft), Math.max(piece.lowRight, piece.highRight)];
    const across = { from, to };
    const deep = { from: low[normal], to: high[normal] };
    const [xs, ys] = after(hinge) === other ? [across, deep] : [deep, across];
    return [
      { x: xs.from, y: ys.from },
      { x: xs.to, y: ys.from },
      { x: xs.to, y: ys.to },
      { x: xs.from, y: ys.to },
    ];
  });
}

/** How deep a turning solid gets into another at a height, and where. */
function turnedInto(
  moving: Placed,
  other: Placed,
  hinge: Axis,
  height: number,
  pathOf: (piece: Piece) => Path,
): { readonly depth: number; readonly at: Point2 } {
  const still = piecesAt(other, hinge, height);
  let worst: { readonly depth: number; readonly at: Point2 } = nothing.hit;
  if (still.length === 0) return worst;
  const boxes = still.map(boundsOfPoints);
  for (const piece of piecesAt(moving, hinge, height))
    for (const { hull, box } of pathOf(piece))
      for (const [i, one] of still.entries()) {
        if (!rectanglesMeet(box, boxes[i] ?? box)) continue;
        const depth = into(hull, one);
        if (depth > worst.depth) worst = { depth, at: middle(one) };
      }
  return worst;
}

/** The hulls that a piece fills from step to step of its turn, with the rectangles round them. */
function newPath(piece: Piece, centre: Point2, angle: number): Path {
  const reach = Math.max(...piece.map(({ x, y }) => Math.hypot(x - centre.x, y - centre.y)), 1e-3);
  const turn = 2 * Math.acos(1 - Math.min(0.3, turnTolerance / reach));
  const steps = Math.min(180, Math.max(1, Math.ceil(Math.abs(angle) / turn)));
  const at = (i: number): Piece => piece.map((point) => turnedAbout(point, centre, (angle * i) / steps));
  return Array.from({ length: steps }, (_, i) => {
    const hull = hullOf([...at(i), ...at(i + 1)]);
    return { hull, box: boundsOfPoints(hull) };
  });
}

function rectanglesMeet(a: Box2, b: Box2): boolean {
  return (
    Math.min(a.left + a.width, b.left + b.width) - Math.max(a.left, b.left) > contact &&
    Math.min(a.bottom + a.height, b.bottom + b.height) - Math.max(a.bottom, b.bottom) > contact
  );
}

function turnedAbout({ x, y }: Point2, centre: Point2, angle: number): Point2 {
  const [dx, dy] = [x - centre.x, y - centre.y];
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: centre.x + c * dx - s * dy, y: centre.y + s * dx + c * dy };
}

function middle(piece: Piece): Point2 {
  const sum = (pick: (point: Point2) => number): number =>
    piece.reduce((total, point) => total + pick(point), 0) / piece.length;
  return { x: sum(({ x }) => x), y: sum(({ y }) => y) };
}

/** How deep two convex pieces reach into each other: the least shift that parts them. */
function into(one: Piece, other: Piece): number {
  let least = Infinity;
  for (const piece of [one, other])
    for (const [i, from] of piece.entries()) {
      const to = piece[(i + 1) % piece.length] ?? from;
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      if (length < 1e-12) continue;
      const way = { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
      const [a, b] = [reachAlong(one, way), reachAlong(other, way)];
      const room = Math.min(a.high - b.low, b.high - a.low);
      if (room <= contact) return 0;
      least = Math.min(least, room);
    }
  return Number.isFinite(least) ? least : 0;
}

function reachAlong(piece: Piece, way: Point2): { readonly low: number; readonly high: number } {
  const along = piece.map(({ x, y }) => x * way.x + y * way.y);
  return { low: Math.min(...along), high: Math.max(...along) };
}
