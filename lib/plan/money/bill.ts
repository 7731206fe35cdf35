/** The bill of materials: price breaks, what suppliers add, and what other prices would make of it. */
import type { Offers, Supplier } from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import {
  type BillGroup,
  type BillLine,
  type BillTotal,
  groupBill,
  quantityPrice,
  sharesOf,
  supplierBill,
  totalOf,
} from "../../money/index.js";
import { Mass, type Money, money, timesMoney } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { PurchaseList } from "../buying/purchases.js";
import { billLines, type Trade } from "./bill-lines.js";

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
  const goods = billLines(parts, purchases).map((line) =>
    atItsQuantity(line, offers, factors[line.item] ?? 1),
  );
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

/** The lines that the orders add, supplier by supplier. */
function addedBySuppliers(goods: readonly BillLine[], { suppliers }: Offers): BillLine[] {
  return groupBill(goods, "supplier").flatMap((order) => {
    const supplier = suppliers.find(({ name }) => name === order.name);
    return supplier && order.total.amount > 0 ? linesOf(order, supplier) : [];
  });
}

function linesOf(order: BillGroup, supplier: Supplier): BillLine[] {
  const { shipping, filledUp, tax } = supplierBill({
    goods: order.total,
    mass: massOf(order.lines),
    shipping: supplier.shipping,
    perKilogram: supplier.perKilogram ?? money(0, order.total.currency),
    freeFrom: supplier.freeFrom ?? "never",
    tax: supplier.tax,
  });
  const shares = sharesOf(order.lines.flatMap(costBySection));
  const trade: Trade = "shipping and tax";
  const added = (item: string, unitPrice: Money, used: number): BillLine[] =>
    unitPrice.amount === 0
      ? []
      : [{ shares, trade, item, supplier: order.name, quantity: 1, used, unit: "order", unitPrice }];
  return [
    ...added(`shipping, ${order.name}`, shipping, 1),
    ...added(`more to be shipped free, ${order.name}`, filledUp, 0),
    ...added(`tax, ${order.name}`, tax, 1),
  ];
}

function massOf(lines: readonly BillLine[]): Mass {
  return Mass.si(lines.reduce((sum, { quantity, mass = Mass.si(0) }) => sum + quantity * mass, 0));
}

function costBySection({ shares, quantity, unitPrice }: BillLine) {
  return shares.map(({ section, share }) => ({ section, amount: share * quantity * unitPrice.amount }));
}

/** One item at another price. */
export interface PriceEffect {
  /** The name of the item. */
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
 * @throws Refusal for an item that is not on the bill, or a price below nothing
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

/** @throws Refusal for an item that is not on the bill, or a price below nothing */
function refuseChanges(items: readonly string[], changes: Readonly<Record<string, number>>): void {
  for (const [item, change] of Object.entries(changes)) {
    if (!items.includes(item)) {
      throw new Refusal(`what if: "${item}" is not on the bill, expected one of ${items.join(", ")}`);
    }
    if (!(change >= -1 && Number.isFinite(change))) {
      throw new Refusal(`what if: ${item} must cost at least nothing, got a change of ${change}`);
    }
  }
}
