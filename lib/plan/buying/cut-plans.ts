/** What is cut from each stock of sheets, laminate and bars, with the blade that cuts it. */
import {
  type BarJob,
  type BarPiece,
  type BarPlan,
  barEndTrim,
  type Purchase,
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
  type KerfTest,
  type Leftover,
  type Measurements,
  type PanelPart,
  type PaneStock,
  type SheetStock,
  type StripStock,
  sheetPieces,
} from "../../design/index.js";
import { kerfFromCuts, measuredMean } from "../../measure/index.js";
import type { ReviewInput } from "../../model/index.js";
import { Angle, Length, money } from "../../quantity/index.js";

/** Stock that is cut, with the plan that says how much of it. */
export interface CutNeed<Stock, Plan> {
  /** What is cut. */
  readonly stock: Stock;
  /** The cuts, and how much of it they take. */
  readonly plan: Plan;
}

/** How many of the stock a plan buys; the rest of what it cuts comes from the rack. */
export function boughtOf({
  stock,
  plan,
}: CutNeed<{ readonly name: string }, { readonly purchases: readonly Purchase[] }>): number {
  return plan.purchases.find((purchase) => purchase.stock === stock.name)?.count ?? 0;
}

/** One stock of sheets with all that is cut from it. */
export interface SheetStockJob {
  /** What is cut. */
  readonly stock: SheetStock;
  /** The pieces, the blade and what is at hand. */
  readonly job: SheetJob;
}

/** One stock of bars with all that is cut from it. */
export interface BarStockJob {
  /** What is cut. */
  readonly stock: BarStock;
  /** The pieces, the blade and what is at hand. */
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
      offcuts: leftoversOf(stock.name, input),
      kerf: kerfFor("bars", input).kerf,
      endTrim: barEndTrim,
    },
  }));
}

/** Which extrusion bars to buy and how to cut them. */
export function barNeeds(input: ReviewInput): readonly CutNeed<BarStock, BarPlan>[] {
  return barJobs(input).map(({ stock, job }) => ({ stock, plan: planBars(job) }));
}

/** Which clear sheets to buy and how to cut the panes; they have no grain. */
export function paneNeeds(input: ReviewInput): readonly CutNeed<PaneStock, SheetPlan>[] {
  const { panes } = input.parts;
  return stocksOf(panes, ({ stock }) => stock).map((stock) => ({
    stock,
    plan: planSheets({
      pieces: panes
        .filter((pane) => pane.stock.name === stock.name)
        .map(({ id, width, height }) => ({
          name: id,
          length: width,
          width: height,
          count: 1,
          grain: "free",
        })),
      stock: [...offcutsOf(stock.name, input), stock],
      kerf: kerfFor("sheets", input).kerf,
    }),
  }));
}

/** Which strips of wood to buy and how to cut them. */
export function stripNeeds(input: ReviewInput): readonly CutNeed<StripStock, BarPlan>[] {
  const { strips } = input.parts;
  return stocksOf(strips, ({ stock }) => stock).map((stock) => ({
    stock,
    plan: planBars({
      pieces: strips
        .filter((strip) => strip.stock.name === stock.name)
        .map(({ id, length }) => ({ name: id, length, count: 1 })),
      stock: [stock],
      offcuts: leftoversOf(stock.name, input),
      kerf: kerfFor("bars", input).kerf,
      endTrim: barEndTrim,
    }),
  }));
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

/** A blade's cut, and whether it was measured. */
export interface KnownKerf {
  /** Width of the cut. */
  readonly kerf: Length;
  /** Where the width comes from. */
  readonly from: "measured" | "common practice";
}

/** Common practice, no source: an eighth of an inch, for a blade nobody measured. */
const usualKerf = Length.of(1 / 8, "in");

/** Common practice, no source: one fastener in ten bought beyond the count. */
export const spareShare = 0.1;

/** Common practice, no source: a further pack is bought only where less than one in twenty would be left over. */
export const leastSpareShare = 0.05;

/** Kerf of the blade for sheets or for bars: the mean of the builder's trials, or the usual one. */
export function kerfFor(use: "sheets" | "bars", { measurements }: ReviewInput): KnownKerf {
  const trials = trialsFor(use, measurements).map(kerfFromCuts);
  const [first, ...others] = trials;
  if (first === undefined) return { kerf: usualKerf, from: "common practice" };
  return { kerf: others.length === 0 ? first : measuredMean(trials).mean, from: "measured" };
}

/** The trials with the thinnest and the thickest kerf; nothing where fewer than two were made. */
export function kerfRange(
  use: "sheets" | "bars",
  { measurements }: ReviewInput,
): readonly [KerfTest, KerfTest] | undefined {
  const trials = [...trialsFor(use, measurements)].sort((a, b) => kerfFromCuts(a) - kerfFromCuts(b));
  const [thinnest, thickest] = [trials[0], trials.at(-1)];
  return trials.length > 1 && thinnest && thickest ? [thinnest, thickest] : undefined;
}

function trialsFor(use: "sheets" | "bars", { kerfs }: Measurements): readonly KerfTest[] {
  return kerfs.filter((row) => row.use === use || row.use === "both");
}
