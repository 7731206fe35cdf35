import type { Case, Parts, Timing } from "../design/index.js";
import type { Finding, PurchaseList } from "../review/index.js";
import type { MassItem } from "../review/masses.js";

/** Everything a recipe is written from. */
export interface RecipeInput {
  readonly case: Case;
  readonly parts: Parts;
  readonly purchases: PurchaseList;
  /** Every question of the review, with its verdict. */
  readonly findings: readonly Finding[];
  /** What each thing weighs; masses are left to be weighed where absent. */
  readonly masses?: readonly MassItem[];
  /** How long work took the builder so far; the time sheet has no planned times where absent. */
  readonly timings?: readonly Timing[];
}
