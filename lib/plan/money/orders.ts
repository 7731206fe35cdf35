/** What suppliers add to the goods: a line each for shipping, for filling the order up, and for tax. */
import type { Offers, Supplier } from "../../design/index.js";
import { type BillGroup, type BillLine, groupBill, sharesOf, supplierBill } from "../../money/index.js";
import { Mass, type Money, money } from "../../quantity/index.js";
import type { Trade } from "./goods.js";

/** The lines that the orders add, supplier by supplier. */
export function addedBySuppliers(goods: readonly BillLine[], { suppliers }: Offers): BillLine[] {
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
