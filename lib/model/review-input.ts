import type { Case, CaseBuild, Measurements, Offers, Parts, Stock } from "../design/index.js";

/** Everything a review looks at but what the case earns: taken apart, what can be bought, what was measured. */
export interface ReviewInput {
  /** What there is to build. */
  readonly case: CaseBuild;
  /** What can be bought. */
  readonly stock: Stock;
  /** How it is sold; prices stay and nothing is added when absent. */
  readonly offers?: Offers;
  /** What the builder measured. */
  readonly measurements: Measurements;
  /** Every piece of the case. */
  readonly parts: Parts;
}

/** The same with what the case earns. */
export interface BusinessInput extends ReviewInput {
  /** What there is to build, and what it is to earn. */
  readonly case: Case;
}
