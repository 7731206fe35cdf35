/** What the material costs with other ply, laminate, adhesive and edges, the sizes kept as they are. */
import { type BarStock, type FacingStock, type SheetStock, sheetPieces } from "../../design/index.js";
import { type BusinessInput, knownRate, rateRange } from "../../model/index.js";
import { Area, type AreaDensity, addMoney, type Money, money, timesMoney } from "../../quantity/index.js";
import { barNeeds, facingNeeds, kerfRange, sheetNeeds } from "../buying/cut-plans.js";
import { adhesiveLine } from "../buying/purchases.js";
import { doubtsOf } from "./business.js";

/** One choice of what the case is made of. */
export interface MaterialOption {
  /** The name of the ply. */
  readonly sheet: string;
  /** The name of the laminate. */
  readonly facing: string;
  /** The name of the adhesive. */
  readonly adhesive: string;
  /** The name of the extrusion. */
  readonly bar: string;
  /** Sheets, laminate, adhesive and bars. */
  readonly cost: Money;
  /** Lower end of what prices that may be off and the scatter of the builder's own trials leave open. */
  readonly low: Money;
  /** Upper end of the same. */
  readonly high: Money;
  /** Whether the case file asks for this one. */
  readonly chosen: boolean;
}

/** One trade's choice with what it costs. */
interface Choice {
  /** The name of the stock. */
  readonly name: string;
  /** What the trade costs with it, in the case's currency. */
  readonly cost: number;
  /** Cost at the ends of what was measured: kerfs, spread rates. The same as the cost where nothing scatters. */
  readonly measured: { readonly low: number; readonly high: number };
  /** Whether the case file asks for it. */
  readonly chosen: boolean;
}

type Costs = Pick<Choice, "cost" | "measured">;

/** A sheet may take another's place when it is no more than this much thicker or thinner. */
const sameThickness = 0.0005;

/**
 * Every combination of ply about as thick, laminate, adhesive and edge, the cheapest first. Each trade is
 * planned anew; panels keep their sizes, so check stiffness, grips and seats before you change anything.
 *
 * The interval adds two things as squares, trade by trade: prices off by the case's price doubt, each trade by
 * itself, and what the builder's trials leave open: plies and laminates cut with the thinnest and the thickest
 * kerf measured, adhesive at both ends of its measured spread rate.
 */
export function materialOptions(input: BusinessInput): readonly MaterialOption[] {
  const facings = facingChoices(input);
  const glues = adhesiveChoices(input);
  const bars = barChoices(input);
  const combine = combinerOf(input);
  return sheetChoices(input)
    .flatMap((sheet) =>
      facings.flatMap((facing) =>
        glues.flatMap((glue) => bars.map((bar) => combine(sheet, facing, glue, bar))),
      ),
    )
    .sort((a, b) => a.cost.amount - b.cost.amount);
}

function combinerOf({ case: { business, currency } }: BusinessInput) {
  const doubt = doubtsOf(business).prices.share;
  return (sheet: Choice, facing: Choice, glue: Choice, bar: Choice): MaterialOption => {
    const parts = [sheet, facing, glue, bar];
    const cost = parts.reduce((sum, part) => sum + part.cost, 0);
    const off = (end: (choice: Choice) => number): number =>
      Math.hypot(...parts.flatMap((part) => [doubt * part.cost, end(part) - part.cost]));
    return {
      sheet: sheet.name,
      facing: facing.name,
      adhesive: glue.name,
      bar: bar.name,
      cost: money(cost, currency),
      low: money(Math.max(0, cost - off(({ measured }) => measured.low)), currency),
      high: money(cost + off(({ measured }) => measured.high), currency),
      chosen: parts.every(({ chosen }) => chosen),
    };
  };
}

/** The most used of what parts are made of, or nothing where there are none. */
function mostUsed<Stock extends { readonly name: string }>(used: readonly Stock[]): Stock | undefined {
  const counts = new Map<string, number>();
  for (const { name } of used) counts.set(name, (counts.get(name) ?? 0) + 1);
  return [...used].sort((a, b) => (counts.get(b.name) ?? 0) - (counts.get(a.name) ?? 0))[0];
}

