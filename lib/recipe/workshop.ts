/** What a recipe is written from, made ready for writing: codes and numbers are given once, so that every section uses the same. */
import type { CutBar, CutSheet } from "../cutting/index.js";
import type { Case, Parts, Stock } from "../design/index.js";
import type { Finding } from "../findings/index.js";
import { type CaseSolids, closingParts, type MassItem, type Substitution } from "../model/index.js";
import type { Bill, CaseOrder, PurchaseList, WorkTime } from "../plan/index.js";
import { type CodedPieces, codePieces, type NumberedStock, numberStock } from "./pieces.js";
import { type Rule, ruleOf } from "./rule.js";

/** What every section of the recipe is written from. */
export interface Workshop extends RecipeInput, Workpieces {
  /** Groups that are set with another rivet than the case names, since that one does not close them. */
  readonly substituted: readonly Substitution[];
}

/** Everything that is cut, under its code, and what it is cut from. */
export interface Workpieces extends Pick<RecipeInput, "case" | "parts" | "purchases"> {
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

/** What a recipe is written from, with everything that is cut. */
export function openWorkshop(input: RecipeInput): Workshop {
  const { parts, substituted } = closingParts(input.parts, input.stock ?? { fasteners: [] });
  const closing = { ...input, parts };
  return { ...closing, ...workpiecesOf(closing), substituted };
}

/** Gives pieces their codes and sheets and bars their numbers. */
export function workpiecesOf({
  case: described,
  parts,
  purchases,
}: Pick<RecipeInput, "case" | "parts" | "purchases">): Workpieces {
  const { sheets, facings, bars, strips, panes } = purchases;
  return {
    case: described,
    parts,
    purchases,
    rule: ruleOf(described.units),
    pieces: codePieces(parts),
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
  /** What is sold, to find a rivet where one does not close its stack; none is looked for where absent. */
  readonly stock?: Pick<Stock, "fasteners">;
  /** What is bought, and how the sheets and bars are cut up. */
  readonly purchases: PurchaseList;
  /** The cost of all purchases, with price breaks, shipping and tax. */
  readonly bill: Bill;
  /** Every question of the review, with its verdict. */
  readonly findings: readonly Finding[];
  /** What each thing weighs; masses are left to be weighed where absent. */
  readonly masses?: readonly MassItem[];
  /** Where every part stands; there are no pictures where absent. */
  readonly solids?: CaseSolids;
  /** The order in which it goes together; usual stages where absent, or where there is none. */
  readonly order?: CaseOrder;
  /** Bench time by kind of work; the time sheet plans only the whole where absent. */
  readonly times?: readonly WorkTime[];
}
