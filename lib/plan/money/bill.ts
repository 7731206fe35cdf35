import type { Offers } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import { type BillLine, type BillTotal, quantityPrice, totalOf } from "../../money/index.js";
import { timesMoney } from "../../quantity/index.js";
import type { PurchaseList } from "../buying/purchase-list.js";
import { goodsOf } from "./goods.js";
import { addedBySuppliers } from "./orders.js";

/** The bill of materials, with what is paid and what of it does not go into the case. */
export type Bill = BillTotal & {
  /** In the order of the trades. */
  readonly lines: readonly BillLine[];
};

/** Prices to be tried: by how much the price of an item is multiplied, its breaks with it. */
export type PriceFactors = Readonly<Record<string, number>>;

const nothingOffered: Offers = { priceBreaks: [], suppliers: [], leftovers: [] };

/** The bill with price breaks, shipping and tax, at the prices of the tables or at others. */
export function billOf(
  { parts, offers = nothingOffered }: Pick<ReviewInput, "parts" | "offers">,
  purchases: PurchaseList,
  factors: PriceFactors = {},
): Bill {
  const goods = goodsOf(parts, purchases).map((line) => atItsQuantity(line, offers, factors[line.item] ?? 1));
  const lines = [...goods, ...addedBySuppliers(goods, offers)];
  return { lines, ...totalOf(lines) };
}

/** The line at the price for its quantity, with more bought where a break makes that cheaper. */
function atItsQuantity(line: BillLine, { priceBreaks }: Offers, factor: number): BillLine {
  const price = timesMoney(factor, line.unitPrice);
  const breaks = priceBreaks
    .filter(({ item }) => item === line.item)
    .map((one) => ({ from: one.from, price: timesMoney(factor, one.price) }));
  if (breaks.length === 0 || !Number.isInteger(line.quantity)) return { ...line, unitPrice: price };
  const { bought, unitPrice } = quantityPrice({ needed: line.quantity, price, breaks });
  return { ...line, quantity: bought, unitPrice };
}
