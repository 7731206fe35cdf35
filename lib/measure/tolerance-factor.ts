import { type Formula, formula } from "../formula.js";
import { Count, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { crossing, normalPoint, normalShare } from "./normal.js";

/** A lower bound from few tests. */
export interface ToleranceInputs {
  readonly tests: number;
  /** Share of all pieces that shall lie above the bound: 0.95. */
  readonly share: Ratio;
  /** How sure that is to be: 0.75. */
  readonly confidence: Ratio;
}

/**
 * How many standard deviations below the mean of n tests the bound lies that a share p of all pieces exceeds,
 * with a confidence: k = t' / sqrt(n), t' being the point of the noncentral t distribution with n - 1 degrees
 * of freedom and noncentrality z_p sqrt(n). The distribution is integrated over the scatter of s.
 *
 * @throws RangeError for fewer than 3 or more than 500 tests
 * @example toleranceFactor(toleranceFactor.read({ tests: 5, share: 0.9, confidence: 0.95 })) // 3.407
 */
export const toleranceFactor: Formula<ToleranceInputs, Ratio> = formula({
  id: "tolerance.factor",
  title: "Factor for a lower bound from few tests",
  equation: String.raw`k = \frac{t'_{\gamma}(n-1,\; z_p\sqrt{n})}{\sqrt{n}}`,
  inputs: {
    tests: { symbol: "n", kind: Count, meaning: "tests", min: 3, max: 500 },
    share: { symbol: "p", kind: Ratio, meaning: "share of pieces above the bound", min: 0.5, below: 1 },
    confidence: { symbol: String.raw`\gamma`, kind: Ratio, meaning: "confidence", min: 0.5, below: 1 },
  },
  result: { symbol: "k", kind: Ratio, meaning: "standard deviations below the mean" },
  source: [
    cite("iso-16269-6", "one-sided interval, standard deviation not known"),
    cite("en-14358", "3.2, factor k_s at p = 0.95 and 75 % confidence"),
  ],
  validity: "Tests drawn at random from one lot, scattering normally (or their logarithms do).",
  compute: ({ tests, share, confidence }) => {
    const shift = normalPoint(share) * Math.sqrt(tests);
    const below = (t: number): number => noncentralShare(t, tests - 1, shift) - confidence;
    return crossing(below, 0, 100 + 10 * shift) / Math.sqrt(tests);
  },
});

/** Steps of the integral; the integrand is smooth, and twice as many change nothing in ten digits. */
const steps = 400;

/** P(T' <= t): the normal share at t w - shift, over w = s / sigma, whose density is that of chi / sqrt(nu). */
function noncentralShare(t: number, freedom: number, shift: number): number {
  const reach = 12 / Math.sqrt(2 * freedom);
  const low = Math.max(0, 1 - reach);
  const width = (1 + reach - low) / steps;
  let sum = 0;
  let weight = 0;
  for (let i = 1; i < steps; i++) {
    const w = low + i * width;
    const density =
      Math.exp((freedom - 1) * Math.log(w) - (freedom * (w * w - 1)) / 2) * (i % 2 === 1 ? 4 : 2);
    weight += density;
    sum += density * normalShare(t * w - shift);
  }
  return sum / weight;
}
