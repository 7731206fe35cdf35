/** Everything a case needs bought, as lines of a bill at the price of one, and for which section each is. */
import type { BarPlan, SheetPlan } from "../../cutting/index.js";
import { type Parts, sheetPieces } from "../../design/index.js";
import { type BillLine, type SectionShare, sharesOf } from "../../money/index.js";
import { Mass, type Money } from "../../quantity/index.js";
import { boughtOf } from "../buying/cut-plans.js";
import type { PurchaseList } from "../buying/purchases.js";

/** Trades in the order a bill lists them. */
export type Trade =
  | "panels"
  | "laminate"
  | "edges"
  | "strips"
  | "panes"
  | "adhesive"
  | "fasteners"
  | "hardware"
  | "shipping and tax";

interface Sold {
  /** What it is called in its table. */
  readonly name: string;
  /** Of one. */
  readonly price: Money;
  /** Who sells it. */
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
export function billLines(parts: Parts, purchases: PurchaseList): BillLine[] {
  return everyLine(parts, purchases).filter(({ quantity }) => quantity > 0);
}

function everyLine(parts: Parts, purchases: PurchaseList): BillLine[] {
  const shares = stockShares(parts, purchases);
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
    ...purchases.strips.map(({ stock, plan }) =>
      line("strips", stock, {
        shares: shares.strip(stock.name),
        quantity: boughtOf({ stock, plan }),
        used: barsUsed(plan),
        unit: "strip",
        mass: Mass.si(stock.width * stock.thickness * stock.length * stock.density),
      }),
    ),
    ...purchases.panes.map(({ stock, plan }) =>
      line("panes", stock, { ...sheetsOf(plan, stock), shares: shares.pane(stock.name), unit: "sheet" }),
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
  /** What it is called in its table. */
  readonly name: string;
  /** Along the grain, m. */
  readonly length: number;
  /** Across the grain, m. */
  readonly width: number;
  /** In metres. */
  readonly thickness: number;
  /** In kg/m3. */
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
  const price = stock.washerPrice;
  const loose = { shares, quantity: washers, used: washers, unit: "each" };
  return [
    line("fasteners", stock, pack),
    ...(price && washers > 0
      ? [line("fasteners", { ...stock, name: `washer for ${stock.name}`, price }, loose)]
      : []),
  ];
}

/** How a line that several sections have a part in is shared among them, in words. */
export const sharingRule =
  "What more than one section needs is shared: sheets and laminate by the area of each section's pieces, bars and strips by their length, adhesive by the area glued, fasteners and hardware by their number, shipping and tax by the cost of the goods they come with.";

/** The shares of each stock, by its name. */
interface StockShares {
  sheet(name: string): readonly SectionShare[];
  facing(name: string): readonly SectionShare[];
  bar(name: string): readonly SectionShare[];
  strip(name: string): readonly SectionShare[];
  pane(name: string): readonly SectionShare[];
  adhesive(name: string): readonly SectionShare[];
  fastener(name: string): readonly SectionShare[];
  hardware(name: string): readonly SectionShare[];
}

/** One use of a stock. */
interface Use {
  /** The section that needs it. */
  readonly section: string;
  /** The name of the stock. */
  readonly stock: string;
  /** How much of it, in the measure of `sharingRule`. */
  readonly amount: number;
}

/** The shares of every stock that a case is made of, by `sharingRule`. */
function stockShares(parts: Parts, purchases: PurchaseList): StockShares {
  const panels = sheetPieces(parts);
  const sectionOf = new Map(panels.map(({ id, section }) => [id, section]));
  const at = (panel: string): string => sectionOf.get(panel) ?? "whole case";
  const sharing = sharingOf(parts.sections.map(({ name }) => name));
  return {
    sheet: sharing(
      panels.map(({ section, sheet, grossArea }) => ({ section, stock: sheet.name, amount: grossArea })),
    ),
    facing: sharing(
      parts.facings.map(({ panel, stock, width, height }) => ({
        section: at(panel),
        stock: stock.name,
        amount: width * height,
      })),
    ),
    bar: sharing(
      parts.bars.map(({ section, stock, length }) => ({ section, stock: stock.name, amount: length })),
    ),
    pane: sharing(
      parts.panes.map(({ section, stock, width, height }) => ({
        section,
        stock: stock.name,
        amount: width * height,
      })),
    ),
    strip: sharing(
      parts.strips.map(({ section, stock, length }) => ({ section, stock: stock.name, amount: length })),
    ),
    adhesive: sharing([
      ...parts.facings.map(({ panel, adhesive, gluedArea }) => ({
        section: at(panel),
        stock: adhesive.name,
        amount: gluedArea,
      })),
      ...parts.glues.map(({ section, adhesive, area }) => ({ section, stock: adhesive.name, amount: area })),
    ]),
    fastener: sharing(
      purchases.fasteners.flatMap(({ stock, groups }) =>
        groups.map(({ panel, count }) => ({ section: at(panel), stock: stock.name, amount: count })),
      ),
    ),
    hardware: sharing(
      parts.hardware.map(({ section, stock }) => ({ section, stock: stock.name, amount: 1 })),
    ),
  };
}

/** Shares in the order in which the case names its sections. */
function sharingOf(sections: readonly string[]) {
  return (uses: readonly Use[]) =>
    (name: string): readonly SectionShare[] => {
      const mine = uses.filter(({ stock }) => stock === name);
      return sharesOf(mine.sort((a, b) => sections.indexOf(a.section) - sections.indexOf(b.section)));
    };
}

/** "lower", or "lower 60 %, upper 40 %" of a line that is shared; a section and its share stay on one line. */
export function sharesInWords(shares: readonly SectionShare[]): string {
  if (shares.length === 1) return shares[0]?.section ?? "";
  return shares.map(({ section, share }) => `${section}\u00a0${Math.round(share * 100)}\u00a0%`).join(", ");
}
