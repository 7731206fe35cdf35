/** What to buy: counts, sections, suppliers, prices and the total. */
import { type PurchaseList, sharingRule } from "../../plan/index.js";
import { billGroupTable, billTable } from "../bill-tables.js";
import { section, sentence } from "../make-block.js";
import type { RecipeSection } from "../recipe.js";
import { listed } from "../words.js";
import type { Workshop } from "../workshop.js";

/** The section. */
export function buyListSection({ bill, purchases, case: { sections }, rule }: Workshop): RecipeSection {
  return section(
    "Buy list",
    billTable(bill, purchases, rule),
    ...allowances(purchases).map(sentence),
    billGroupTable(bill, "supplier"),
    billGroupTable(bill, "trade"),
    billGroupTable(bill, "section"),
    ...(sections.length > 1 ? [sentence(sharingRule)] : []),
  );
}

/** What the counts allow for, said once. */
function allowances({ adhesives, sheets }: PurchaseList): string[] {
  const onLabel = adhesives.filter(({ rateFrom }) => rateFrom === "label").map(({ stock }) => stock.name);
  return [
    ...(onLabel.length > 0
      ? [
          `${listed(onLabel)}: reckoned with the label's spread rate. Weigh the can on a trial panel and the figure becomes yours.`,
        ]
      : []),
    ...(sheets.length > 0
      ? [
          "Look at every sheet before paying: flat, no open joints at the edges, and measured with the calliper at three places.",
        ]
      : []),
  ];
}
