/** Legendre polynomials and the Gauss points that integrate them exactly. */
import { at as entry } from "../../algebra/lists.js";

/** A place and its weight in a sum that stands for an integral. */
export interface WeightedPoint {
  /** The place, in the unit of the interval. */
  readonly at: number;
  /** Its weight, which has the interval's unit. */
  readonly weight: number;
}

/**
 * P_0(s) to P_degree(s) by Bonnet's recurrence (n+1) P_{n+1} = (2n+1) s P_n - n P_{n-1}.
 *
 * @param degree highest degree, a whole number from 1 up
 * @param s place from -1 to 1
 */
export function legendreValues(degree: number, s: number): number[] {
  const values = [1, s];
  for (let n = 1; n < degree; n++) {
    values.push(((2 * n + 1) * s * entry(values, n) - n * entry(values, n - 1)) / (n + 1));
  }
  return values;
}

/**
 * Gauss points on an interval: `count` of them integrate a polynomial of degree 2 count - 1 exactly.
 * The points are the zeros of P_count, found by Newton's method; the weights are 2 / ((1 - s2) P'2).
 *
 * @param count how many, a whole number from 1 up
 * @param from start of the interval
 * @param to end of the interval
 */
export function gaussPoints(count: number, from: number, to: number): WeightedPoint[] {
  const half = (to - from) / 2;
  return standardPoints(count).map(({ at, weight }) => ({
    at: from + half * (1 + at),
    weight: half * weight,
  }));
}

const known = new Map<number, readonly WeightedPoint[]>();

function standardPoints(count: number): readonly WeightedPoint[] {
  const found = known.get(count) ?? Array.from({ length: count }, (_, i) => gaussPoint(count, i));
  known.set(count, found);
  return found;
}

/** From this first guess Newton's method reaches rounding in five steps. */
const newtonSteps = 8;

function gaussPoint(count: number, i: number): WeightedPoint {
  let at = -Math.cos((Math.PI * (i + 0.75)) / (count + 0.5));
  for (let step = 0; step < newtonSteps; step++) {
    at -= entry(legendreValues(count, at), count) / legendreSlope(count, at);
  }
  return { at, weight: 2 / ((1 - at * at) * legendreSlope(count, at) ** 2) };
}

/** P'_n(s) = n (P_{n-1} - s P_n) / (1 - s2), inside the interval. */
function legendreSlope(n: number, s: number): number {
  const values = legendreValues(n, s);
  return (n * (entry(values, n - 1) - s * entry(values, n))) / (1 - s * s);
}
