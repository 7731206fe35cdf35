/**
 * Shapes that a strip between two edges can bend into. A plate's deflection is a sum of products of such
 * shapes along and across. Knots divide the strip; at each knot and end, one shape lifts it and one tilts
 * it, and between two knots there are smooth polynomials that leave both in place. Deflection and slope
 * are continuous everywhere, curvature may change at a knot. An edge is held by leaving out the shapes
 * that its support does not allow.
 */

import { at as entry, memoized } from "../../algebra/lists.js";
import { gaussPoints, legendreValues, type WeightedPoint } from "./legendre.js";

/** How one edge is held: not at all, like on a hinge, or like glued into a rigid wall. */
export type EdgeSupport = "free" | "hinged" | "clamped";

/** A strip from edge to edge. */
export interface Strip {
  /** m */
  readonly length: number;
  /** How the end at 0 is held. */
  readonly start: EdgeSupport;
  /** How the end at `length` is held. */
  readonly end: EdgeSupport;
  /** Where the bending may change abruptly, rising, m from the start. */
  readonly knots: readonly number[];
}

/** Every shape at one place, each list in the same order. */
export interface StripValues {
  /** The shapes themselves. */
  readonly value: readonly number[];
  /** First derivative, 1/m. */
  readonly slope: readonly number[];
  /** Second derivative, 1/m2. */
  readonly curvature: readonly number[];
}

/** The shapes of one strip. */
export interface StripFunctions {
  /** How many shapes. */
  readonly count: number;
  /** Highest degree of the polynomials. */
  readonly degree: number;
  /** Where the strip is divided, m from the start. */
  readonly knots: readonly number[];
  /** Which shapes lift an end. */
  readonly lifting: readonly number[];
  /** All shapes at a distance from the start, m. */
  at(place: number): StripValues;
  /** Places whose weighted sum integrates any product of two shapes exactly between two places. */
  points(from: number, to: number): WeightedPoint[];
}

/** How much work goes into a strip. */
export interface SeriesOrder {
  /** About how many shapes a free strip shall have; many knots leave a lower degree between them. */
  readonly shapes: number;
  /** Degree between knots that is kept in any case, from 3 up. */
  readonly leastDegree: number;
}

/**
 * The shapes of a strip.
 *
 * @param strip length, supports and knots
 * @param order how many shapes, about
 */
export function stripFunctions(strip: Strip, { shapes, leastDegree }: SeriesOrder): StripFunctions {
  const nodes = [0, ...strip.knots, strip.length];
  const intervals = nodes.length - 1;
  const degree = Math.max(leastDegree, 1 + Math.floor((shapes - 2) / intervals));
  const kept = keptNodeShapes(strip, intervals);
  return {
    count: kept.length + intervals * (degree - 3),
    degree,
    knots: strip.knots,
    lifting: [0, 2 * intervals].map((shape) => kept.indexOf(shape)).filter((number) => number >= 0),
    at: memoized((place) => valuesAt({ nodes, degree, kept }, place)),
    points: (from, to) => piecewisePoints(strip.knots, degree + 1, from, to),
  };
}

interface StripLayout {
  /** Ends and knots, rising, m from the start. */
  readonly nodes: readonly number[];
  /** Highest degree of the polynomials. */
  readonly degree: number;
  /** Of the lifts (even) and tilts (odd) of all nodes, those that the supports allow. */
  readonly kept: readonly number[];
}

function keptNodeShapes({ start, end }: Strip, intervals: number): number[] {
  const lost = (support: EdgeSupport, node: number): number[] =>
    ({ free: [], hinged: [2 * node], clamped: [2 * node, 2 * node + 1] })[support];
  const held = [...lost(start, 0), ...lost(end, intervals)];
  return Array.from({ length: 2 * (intervals + 1) }, (_, shape) => shape).filter(
    (shape) => !held.includes(shape),
  );
}

function valuesAt({ nodes, degree, kept }: StripLayout, place: number): StripValues {
  const interval = intervalOf(nodes, place);
  const from = entry(nodes, interval);
  const half = (entry(nodes, interval + 1) - from) / 2;
  const s = (place - from) / half - 1;
  const inner = innerShapes(degree, s);
  const count = kept.length + (nodes.length - 1) * inner.length;
  const [value, slope, curvature] = [0, 1, 2].map(() => Array<number>(count).fill(0)) as [
    number[],
    number[],
    number[],
  ];
  const put = (number: number, shape: Shape, scale: number): void => {
    value[number] = scale * shape[0];
    slope[number] = (scale * shape[1]) / half;
    curvature[number] = (scale * shape[2]) / half ** 2;
  };
  for (let i = 0; i < 4; i++) {
    const number = kept.indexOf(2 * interval + i);
    if (number >= 0) put(number, endShape(i, s), i % 2 === 0 ? 1 : half);
  }
  inner.forEach((shape, i) => {
    put(kept.length + interval * inner.length + i, shape, 1);
  });
  return { value, slope, curvature };
}

/** A knot itself counts to the interval after it, the end to the last. */
function intervalOf(nodes: readonly number[], place: number): number {
  const after = nodes.slice(1, -1).findIndex((knot) => knot > place);
  return after < 0 ? nodes.length - 2 : after;
}

function piecewisePoints(knots: readonly number[], count: number, from: number, to: number): WeightedPoint[] {
  const cuts = [from, ...knots.filter((knot) => knot > from && knot < to), to];
  return cuts.slice(1).flatMap((cut, i) => gaussPoints(count, entry(cuts, i), cut));
}

/** Value, first and second derivative with respect to s. */
export type Shape = readonly [number, number, number];

/** Hermite cubics: 0 lifts the start, 1 tilts it, 2 lifts the end, 3 tilts it. */
function endShape(i: number, s: number): Shape {
  const mirrored = i >= 2;
  const u = mirrored ? -s : s;
  const [value, slope, curvature] =
    i % 2 === 0
      ? [(2 - 3 * u + u ** 3) / 4, (-3 + 3 * u ** 2) / 4, (3 * u) / 2]
      : [(1 - u - u ** 2 + u ** 3) / 4, (-1 - 2 * u + 3 * u ** 2) / 4, (-1 + 3 * u) / 2];
  if (!mirrored) return [value, slope, curvature];
  return i === 2 ? [value, -slope, curvature] : [-value, slope, -curvature];
}

/**
 * Twice integrated P_n, n from 2 to degree - 2: flat and in place at both ends, scaled so that the
 * curvatures are orthonormal.
 */
function innerShapes(degree: number, s: number): Shape[] {
  const p = legendreValues(degree, s);
  const at = (n: number): number => entry(p, n);
  return Array.from({ length: degree - 3 }, (_, i): Shape => {
    const n = i + 2;
    const scale = Math.sqrt((2 * n + 1) / 2);
    const value = (at(n + 2) - at(n)) / (2 * n + 3) - (at(n) - at(n - 2)) / (2 * n - 1);
    return [(scale * value) / (2 * n + 1), (scale * (at(n + 1) - at(n - 1))) / (2 * n + 1), scale * at(n)];
  });
}
