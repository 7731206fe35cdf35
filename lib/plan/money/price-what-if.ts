/** What the bill comes to when a price is another one. */

import type { ReviewInput } from "../../model/index.js";
import { type Money, money } from "../../quantity/index.js";
import type { PurchaseList } from "../buying/purchase-list.js";
import { type Bill, billOf, type PriceFactors } from "./bill.js";

/** One item at another price. */
export interface PriceEffect {
  readonly item: string;
  /** Of one, as the tables have it, breaks counted. */
  readonly before: Money;
  /** Of one, with the change. */
  readonly after: Money;
  /** By how much the whole bill rises, breaks, shipping and tax in it. */
  readonly added: Money;
}

/** The items whose price can be changed: all but shipping and tax, the dearest line first. */
export function pricedItems({ lines }: Bill): readonly string[] {
  return lines
    .filter(({ unit }) => unit !== "order")
    .sort((a, b) => b.quantity * b.unitPrice.amount - a.quantity * a.unitPrice.amount)
    .map(({ item }) => item);
}

/**
 * The bill with other prices, and what each of them adds by itself.
 *
 * @param changes by item, as a share of its price: 0.25 is a quarter more
 * @throws RangeError for an item that is not on the bill, or a price below nothing
 */
export function priceWhatIf(
  input: Pick<ReviewInput, "parts" | "offers">,
  purchases: PurchaseList,
  changes: Readonly<Record<string, number>>,
): { readonly bill: Bill; readonly effects: readonly PriceEffect[] } {
  const now = billOf(input, purchases);
  refuseChanges(pricedItems(now), changes);
  const factors = factorsOf(changes);
  const effects = Object.keys(factors).map((item): PriceEffect => {
    const then = billOf(input, purchases, { [item]: factors[item] ?? 1 });
    const priceIn = ({ lines }: Bill): Money =>
      lines.find((line) => line.item === item)?.unitPrice ?? money(0, now.total.currency);
    const added = money(then.total.amount - now.total.amount, now.total.currency);
    return { item, before: priceIn(now), after: priceIn(then), added };
  });
  return { bill: billOf(input, purchases, factors), effects };
}

function factorsOf(changes: Readonly<Record<string, number>>): PriceFactors {
  return Object.fromEntries(Object.entries(changes).map(([item, change]) => [item, 1 + change]));
}

function refuseChanges(items: readonly string[], changes: Readonly<Record<string, number>>): void {
  for (const [item, change] of Object.entries(changes)) {
    if (!items.includes(item)) {
      throw new RangeError(`what if: "${item}" is not on the bill, expected one of ${items.join(", ")}`);
    }
    if (!(change >= -1 && Number.isFinite(change))) {
      throw new RangeError(`what if: ${item} must cost at least nothing, got a change of ${change}`);
    }
  }
}
