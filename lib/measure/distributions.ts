/** The normal distribution and Student's t, to the last digits of a double. */
import { type Formula, formula } from "../formula.js";
import { Count, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** What Student's factor depends on. */
export interface StudentInputs {
  /** Share of cases in which the interval holds the true value: 0.95. */
  readonly confidence: Ratio;
  /** Readings less what was fitted: n - 1 for a mean, n - 2 for a line. */
  readonly degreesOfFreedom: number;
}

/**
 * Student's two-sided factor t: mean +/- t x standard error covers the true value with the confidence.
 * The distribution is summed exactly (a finite series for whole degrees of freedom) and inverted by
 * bisection.
 *
 * @throws Refusal unless 0 < confidence < 1 and degrees of freedom are 1 to 10 000
 * @example studentFactor(studentFactor.read({ confidence: 0.95, degreesOfFreedom: 1 })) // 12.71
 */
export const studentFactor: Formula<StudentInputs, Ratio> = formula({
  id: "student.factor",
  title: "Student's factor for a two-sided interval",
  equation: String.raw`A(t \mid \nu) = \gamma`,
  inputs: {
    confidence: { symbol: String.raw`\gamma`, kind: Ratio, meaning: "confidence", above: 0, below: 1 },
    degreesOfFreedom: {
      symbol: String.raw`\nu`,
      kind: Count,
      meaning: "degrees of freedom",
      min: 1,
      max: 10_000,
    },
  },
  result: { symbol: "t", kind: Ratio, meaning: "Student's factor" },
  source: [
    cite("statistical-tables", "two-sided points of t; series of Abramowitz and Stegun 26.7.3, 26.7.4"),
    cite("gum", "annex G, table G.2"),
  ],
  validity: "For readings that scatter like the normal distribution.",
  compute: ({ confidence, degreesOfFreedom }) =>
    Math.sqrt(degreesOfFreedom) * Math.tan(angleHolding(confidence, degreesOfFreedom)),
});

/** The angle atan(t / sqrt(nu)) up to which the share `confidence` lies. */
function angleHolding(confidence: number, degreesOfFreedom: number): number {
  let low = 0;
  let high = Math.PI / 2;
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, degreesOfFreedom) < confidence) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function shareWithin(angle: number, degreesOfFreedom: number): number {
  const odd = degreesOfFreedom % 2 === 1;
  const cosine = Math.cos(angle);
  let term = odd ? cosine : 1;
  let sum = degreesOfFreedom === 1 ? 0 : term;
  for (let power = odd ? 3 : 2; power <= degreesOfFreedom - 2; power += 2) {
    term *= ((power - 1) / power) * cosine ** 2;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
}

/**
 * Share of a normal scatter below z. Source: Abramowitz and Stegun, Handbook of Mathematical Functions, 26.2.11
 * (series) and 26.2.14 (continued fraction).
 */
export function normalShare(z: number): number {
  const height = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  if (Math.abs(z) < 3) return 0.5 + height * series(z);
  const tail = Math.abs(z) > 38 ? 0 : height / fraction(Math.abs(z));
  return z > 0 ? 1 - tail : tail;
}

function series(z: number): number {
  let term = z;
  let sum = z;
  for (let k = 3; Math.abs(term) > 1e-18 * Math.abs(sum); k += 2) {
    term *= (z * z) / k;
    sum += term;
  }
  return sum;
}

function fraction(z: number): number {
  let value = z;
  for (let k = 120; k >= 1; k--) value = z + k / value;
  return value;
}

/** The z below which the share of a normal scatter lies, by bisection. */
export function normalPoint(share: number): number {
  return crossing((z) => normalShare(z) - share, -40, 40);
}

/** Where a rising function crosses zero, to the last digits: false position, and halving every other step. */
export function crossing(rising: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  let [under, over] = [rising(low), rising(high)];
  for (let step = 0; step < 200 && to - from > 1e-14 * Math.max(1, Math.abs(to)); step++) {
    const share = step % 2 === 0 ? under / (under - over) : 0.5;
    const at = from + (to - from) * share;
    const value = rising(at);
    if (value === 0) return at;
    if (value < 0) [from, under] = [at, value];
    else [to, over] = [at, value];
  }
  return (from + to) / 2;
}
