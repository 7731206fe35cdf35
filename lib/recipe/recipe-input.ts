import type { Case, Parts } from "../design/index.js";
import type { Finding } from "../findings/index.js";
import type { MassItem } from "../model/index.js";
import type { Bill, PurchaseList, WorkTime } from "../plan/index.js";

/** Everything a recipe is written from. */
export interface RecipeInput {
  readonly case: Case;
  readonly parts: Parts;
  readonly purchases: PurchaseList;
  /** Of all of them, with price breaks, shipping and tax. */
  readonly bill: Bill;
  /** Every question of the review, with its verdict. */
  readonly findings: readonly Finding[];
  /** What each thing weighs; masses are left to be weighed where absent. */
  readonly masses?: readonly MassItem[];
  /** Bench time by kind of work; the time sheet plans only the whole where absent. */
  readonly times?: readonly WorkTime[];
}
