import type { Case, Measurements, Offers, Parts, Stock } from "../design/index.js";

/** Everything a review looks at: the case taken apart, what can be bought, what was measured. */
export interface ReviewInput {
  /** What the case file says. */
  readonly case: Case;
  /** What can be bought. */
  readonly stock: Stock;
  /** How it is sold; prices stay and nothing is added when absent. */
  readonly offers?: Offers;
  /** What the builder measured. */
  readonly measurements: Measurements;
  /** The case taken apart. */
  readonly parts: Parts;
}