/** Costs of a trade with each stock in the place of the most used one; one free choice where the trade is not used. */
function choices<Stock extends { readonly name: string }>(
  main: Stock | undefined,
  offers: readonly Stock[],
  costWith: (stock: Stock) => Costs,
): Choice[] {
  if (!main) return [{ name: "none", cost: 0, measured: { low: 0, high: 0 }, chosen: true }];
  return offers.map((stock) => ({
    name: stock.name,
    ...costWith(stock),
    chosen: stock.name === main.name,
  }));
}

/**
 * The cost as planned, and with the thinnest and the thickest kerf that was measured. A plan for a thick kerf
 * serves a thin one too, so where both ends cost the same, so does what lies between.
 */
function withKerfs(input: BusinessInput, costAt: (cutting: BusinessInput) => number): Costs {
  const ends = kerfRange("sheets", input);
  if (!ends) {
    const cost = costAt(input);
    return { cost, measured: { low: cost, high: cost } };
  }
  const [low, high] = ends.map((one) =>
    costAt({ ...input, measurements: { ...input.measurements, kerfs: [one] } }),
  ) as [number, number];
  return { cost: low === high ? low : costAt(input), measured: { low, high } };
}

function costOf(needs: readonly { readonly plan: { readonly cost: Money } }[], currency: string): number {
  return addMoney(
    needs.map(({ plan }) => plan.cost),
    currency,
  ).amount;
}

function sheetChoices(input: BusinessInput): Choice[] {
  const { parts, stock } = input;
  const main = mostUsed(sheetPieces(input.parts).map(({ sheet }) => sheet));
  const offers = stock.sheets.filter(
    ({ thickness }) => main && Math.abs(thickness - main.thickness) <= sameThickness,
  );
  const made = <Panel extends { readonly sheet: SheetStock }>(panel: Panel, to: SheetStock): Panel =>
    panel.sheet.name === main?.name ? { ...panel, sheet: to } : panel;
  const swap = (to: SheetStock) => ({
    ...parts,
    panels: parts.panels.map((panel) => made(panel, to)),
    shelves: parts.shelves.map((shelf) => ({ ...shelf, panel: made(shelf.panel, to) })),
  });
  return choices(main, offers, (to) =>
    withKerfs({ ...input, parts: swap(to) }, (cutting) => costOf(sheetNeeds(cutting), input.case.currency)),
  );
}

function facingChoices(input: BusinessInput): Choice[] {
  const { parts, stock } = input;
  const main = mostUsed(parts.facings.map((facing) => facing.stock));
  const swap = (to: FacingStock) => ({
    ...parts,
    facings: parts.facings.map((one) => (one.stock.name === main?.name ? { ...one, stock: to } : one)),
  });
  return choices(main, stock.facings, (to) =>
    withKerfs({ ...input, parts: swap(to) }, (cutting) => costOf(facingNeeds(cutting), input.case.currency)),
  );
}

function adhesiveChoices(input: BusinessInput): Choice[] {
  const { facings } = input.parts;
  const main = mostUsed(facings.map(({ adhesive }) => adhesive));
  const area = Area.si(facings.reduce((sum, { gluedArea }) => sum + gluedArea, 0));
  return choices(main, input.stock.adhesives, (glue) => {
    const costAt = (rate?: AreaDensity): number =>
      timesMoney(adhesiveLine(glue, area, input, rate).value.containers, glue.price).amount;
    const ends = rateRange(knownRate(glue, input));
    return { cost: costAt(), measured: { low: costAt(ends?.low), high: costAt(ends?.high) } };
  });
}

function barChoices(input: BusinessInput): Choice[] {
  const { parts, stock } = input;
  const main = mostUsed(parts.bars.map((bar) => bar.stock));
  const swap = (to: BarStock) => ({
    ...parts,
    bars: parts.bars.map((bar) => (bar.stock.name === main?.name ? { ...bar, stock: to } : bar)),
  });
  return choices(main, stock.bars, (to) => {
    const cost = costOf(barNeeds({ ...input, parts: swap(to) }), input.case.currency);
    return { cost, measured: { low: cost, high: cost } };
  });
}
