/** Everything a case needs bought, as lines of a bill at the price of one. */
import type { BarPlan, SheetPlan } from "../../cutting/index.js";
import type { Parts } from "../../design/index.js";
import type { BillLine, SectionShare } from "../../money/index.js";
import { Mass, type Money } from "../../quantity/index.js";
import { boughtOf, type PurchaseList } from "../buying/purchase-list.js";
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

/** What is bought for a case, trade by trade, nothing for what comes from the rack; washers are lines of their own, and too light to count. */
export function goodsOf(parts: Parts, purchases: PurchaseList): BillLine[] {
  return everyLine(parts, purchases).filter(({ quantity }) => quantity > 0);
}

function everyLine(parts: Parts, purchases: PurchaseList): BillLine[] {
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
        quantity: boughtOf({ stock, plan }),
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
  readonly name: string;
  readonly length: number;
  readonly width: number;
  readonly thickness: number;
  readonly density: number;
}

/** Sheets bought, and sheets' worth of pieces cut from them. */
function sheetsOf(plan: SheetPlan, stock: Slab) {
  const used = plan.sheets
    .filter((sheet) => sheet.stock === stock.name)
    .reduce((sum, sheet) => {
      const cut = sheet.pieces.reduce((area, piece) => area + piece.length * piece.width, 0);
      return sum + cut / (sheet.length * sheet.width);
    }, 0);
  const { length, width, thickness, density } = stock;
  const mass = Mass.si(length * width * thickness * density);
  return { quantity: boughtOf({ stock, plan }), used, mass };
}

/** Bars' worth of pieces cut from those that are bought. */
function barsUsed({ bars }: BarPlan): number {
  return bars
    .filter(({ from }) => from === "bought")
    .reduce(
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
