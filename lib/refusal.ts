/** What is still to be measured or written down before a question can be answered. */
export interface MissingMeasurement {
  /** The thing to measure, in a builder's words: "the push that the cradle stands". */
  readonly measure: string;
  /** How to measure it, and where to write it. */
  readonly how: string;
}

/**
 * Thrown where an answer cannot be given: says why, and what would give it. A bug is never one. It is a range error
 * too, so that what expects a formula to refuse its inputs meets the same sort of error.
 */
export class Refusal extends RangeError {
  override readonly name = "Refusal";

  /**
   * @param why in a builder's words
   * @param would give the answer; inputs within the range of the formula unless said
   */
  constructor(
    why: string,
    readonly would: MissingMeasurement = { measure: "an input within the range of the formula", how: why },
  ) {
    super(why);
  }
}
