/** What a recipe is written from, made ready for writing: codes and numbers are given once, so that every section uses the same. */
import type { CutBar, CutSheet } from "../cutting/index.js";
import type { Case, Parts } from "../design/index.js";
import type { Finding } from "../findings/index.js";
import type { MassItem } from "../model/index.js";
import type { Bill, PurchaseList, WorkTime } from "../plan/index.js";
import { type CodedPieces, codePieces, type NumberedStock, numberStock } from "./pieces.js";
import { type Rule, ruleOf } from "./rule.js";

/** What every section of the recipe is written from. */
export interface Workshop extends RecipeInput {
  /** How lengths and masses are written. */
  readonly rule: Rule;
  /** Every piece that is cut, under its code. */
  readonly pieces: CodedPieces;
  /** The sheets of the cut plans, numbered. */
  readonly sheets: readonly NumberedStock<CutSheet>[];
  /** The sheets of laminate of the cut plans, numbered. */
  readonly laminates: readonly NumberedStock<CutSheet>[];
  /** The bars of the cut plans, numbered. */
  readonly bars: readonly NumberedStock<CutBar>[];
  /** The clear sheets of the cut plans, numbered. */
  readonly panes: readonly NumberedStock<CutSheet>[];
  /** The strips of the cut plans, numbered. */
  readonly strips: readonly NumberedStock<CutBar>[];
}

/** Gives pieces their codes and sheets and bars their numbers. */
export function openWorkshop(input: RecipeInput): Workshop {
  const { sheets, facings, bars, strips, panes } = input.purchases;
  return {
    ...input,
    rule: ruleOf(input.case.units),
    pieces: codePieces(input.parts),
    sheets: numberStock(
      "Sheet",
      sheets.flatMap(({ plan }) => plan.sheets),
    ),
    laminates: numberStock(
      "Laminate",
      facings.flatMap(({ plan }) => plan.sheets),
    ),
    bars: numberStock(
      "Bar",
      bars.flatMap(({ plan }) => plan.bars),
    ),
    panes: numberStock(
      "Clear sheet",
      panes.flatMap(({ plan }) => plan.sheets),
    ),
    strips: numberStock(
      "Strip",
      strips.flatMap(({ plan }) => plan.bars),
    ),
  };
}

/** Everything a recipe is written from. */
export interface RecipeInput {
  /** The case as it is described. */
  readonly case: Case;
  /** The parts that the case is made of. */
  readonly parts: Parts;
  /** What is bought, and how the sheets and bars are cut up. */
  readonly purchases: PurchaseList;
  /** The cost of all purchases, with price breaks, shipping and tax. */
  readonly bill: Bill;
  /** Every question of the review, with its verdict. */
  readonly findings: readonly Finding[];
  /** What each thing weighs; masses are left to be weighed where absent. */
  readonly masses?: readonly MassItem[];
  /** Bench time by kind of work; the time sheet plans only the whole where absent. */
  readonly times?: readonly WorkTime[];
}
