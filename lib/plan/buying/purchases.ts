import type { ReviewInput } from "../../model/index.js";
import { adhesiveNeeds } from "./adhesive-needs.js";
import { barNeeds, facingNeeds, sheetNeeds } from "./cut-plans.js";
import { fastenerNeeds, hardwareNeeds } from "./piece-needs.js";
import type { PurchaseList } from "./purchase-list.js";
import { kerfFor } from "./shop-allowances.js";

/** Everything to buy for the case, trade by trade. */
export function purchaseList(input: ReviewInput): PurchaseList {
  return {
    kerfs: { sheets: kerfFor("sheets", input), bars: kerfFor("bars", input) },
    sheets: sheetNeeds(input),
    facings: facingNeeds(input),
    bars: barNeeds(input),
    adhesives: adhesiveNeeds(input),
    fasteners: fastenerNeeds(input),
    hardware: hardwareNeeds(input),
  };
}
