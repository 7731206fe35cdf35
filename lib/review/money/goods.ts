/** Everything a case needs bought, as lines of a bill at the price of one. */
import type { BarPlan, SheetPlan } from "../../cutting/index.js";
import type { Parts } from "../../design/index.js";
import type { BillLine, SectionShare } from "../../money/index.js";
import { Mass, type Money } from "../../quantity/index.js";
import type { PurchaseList } from "../buying/purchase-list.js";
import { stockShares } from "./section-shares.js";

/** Trades in the order a bill lists them. */
export type Trade =
  | "panels"
  | "laminate"
  | "edges"
  | "adhesive"
  | "fasteners"
  | "hardware"
  | "shipping and tax";

interface Sold {
  readonly name: string;
  readonly price: Money;
  readonly supplier: string;
}

/** What is bought of a stock, beside its name and price. */
type Amount = Required<Pick<BillLine, "shares" | "quantity" | "used" | "unit">> & { readonly mass?: Mass };

function line(trade: Trade, { name, price, supplier }: Sold, { used, ...amount }: Amount): BillLine {
  return {
    trade,
    item: name,
    supplier,
    unitPrice: price,
    ...amount,
    used: Math.min(used, amount.quantity),
  };
}

/** The goods of a case, trade by trade; washers are lines of their own, and too light to count. */
export function goodsOf(parts: Parts, purchases: PurchaseList): BillLine[] {
  const shares = stockShares(parts);
  return [
    ...purchases.sheets.map(({ stock, plan }) =>
      line("panels", stock, { ...sheetsOf(plan, stock), shares: shares.sheet(stock.name), unit: "sheet" }),
    ),
    ...purchases.facings.map(({ stock, plan }) =>
      line("laminate", stock, {
        ...sheetsOf(plan, stock),
        shares: shares.facing(stock.name),
        unit: stock.form,
      }),
    ),
    ...purchases.bars.map(({ stock, plan }) =>
      line("edges", stock, {
        shares: shares.bar(stock.name),
        quantity: plan.bars.length,
        used: barsUsed(plan),
        unit: "bar",
        mass: Mass.si(stock.massPerLength * stock.length),
      }),
    ),
    ...purchases.adhesives.map(({ stock, containers, volume }) =>
      line("adhesive", stock, {
        shares: shares.adhesive(stock.name),
        quantity: containers,
        used: volume / stock.content,
        unit: "container",
        mass: Mass.si(stock.content * stock.density),
      }),
    ),
    ...purchases.fasteners.flatMap((need) => fastenerLines(need, shares.fastener(need.stock.name))),
    ...purchases.hardware.map(({ stock, count }) =>
      line("hardware", stock, {
        shares: shares.hardware(stock.name),
        quantity: count,
        used: count,
        unit: "each",
        mass: stock.mass,
      }),
    ),
  ];
}

interface Slab {
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly density: number;
}

/** Sheets bought and sheets' worth of pieces. */
function sheetsOf({ sheets }: SheetPlan, { length, width, thickness, density }: Slab) {
  const used = sheets.reduce((sum, sheet) => {
    const cut = sheet.pieces.reduce((area, piece) => area + piece.length * piece.width, 0);
    return sum + cut / (sheet.length * sheet.width);
  }, 0);
  return { quantity: sheets.length, used, mass: Mass.si(length * width * thickness * density) };
}

/** Bars' worth of pieces. */
function barsUsed({ bars }: BarPlan): number {
  return bars.reduce(
    (sum, { pieces, length }) => sum + pieces.reduce((cut, piece) => cut + piece.length, 0) / length,
    0,
  );
}

function fastenerLines(
  { stock, packs, count, washers }: PurchaseList["fasteners"][number],
  shares: readonly SectionShare[],
): BillLine[] {
  const pack = {
    shares,
    quantity: packs,
    used: count / stock.packOf,
    unit: `pack of ${stock.packOf}`,
    mass: Mass.si(stock.packOf * stock.mass),
  };
  const washer = { ...stock, name: `washer for ${stock.name}`, price: stock.washerPrice };
  return [
    line("fasteners", stock, pack),
    ...(washers === 0
      ? []
      : [line("fasteners", washer, { shares, quantity: washers, used: washers, unit: "each" })]),
  ];
}
