import type { Case, Measurements, Offers, Parts, Stock } from "../design/index.js";

/** Everything a review looks at: the case taken apart, what can be bought, what was measured. */
export interface ReviewInput {
  readonly case: Case;
  readonly stock: Stock;
  /** How it is sold; prices stay and nothing is added when absent. */
  readonly offers?: Offers;
  readonly measurements: Measurements;
  readonly parts: Parts;
}
