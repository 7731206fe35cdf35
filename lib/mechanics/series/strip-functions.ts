/**
 * Shapes that a strip between two edges can bend into. A plate's deflection is a sum of products of such
 * shapes along and across. Four cubics carry the deflection and slope of the two ends; the others, double
 * integrals of Legendre polynomials, leave both ends flat and in place. An edge is then held by leaving
 * out the end shapes it does not allow.
 */
import { legendreValues } from "./legendre.js";
import { remembered } from "./remembered.js";

/** How one edge is held: not at all, like on a hinge, or like glued into a rigid wall. */
export type EdgeSupport = "free" | "hinged" | "clamped";

/** Every shape at one place, each list in the same order. */
export interface StripValues {
  readonly value: readonly number[];
  /** First derivative, 1/m. */
  readonly slope: readonly number[];
  /** Second derivative, 1/m2. */
  readonly curvature: readonly number[];
}

/** The shapes of one strip. */
export interface StripFunctions {
  /** m */
  readonly length: number;
  /** How many shapes. */
  readonly count: number;
  /** Highest degree of the polynomials. */
  readonly degree: number;
  /** Which shapes lift an end. */
  readonly lifting: readonly number[];
  /** All shapes at a distance from the start, m. */
  at(place: number): StripValues;
}

/**
 * The shapes of a strip up to a polynomial degree.
 *
 * @param length m
 * @param start how the end at 0 is held
 * @param end how the end at `length` is held
 * @param degree highest degree, from 4 up
 */
export function stripFunctions(
  length: number,
  start: EdgeSupport,
  end: EdgeSupport,
  degree: number,
): StripFunctions {
  const kept = [start === "free", start !== "clamped", end === "free", end !== "clamped"];
  const ends = [0, 1, 2, 3].filter((i) => kept[i]);
  const stretch = 2 / length;
  const at = (place: number): StripValues => {
    const s = stretch * place - 1;
    const shapes = [...ends.map((i) => endShape(i, s)), ...innerShapes(degree, s)];
    return {
      value: shapes.map(([value]) => value),
      slope: shapes.map(([, slope]) => slope * stretch),
      curvature: shapes.map(([, , curvature]) => curvature * stretch ** 2),
    };
  };
  return {
    length,
    count: ends.length + degree - 3,
    degree,
    lifting: ends.flatMap((shape, i) => (shape % 2 === 0 ? [i] : [])),
    at: remembered(at),
  };
}

/** Value, first and second derivative with respect to s from -1 to 1. */
type Shape = readonly [number, number, number];

/** Hermite cubics: 0 lifts the start, 1 tilts it, 2 lifts the end, 3 tilts it. */
function endShape(i: number, s: number): Shape {
  const mirrored = i >= 2;
  const u = mirrored ? -s : s;
  const [value, slope, curvature] =
    i % 2 === 0
      ? [(2 - 3 * u + u ** 3) / 4, (-3 + 3 * u ** 2) / 4, (3 * u) / 2]
      : [(1 - u - u ** 2 + u ** 3) / 4, (-1 - 2 * u + 3 * u ** 2) / 4, (-1 + 3 * u) / 2];
  return mirrored ? [value, -slope, curvature] : [value, slope, curvature];
}

/** Twice integrated P_n, n from 2 to degree - 2, scaled so that the curvatures are orthonormal in s. */
function innerShapes(degree: number, s: number): Shape[] {
  const p = legendreValues(degree, s);
  const at = (n: number): number => p[n] as number;
  return Array.from({ length: degree - 3 }, (_, i): Shape => {
    const n = i + 2;
    const scale = Math.sqrt((2 * n + 1) / 2);
    const value = (at(n + 2) - at(n)) / (2 * n + 3) - (at(n) - at(n - 2)) / (2 * n - 1);
    return [(scale * value) / (2 * n + 1), (scale * (at(n + 1) - at(n - 1))) / (2 * n + 1), scale * at(n)];
  });
}
