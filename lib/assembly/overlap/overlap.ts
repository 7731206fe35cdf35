/** Space that two prisms share, pair by pair: first the boxes round them, then the prisms themselves. */
import { type Vector3, vector3 } from "../../algebra/matrix3.js";
import type { Solid } from "../solid.js";
import { nearOf, nearPairs } from "./near.js";
import { after, before, type Placed, placed } from "./placed.js";
import {
  boundsOfPieces,
  boxRegion,
  contact,
  levelsCovered,
  type Region,
  type Span,
  shared,
  type Trapezoid,
} from "./region.js";

/** Two solids that share space. */
export interface Overlap<S extends Solid = Solid> {
  /** The one that comes first in the list. */
  readonly one: S;
  /** The other. */
  readonly other: S;
  /** How far they reach into each other: the least extent of what they share along an axis, m. */
  readonly depth: number;
  /** Lowest corner of the box round what they share, m. */
  readonly low: Vector3;
  /** Highest corner of it, m. */
  readonly high: Vector3;
}

/** The middle of what two solids share. */
export function middleOfOverlap({ low, high }: Pick<Overlap, "low" | "high">): Vector3 {
  return vector3((i) => (low[i] + high[i]) / 2);
}

/**
 * Every pair of solids that shares space, though it should not. Exact for prisms with straight sides along the axes;
 * arcs count as chords within `arcTolerance`. What shares less than a thousandth of a millimetre touches.
 *
 * @param meant whether a pair shares space as it should: laminate and panel never do, a fastener and its panel do
 * @throws Refusal when a solid does not lie along the axes
 */
export function findOverlaps<S extends Solid>(
  solids: readonly S[],
  meant: (one: S, other: S) => boolean,
): readonly Overlap<S>[] {
  const all = solids.map((solid) => placed(solid));
  const place = new Map(all.map((one, i) => [one, i]));
  return nearPairs(all).flatMap(([a, b]) => {
    const [one, other] = (place.get(a) ?? 0) < (place.get(b) ?? 0) ? [a, b] : [b, a];
    if (meant(one.solid, other.solid)) return [];
    return overlapOf(one, other) ?? [];
  });
}

/**
 * Every pair of a solid of one list and one of another that shares space, though it should not; as `findOverlaps`.
 *
 * @throws Refusal when a solid does not lie along the axes
 */
export function overlapsBetween<S extends Solid>(
  ones: readonly S[],
  others: readonly S[],
  meant: (one: S, other: S) => boolean,
): readonly Overlap<S>[] {
  const near = nearOf(others.map((solid) => placed(solid)));
  return ones.flatMap((one) => {
    const own = placed(one);
    return near(own).flatMap((other) => (meant(one, other.solid) ? [] : (overlapOf(own, other) ?? [])));
  });
}

/** What two solids share; undefined where they share nothing. */
export function overlapOf<S extends Solid>(a: Placed<S>, b: Placed<S>): Overlap<S> | undefined {
  const box = a.normal === b.normal ? alongEachOther(a, b) : acrossEachOther(a, b);
  if (!box) return undefined;
  const { low, high, depth } = box;
  const least = Math.min(depth ?? Infinity, ...([0, 1, 2] as const).map((i) => high[i] - low[i]));
  return least > contact ? { one: a.solid, other: b.solid, depth: least, low, high } : undefined;
}

/** A box in space; with a depth where the shapes tell it better than the box. */
interface SharedBox {
  /** Lowest corner. */
  readonly low: Vector3;
  /** Highest corner. */
  readonly high: Vector3;
  /** m */
  readonly depth?: number;
}

/** Two prisms with the same normal share what their regions share. */
function alongEachOther(a: Placed, b: Placed): SharedBox | undefined {
  const { normal } = a;
  const [u, v] = [after(normal), before(normal)];
  let depth: number | undefined;
  if (a.circle && b.circle) {
    const { centre, radius } = a.circle;
    depth = radius + b.circle.radius - Math.hypot(centre.x - b.circle.centre.x, centre.y - b.circle.centre.y);
    if (depth <= contact) return undefined;
  }
  const flat = boundsOfPieces(shared(a.region(), b.region()));
  if (!flat) return undefined;
  const from = Math.max(a.low[normal], b.low[normal]);
  const to = Math.min(a.high[normal], b.high[normal]);
  const { left, bottom, width, height } = flat;
  const at = (along: number, x: number, y: number): Vector3 =>
    vector3((i) => (i === normal ? along : i === u ? x : i === v ? y : 0));
  return {
    low: at(from, left, bottom),
    high: at(to, left + width, bottom + height),
    ...(depth === undefined ? {} : { depth }),
  };
}

/**
 * Two prisms with normals square to each other share space where, at one place along the third axis, each region
 * reaches into the other's depth.
 */
function acrossEachOther(a: Placed, b: Placed): SharedBox | undefined {
  const third = ([0, 1, 2] as const).find((i) => i !== a.normal && i !== b.normal) ?? 0;
  const within: Span = [Math.max(a.low[third], b.low[third]), Math.min(a.high[third], b.high[third])];
  const ofA = slicesOf(a, b, within);
  const ofB = slicesOf(b, a, within);
  const common = commonSpan(levelsCovered(ofA), levelsCovered(ofB));
  if (!common) return undefined;
  const across = (own: Placed, other: Placed): Span | undefined => {
    const box = boundsOfPieces(slicesOf(own, other, common));
    return box && [box.left, box.left + box.width];
  };
  const [alongB, alongA] = [across(a, b), across(b, a)];
  if (!alongA || !alongB) return undefined;
  const span = (i: number): Span => (i === third ? common : i === b.normal ? alongB : alongA);
  return { low: vector3((i) => span(i)[0]), high: vector3((i) => span(i)[1]) };
}

/** What of a solid's region lies in the depth of another, with the axis that both regions have as levels. */
function slicesOf(own: Placed, other: Placed, [from, to]: Span): readonly Trapezoid[] {
  const along = other.normal;
  const left = Math.max(own.low[along], other.low[along]);
  const right = Math.min(own.high[along], other.high[along]);
  if (right - left <= contact || to - from <= contact) return [];
  const strip = boxRegion({ left, bottom: from, width: right - left, height: to - from });
  return shared(oriented(own, along), strip);
}

/** A solid's region with an axis across. */
function oriented({ normal, region }: Placed, across: number): Region {
  const own = region();
  if (after(normal) === across) return own;
  const { bounds, isBox, rings } = own;
  return {
    isBox,
    rings: rings.map((ring) => ring.map(({ x, y }) => ({ x: y, y: x }))),
    bounds: { left: bounds.bottom, bottom: bounds.left, width: bounds.height, height: bounds.width },
  };
}

/** The longest stretch that two lists of stretches have in common. */
function commonSpan(one: readonly Span[], other: readonly Span[]): Span | undefined {
  let longest: Span | undefined;
  for (const [a, b] of one)
    for (const [c, d] of other) {
      const [from, to] = [Math.max(a, c), Math.min(b, d)];
      if (to - from > contact && (!longest || to - from > longest[1] - longest[0])) longest = [from, to];
    }
  return longest;
}
