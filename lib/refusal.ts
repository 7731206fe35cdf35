/** What is still to be measured or written down before a question can be answered. */
export interface MissingMeasurement {
  /** The thing to measure, in a builder's words: "the push that the cradle stands". */
  readonly measure: string;
  /** How to measure it, and where to write it. */
  readonly how: string;
  /** Whether nothing is to be measured but something changed. */
  readonly isChange?: true;
}

/**
 * Thrown where an answer cannot be given: says why, and what would give it. A bug is never one. It is a range error
 * and reads as one, so that a notebook shows the words alone; whoever catches asks for this class, since the engine
 * throws range errors of its own for a stack that overflows or an array too long.
 */
export class Refusal extends RangeError {
  readonly #would: MissingMeasurement;

  /**
   * @param why in a builder's words
   * @param would give the answer; a change of what the reason names unless said
   */
  constructor(
    why: string,
    would: MissingMeasurement = {
      measure: "a change of what stands in its way",
      how: `${why}; change that in the case file or in its tables`,
      isChange: true,
    },
  ) {
    super(why);
    this.#would = would;
  }

  /** What would give the answer. */
  get would(): MissingMeasurement {
    return this.#would;
  }
}

/** What some work gives, or nothing where it refuses: for what an answer can do without, such as a remedy. */
export function unlessRefused<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}
