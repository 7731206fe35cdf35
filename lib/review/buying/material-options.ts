/** What the material costs with other ply, laminate, adhesive and edges, the sizes kept as they are. */
import {
  type Adhesive,
  type BarStock,
  type FacingStock,
  type SheetStock,
  sheetPieces,
} from "../../design/index.js";
import { Area, addMoney, type Money, money, type Ratio, timesMoney } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { adhesiveLine } from "./adhesive-needs.js";
import { barNeeds, facingNeeds, sheetNeeds } from "./cut-plans.js";

/** One choice of what the case is made of. */
export interface MaterialOption {
  readonly sheet: string;
  readonly facing: string;
  readonly adhesive: string;
  readonly bar: string;
  /** Sheets, laminate, adhesive and bars. */
  readonly cost: Money;
  /** If prices are off by the doubt, each by itself. */
  readonly low: Money;
  readonly high: Money;
  /** Whether the case file asks for this one. */
  readonly chosen: boolean;
}

/** One trade's choice with what it costs. */
interface Choice {
  readonly name: string;
  readonly cost: number;
  readonly chosen: boolean;
}

/** A sheet may take another's place when it is no more than this much thicker or thinner. */
const sameThickness = 0.0005;

/**
 * Every combination of ply about as thick, laminate, adhesive and edge, the cheapest first. Each trade is
 * planned anew; panels keep their sizes, so check stiffness, grips and seats before you change anything.
 *
 * @param doubt how far a price may be off, as a share
 */
export function materialOptions(input: ReviewInput, doubt: Ratio): readonly MaterialOption[] {
  const facings = facingChoices(input);
  const glues = adhesiveChoices(input);
  const bars = barChoices(input);
  return sheetChoices(input)
    .flatMap((sheet) =>
      facings.flatMap((facing) =>
        glues.flatMap((glue) =>
          bars.map((bar) => optionOf(sheet, facing, glue, bar, doubt, input.case.currency)),
        ),
      ),
    )
    .sort((a, b) => a.cost.amount - b.cost.amount);
}

function optionOf(
  sheet: Choice,
  facing: Choice,
  glue: Choice,
  bar: Choice,
  doubt: number,
  currency: string,
): MaterialOption {
  const parts = [sheet, facing, glue, bar];
  const cost = parts.reduce((sum, part) => sum + part.cost, 0);
  const off = doubt * Math.hypot(...parts.map((part) => part.cost));
  return {
    sheet: sheet.name,
    facing: facing.name,
    adhesive: glue.name,
    bar: bar.name,
    cost: money(cost, currency),
    low: money(cost - off, currency),
    high: money(cost + off, currency),
    chosen: parts.every(({ chosen }) => chosen),
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
  costWith: (stock: Stock) => number,
): Choice[] {
  if (!main) return [{ name: "none", cost: 0, chosen: true }];
  return offers.map((stock) => ({
    name: stock.name,
    cost: costWith(stock),
    chosen: stock.name === main.name,
  }));
}

function costOf(needs: readonly { readonly plan: { readonly cost: Money } }[], currency: string): number {
  return addMoney(
    needs.map(({ plan }) => plan.cost),
    currency,
  ).amount;
}

function sheetChoices(input: ReviewInput): Choice[] {
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
    costOf(sheetNeeds({ ...input, parts: swap(to) }), input.case.currency),
  );
}

function facingChoices(input: ReviewInput): Choice[] {
  const { parts, stock } = input;
  const main = mostUsed(parts.facings.map((facing) => facing.stock));
  const swap = (to: FacingStock) => ({
    ...parts,
    facings: parts.facings.map((one) => (one.stock.name === main?.name ? { ...one, stock: to } : one)),
  });
  return choices(main, stock.facings, (to) =>
    costOf(facingNeeds({ ...input, parts: swap(to) }), input.case.currency),
  );
}

function adhesiveChoices(input: ReviewInput): Choice[] {
  const { facings } = input.parts;
  const main = mostUsed(facings.map(({ adhesive }) => adhesive));
  const area = Area.si(facings.reduce((sum, { gluedArea }) => sum + gluedArea, 0));
  const costWith = (glue: Adhesive): number => {
    const { containers } = adhesiveLine(glue, area, input).value;
    return timesMoney(containers, glue.price).amount;
  };
  return choices(main, input.stock.adhesives, costWith);
}

function barChoices(input: ReviewInput): Choice[] {
  const { parts, stock } = input;
  const main = mostUsed(parts.bars.map((bar) => bar.stock));
  const swap = (to: BarStock) => ({
    ...parts,
    bars: parts.bars.map((bar) => (bar.stock.name === main?.name ? { ...bar, stock: to } : bar)),
  });
  return choices(main, stock.bars, (to) =>
    costOf(barNeeds({ ...input, parts: swap(to) }), input.case.currency),
  );
}
