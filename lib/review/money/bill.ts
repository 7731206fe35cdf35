import type { BarPlan, SheetPlan } from "../../cutting/index.js";
import type { Offers } from "../../design/index.js";
import { type BillLine, groupBill, quantityPrice, supplierBill, totalOf } from "../../money/index.js";
import { type Money, timesMoney } from "../../quantity/index.js";
import type { PurchaseList } from "../buying/purchase-list.js";

/** Trades in the order a bill lists them. */
export type Trade =
  | "panels"
  | "laminate"
  | "edges"
  | "adhesive"
  | "fasteners"
  | "hardware"
  | "shipping and tax";

/** The bill of materials: what is paid for and what of it goes into the case. */
export function billLines(purchases: PurchaseList): readonly BillLine[] {
  return [
    ...purchases.sheets.map(({ stock, plan }) =>
      line("panels", stock, sheetsBought(plan), sheetsUsed(plan), "sheet"),
    ),
    ...purchases.facings.map(({ stock, plan }) =>
      line("laminate", stock, sheetsBought(plan), sheetsUsed(plan), stock.form),
    ),
    ...purchases.bars.map(({ stock, plan }) => line("edges", stock, plan.bars.length, barsUsed(plan), "bar")),
    ...purchases.adhesives.map(({ stock, containers, volume }) =>
      line("adhesive", stock, containers, volume / stock.content, "container"),
    ),
    ...purchases.fasteners.flatMap(({ stock, packs, count, washers }) => [
      line("fasteners", stock, packs, count / stock.packOf, `pack of ${stock.packOf}`),
      ...(washers === 0 ? [] : [washerLine(stock, washers)]),
    ]),
    ...purchases.hardware.map(({ stock, count }) => line("hardware", stock, count, count, "each")),
  ];
}

/** The bill with price breaks, shipping and tax, under its trades, and its total. */
export function billOf(
  purchases: PurchaseList,
  offers: Offers = { priceBreaks: [], suppliers: [] },
): {
  readonly lines: readonly BillLine[];
  readonly trades: ReturnType<typeof groupBill>;
  readonly total: Money;
  readonly waste: Money;
} {
  const goods = billLines(purchases).map((line) => atItsQuantity(line, offers));
  const lines = [...goods, ...addedBySuppliers(goods, offers)];
  return { lines, trades: groupBill(lines, "trade"), ...totalOf(lines) };
}

/** The line at the price for its quantity, with more bought where a break makes that cheaper. */
function atItsQuantity(line: BillLine, { priceBreaks }: Offers): BillLine {
  const breaks = priceBreaks.filter(({ item }) => item === line.item);
  if (breaks.length === 0 || !Number.isInteger(line.quantity)) return line;
  const { bought, unitPrice } = quantityPrice({ needed: line.quantity, price: line.unitPrice, breaks });
  return { ...line, quantity: bought, unitPrice };
}

/** Shipping and tax of every order, a line each. */
function addedBySuppliers(goods: readonly BillLine[], { suppliers }: Offers): BillLine[] {
  return groupBill(goods, "supplier").flatMap(({ name, total }) => {
    const supplier = suppliers.find((one) => one.name === name);
    if (!supplier) return [];
    const { shipping, tax } = supplierBill({ goods: total, shipping: supplier.shipping, tax: supplier.tax });
    const added = (item: string, price: Money): BillLine[] =>
      price.amount === 0
        ? []
        : [line("shipping and tax", { name: item, price, supplier: name }, 1, 1, "order")];
    return [...added(`shipping, ${name}`, shipping), ...added(`tax, ${name}`, tax)];
  });
}

interface Sold {
  readonly name: string;
  readonly price: Money;
  readonly supplier: string;
}

function line(
  trade: Trade,
  { name, price, supplier }: Sold,
  quantity: number,
  used: number,
  unit: string,
): BillLine {
  return {
    section: "whole case",
    trade,
    item: name,
    supplier,
    quantity,
    used: Math.min(used, quantity),
    unit,
    unitPrice: price,
  };
}

function washerLine(stock: Sold & { readonly washerPrice: Money }, washers: number): BillLine {
  const washer = { ...stock, name: `washer for ${stock.name}`, price: timesMoney(1, stock.washerPrice) };
  return line("fasteners", washer, washers, washers, "each");
}

function sheetsBought({ sheets }: SheetPlan): number {
  return sheets.length;
}

/** Sheets' worth of pieces. */
function sheetsUsed({ sheets }: SheetPlan): number {
  return sheets.reduce((sum, { pieces, length, width }) => {
    const cut = pieces.reduce((area, piece) => area + piece.length * piece.width, 0);
    return sum + cut / (length * width);
  }, 0);
}

/** Bars' worth of pieces. */
function barsUsed({ bars }: BarPlan): number {
  return bars.reduce(
    (sum, { pieces, length }) => sum + pieces.reduce((cut, piece) => cut + piece.length, 0) / length,
    0,
  );
}
