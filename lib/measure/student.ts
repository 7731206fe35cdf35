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
 * @throws RangeError unless 0 < confidence < 1 and degrees of freedom are 1 to 10 000
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
