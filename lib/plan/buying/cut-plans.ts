import {
  type BarJob,
  type BarPiece,
  type BarPlan,
  barEndTrim,
  planBars,
  planSheets,
  type SheetJob,
  type SheetPiece,
  type SheetPlan,
  type StockSheet,
  sheetEdgeTrim,
} from "../../cutting/index.js";
import {
  type BarPart,
  type BarStock,
  type FacingPart,
  type FacingStock,
  type Leftover,
  type PanelPart,
  type SheetStock,
  sheetPieces,
} from "../../design/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Angle, money } from "../../quantity/index.js";
import type { CutNeed } from "./purchase-list.js";
import { kerfFor } from "./shop-allowances.js";

/** One stock of sheets with all that is cut from it. */
export interface SheetStockJob {
  readonly stock: SheetStock;
  readonly job: SheetJob;
}

/** One stock of bars with all that is cut from it. */
export interface BarStockJob {
  readonly stock: BarStock;
  readonly job: BarJob;
}

/** What is cut from each stock of sheets: faces, leaves and shelves. */
export function sheetJobs(input: ReviewInput): readonly SheetStockJob[] {
  const panels = sheetPieces(input.parts);
  return stocksOf(panels, ({ sheet }) => sheet).map((stock) => ({
    stock,
    job: {
      pieces: panels.filter(({ sheet }) => sheet.name === stock.name).map(panelPiece),
      stock: [...offcutsOf(stock.name, input), stock],
      kerf: kerfFor("sheets", input).kerf,
      edgeTrim: sheetEdgeTrim,
    },
  }));
}

/** Which sheets to buy and how to cut every panel from them, stock by stock. */
export function sheetNeeds(input: ReviewInput): readonly CutNeed<SheetStock, SheetPlan>[] {
  return sheetJobs(input).map(({ stock, job }) => ({ stock, plan: planSheets(job) }));
}

/** Which laminate to buy and how to cut it; a facing has no grain, and its oversize is in its size. */
export function facingNeeds(input: ReviewInput): readonly CutNeed<FacingStock, SheetPlan>[] {
  const { facings } = input.parts;
  return stocksOf(facings, ({ stock }) => stock).map((stock) => ({
    stock,
    plan: planSheets({
      pieces: facings.filter((facing) => facing.stock.name === stock.name).map(facingPiece),
      stock: [...offcutsOf(stock.name, input), stock],
      kerf: kerfFor("sheets", input).kerf,
    }),
  }));
}

/** What is cut from each stock of extrusion bars. */
export function barJobs(input: ReviewInput): readonly BarStockJob[] {
  const { bars } = input.parts;
  return stocksOf(bars, ({ stock }) => stock).map((stock) => ({
    stock,
    job: {
      pieces: bars.filter((bar) => bar.stock.name === stock.name).map(barPiece),
      stock: [stock],
      leftovers: leftoversOf(stock.name, input),
      kerf: kerfFor("bars", input).kerf,
      endTrim: barEndTrim,
    },
  }));
}

/** Which extrusion bars to buy and how to cut them. */
export function barNeeds(input: ReviewInput): readonly CutNeed<BarStock, BarPlan>[] {
  return barJobs(input).map(({ stock, job }) => ({ stock, plan: planBars(job) }));
}

function leftoversOf(stock: string, { offers }: ReviewInput): readonly Leftover[] {
  return (offers?.leftovers ?? []).filter((one) => one.stock === stock);
}

/** Offcuts on the rack as sheets that cost nothing. */
function offcutsOf(stock: string, input: ReviewInput): readonly StockSheet[] {
  const price = money(0, input.case.currency);
  return leftoversOf(stock, input).flatMap(({ name, length, width, count }) =>
    width === undefined ? [] : [{ name, length, width, price, available: count }],
  );
}

/** Each stock once, in the order the parts first ask for it. */
function stocksOf<Part, Stock extends { readonly name: string }>(
  parts: readonly Part[],
  stockOf: (part: Part) => Stock,
): Stock[] {
  return [...new Map(parts.map((part) => [stockOf(part).name, stockOf(part)])).values()];
}

/** A panel as a piece of sheet: its length lies along its grain. */
export function panelPiece({ id, width, height, grain }: PanelPart): SheetPiece {
  const along = grain === "across";
  return {
    name: id,
    length: along ? width : height,
    width: along ? height : width,
    count: 1,
    grain: "along",
  };
}

/** A facing as a piece of laminate: it has no grain, and its oversize is in its size. */
export function facingPiece({ panel, side, width, height }: FacingPart): SheetPiece {
  return { name: `${panel}, ${side}`, length: width, width: height, count: 1, grain: "free" };
}

const mitred = { left: Angle.of(45, "deg"), right: Angle.of(45, "deg") };

function barPiece({ id, length, ends }: BarPart): BarPiece {
  return { name: id, length, count: 1, ...(ends === "mitred" ? { mitre: mitred } : {}) };
}
