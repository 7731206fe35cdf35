import type { BarPlan, SheetPlan } from "../../cutting/index.js";
import { type BillLine, groupBill, totalOf } from "../../money/index.js";
import { type Money, timesMoney } from "../../quantity/index.js";
import type { PurchaseList } from "../buying/purchase-list.js";

/** Trades in the order a bill lists them. */
export type Trade = "panels" | "laminate" | "edges" | "adhesive" | "fasteners" | "hardware";

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

/** The bill under its trades, and its total. */
export function billOf(purchases: PurchaseList): {
  readonly lines: readonly BillLine[];
  readonly trades: ReturnType<typeof groupBill>;
  readonly total: Money;
  readonly waste: Money;
} {
  const lines = billLines(purchases);
  return { lines, trades: groupBill(lines, "trade"), ...totalOf(lines) };
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
