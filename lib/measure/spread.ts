import { type Ratio, ratio } from "../quantity/index.js";
import { combinedUncertainty, manyFreedoms, varianceShares } from "./combined-uncertainty.js";
import { type Correlation, correlationMatrix } from "./correlation.js";
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

/** Share of one input in the scatter of a result. */
export interface ScatterShare {
  readonly input: string;
  readonly share: number;
}

/** A computed value with the scatter its inputs give it. */
export interface SpreadResult<Out extends number> {
  readonly value: Out;
  readonly standardUncertainty: Out;
  readonly degreesOfFreedom: number;
  readonly interval: Interval<Out>;
  /** Share of each input in the variance, largest first; they sum to 1, or are all 0 without scatter. */
  readonly shares: readonly ScatterShare[];
}

/**
 * Carries measured scatter through any computation, first order: each input is moved by its uncertainty up
 * and down, half the change counts, and changes add as squares, or with their correlation. The interval takes
 * Student's factor at the effective degrees of freedom. Holds where the result is nearly straight over
 * x +/- u; where it is not, `monteCarlo` does without that.
 * Source: GUM 5.1.2 and 5.2.2 with the central differences of 5.1.3 note 2, and G.4.1.
 *
 * @param compute any formula or function of one record of inputs
 * @param confidence of the interval, 95 % unless said
 * @param correlations between inputs, none unless said
 * @throws RangeError when an uncertainty is negative or not finite, or when x +/- u leaves the range of
 * the computation
 */
export function spread<In extends object, Out extends number>(
  compute: (inputs: In) => Out,
  inputs: In,
  uncertainties: Uncertainties<In>,
  confidence: Ratio = ratio(0.95),
  correlations: readonly Correlation[] = [],
): SpreadResult<Out> {
  const value = compute(inputs);
  const known = knownInputs("spread", uncertainties);
  const names = known.map(({ input }) => input);
  const changes = known.map(({ input, standard }) => changeOf(compute, inputs, input, standard));
  const freedoms = known.map(({ degreesOfFreedom }) => degreesOfFreedom);
  const matrix = correlationMatrix(names, correlations).map((row) => row.map(ratio));
  const combined = combinedUncertainty({ changes: changes.map(ratio), freedoms, correlations: matrix });
  const { standard, degreesOfFreedom } = combined;
  const reach = studentFactor({ confidence, degreesOfFreedom }) * standard;
  return {
    value,
    standardUncertainty: standard as number as Out,
    degreesOfFreedom,
    interval: { low: (value - reach) as Out, high: (value + reach) as Out },
    shares: sortedShares(names, varianceShares(changes, matrix)),
  };
}

/** One uncertain input. */
export interface KnownInput {
  readonly input: string;
  readonly standard: number;
  readonly degreesOfFreedom: number;
}

/**
 * The uncertain inputs in a list.
 *
 * @param caller named in errors
 * @throws RangeError when an uncertainty is negative or not finite
 */
export function knownInputs<In extends object>(
  caller: string,
  uncertainties: Uncertainties<In>,
): readonly KnownInput[] {
  return Object.entries<Uncertainty>(uncertainties as Record<string, Uncertainty>).map(
    ([input, { standard, degreesOfFreedom = manyFreedoms }]) => {
      if (!(standard >= 0 && Number.isFinite(standard))) {
        throw new RangeError(
          `${caller}: uncertainty of ${input} must be a number from 0 up, got ${standard}`,
        );
      }
      return { input, standard, degreesOfFreedom };
    },
  );
}

/** Shares by name, the largest first. */
export function sortedShares(names: readonly string[], shares: readonly number[]): readonly ScatterShare[] {
  return names.map((input, i) => ({ input, share: shares[i] ?? 0 })).sort((a, b) => b.share - a.share);
}

/** What one standard uncertainty of an input does to the result. */
function changeOf<In extends object>(
  compute: (inputs: In) => number,
  inputs: In,
  input: string,
  standard: number,
): number {
  const at = inputs[input as keyof In] as number;
  const moved = (by: number): number => compute({ ...inputs, [input]: at + by });
  return standard === 0 ? 0 : (moved(standard) - moved(-standard)) / 2;
}
