/** Shapes between two neighbouring knots of a strip, over s from -1 to 1. */
import { legendreValues } from "./legendre.js";

/** Value, first and second derivative with respect to s. */
export type Shape = readonly [number, number, number];

/** Hermite cubics: 0 lifts the start, 1 tilts it, 2 lifts the end, 3 tilts it. */
export function endShape(i: number, s: number): Shape {
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
export function innerShapes(degree: number, s: number): Shape[] {
  const p = legendreValues(degree, s);
  const at = (n: number): number => p[n] as number;
  return Array.from({ length: degree - 3 }, (_, i): Shape => {
    const n = i + 2;
    const scale = Math.sqrt((2 * n + 1) / 2);
    const value = (at(n + 2) - at(n)) / (2 * n + 3) - (at(n) - at(n - 2)) / (2 * n - 1);
    return [(scale * value) / (2 * n + 1), (scale * (at(n + 1) - at(n - 1))) / (2 * n + 1), scale * at(n)];
  });
}
