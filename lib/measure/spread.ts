import { type Ratio, ratio } from "../quantity/index.js";
import type { Interval } from "./mean.js";
import { studentFactor } from "./student.js";

/** How well one input is known. */
export interface Uncertainty {
  /** Standard uncertainty, in the input's own SI unit. */
  readonly standard: number;
  /** Readings behind it less one; leave out where it is not from readings (a rule's division). */
  readonly degreesOfFreedom?: number;
}

/** The uncertain inputs of a computation, by name; the others are taken as exact. */
export type Uncertainties<In extends object> = {
  readonly [Field in keyof In as In[Field] extends number ? Field : never]?: Uncertainty;
};

/** A computed value with the scatter its inputs give it. */
export interface SpreadResult<Out extends number> {
  readonly value: Out;
  readonly standardUncertainty: Out;
  readonly degreesOfFreedom: number;
  readonly interval: Interval<Out>;
  /** Share of each input in the variance, largest first; they sum to 1, or are all 0 without scatter. */
  readonly shares: readonly { readonly input: string; readonly share: number }[];
}

/** Beyond so many, Student's factor is the normal one to five digits. */
const many = 10_000;

/**
 * Carries measured scatter through any computation: u^2 = sum of (half the change of the result as an input
 * goes from x - u to x + u)^2, the inputs being independent; the interval takes Student's factor at the
 * effective degrees of freedom. First order: holds where the result is nearly straight over x +/- u.
 * Source: GUM 5.1.2 with the central differences of 5.1.3 note 2, and G.4.1 (Welch-Satterthwaite).
 *
 * @param compute any formula or function of one record of inputs
 * @param confidence of the interval, 95 % unless said
 * @throws RangeError when an uncertainty is negative or not finite, or when x +/- u leaves the range of
 * the computation
 */
export function spread<In extends object, Out extends number>(
  compute: (inputs: In) => Out,
  inputs: In,
  uncertainties: Uncertainties<In>,
  confidence: Ratio = ratio(0.95),
): SpreadResult<Out> {
  const value = compute(inputs);
  const parts = contributions(compute, inputs, uncertainties);
  const variance = parts.reduce((sum, { change }) => sum + change ** 2, 0);
  const degreesOfFreedom = effectiveFreedom(parts, variance);
  const reach = studentFactor({ confidence, degreesOfFreedom }) * Math.sqrt(variance);
  return {
    value,
    standardUncertainty: Math.sqrt(variance) as Out,
    degreesOfFreedom,
    interval: { low: (value - reach) as Out, high: (value + reach) as Out },
    shares: parts
      .map(({ input, change }) => ({ input, share: variance === 0 ? 0 : change ** 2 / variance }))
      .sort((a, b) => b.share - a.share),
  };
}

interface Contribution {
  readonly input: string;
  /** What one standard uncertainty of the input does to the result. */
  readonly change: number;
  readonly degreesOfFreedom: number;
}

function contributions<In extends object>(
  compute: (inputs: In) => number,
  inputs: In,
  uncertainties: Uncertainties<In>,
): Contribution[] {
  return Object.entries<Uncertainty>(uncertainties as Record<string, Uncertainty>).map(
    ([input, { standard, degreesOfFreedom = many }]) => {
      if (!(standard >= 0 && Number.isFinite(standard))) {
        throw new RangeError(`spread: uncertainty of ${input} must be a number from 0 up, got ${standard}`);
      }
      const at = inputs[input as keyof In] as number;
      const moved = (by: number): number => compute({ ...inputs, [input]: at + by });
      const change = standard === 0 ? 0 : (moved(standard) - moved(-standard)) / 2;
      return { input, change, degreesOfFreedom };
    },
  );
}

/** Welch-Satterthwaite, truncated to a whole number as GUM G.4.1 asks. */
function effectiveFreedom(parts: readonly Contribution[], variance: number): number {
  if (variance === 0) return many;
  // As shares of the variance, so that tiny quantities do not underflow.
  const inverse = parts.reduce(
    (sum, { change, degreesOfFreedom }) => sum + (change ** 2 / variance) ** 2 / degreesOfFreedom,
    0,
  );
  return Math.min(many, Math.max(1, Math.floor(1 / inverse + 1e-9)));
}
