/**
 * What the builder's measurements leave open about any answer of a review. Each measured thing is moved by a share in
 * its own table and the review run again, so that nothing in the review has to know about scatter; `propagate` and
 * `monteCarlo` then carry it, correlations included.
 */
import type { Uncertainties } from "../measure/index.js";
import type { ReviewInput } from "../model/index.js";
import { type Ratio, ratio } from "../quantity/index.js";
import { type MeasuredThing, measuredThings } from "./measured-things.js";

/** An answer of a review as a computation of its measured things, each a share off what was measured. */
export interface MeasuredReview<Answer extends number> {
  compute(shares: MeasuredShares): Answer;
  /** Nothing off. */
  readonly at: MeasuredShares;
  readonly uncertainties: Uncertainties<MeasuredShares>;
}

/** By the name of the measured thing. */
export type MeasuredShares = Readonly<Record<string, Ratio>>;

/**
 * Readies an answer of a review for `propagate` or `monteCarlo`.
 *
 * @param ask runs the review, or the part of it that is asked about
 * @param things to move, all that were measured more than once unless said
 * @example
 * const job = openJob("soil-lab");
 * const { compute, at, uncertainties } = measuredReview(job, (input) => sectionBalance(input, "upper").value.mass);
 * propagate(compute, at, uncertainties).interval
 */
export function measuredReview<Answer extends number>(
  input: ReviewInput,
  ask: (input: ReviewInput) => Answer,
  things: readonly MeasuredThing[] = measuredThings(input),
): MeasuredReview<Answer> {
  return {
    compute: (shares) => {
      const measurements = things.reduce((moved, thing) => {
        const share = shares[thing.name] ?? 0;
        return share === 0 ? moved : thing.moved(moved, share);
      }, input.measurements);
      return ask({ ...input, measurements });
    },
    at: Object.fromEntries(things.map(({ name }) => [name, ratio(0)])),
    uncertainties: Object.fromEntries(things.map(({ name, uncertainty }) => [name, uncertainty])),
  };
}
