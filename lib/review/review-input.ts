import type { Case, Measurements, Parts, Stock } from "../design/index.js";

/** Everything a review looks at: the case taken apart, what can be bought, what was measured. */
export interface ReviewInput {
  readonly case: Case;
  readonly stock: Stock;
  readonly measurements: Measurements;
  readonly parts: Parts;
}
