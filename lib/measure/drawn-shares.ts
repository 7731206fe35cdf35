/** Which input the scatter of drawn results comes from. */
import { choleskyTriangle } from "./correlation.js";

/**
 * Share of the variance that a plane through the draws gives to each input: slope times covariance with the
 * result. What is missing to 1 is curvature and interplay.
 *
 * @param offsets draws of each input less its middle
 * @param mean of the results
 * @param variance of the results
 */
export function explainedShares(
  offsets: readonly Float64Array[],
  results: Float64Array,
  mean: number,
  variance: number,
): readonly number[] {
  if (variance === 0) return offsets.map(() => 0);
  const sizes = offsets.map((list) => Math.sqrt(inner(list, list)));
  const alike = offsets.map((a, i) =>
    offsets.map((b, j) => (i === j ? 1 : inner(a, b) / ((sizes[i] || 1) * (sizes[j] || 1)))),
  );
  const about = results.map((one) => one - mean);
  const towards = offsets.map((list, i) => inner(list, about) / (sizes[i] || 1));
  const slopes = solvedBy(choleskyTriangle(alike), towards);
  return slopes.map((slope, i) => (slope * (towards[i] ?? 0)) / (variance * (results.length - 1)));
}

function inner(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** Solves L L^T x = right; an input without a share of its own gets none. */
function solvedBy(triangle: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const halfway: number[] = [];
  for (const [i, row] of triangle.entries()) {
    const rest = (right[i] ?? 0) - halfway.reduce((sum, one, k) => sum + one * (row[k] ?? 0), 0);
    halfway.push(row[i] ? rest / (row[i] ?? 1) : 0);
  }
  const solution = halfway.map(() => 0);
  for (let i = triangle.length - 1; i >= 0; i--) {
    const pivot = triangle[i]?.[i] ?? 0;
    const rest = solution.reduce((sum, one, k) => (k > i ? sum + one * (triangle[k]?.[i] ?? 0) : sum), 0);
    solution[i] = pivot ? ((halfway[i] ?? 0) - rest) / pivot : 0;
  }
  return solution;
}
