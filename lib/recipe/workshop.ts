/** The input made ready for writing: codes and numbers given once, so that every section uses the same. */
import type { CutBar, CutSheet } from "../cutting/index.js";
import { type CodedPieces, codePieces, type NumberedStock, numberStock } from "./pieces.js";
import type { RecipeInput } from "./recipe-input.js";
import { type Rule, ruleOf } from "./rule.js";

/** What every section of the recipe is written from. */
export interface Workshop extends RecipeInput {
  readonly rule: Rule;
  readonly pieces: CodedPieces;
  readonly sheets: readonly NumberedStock<CutSheet>[];
  readonly laminates: readonly NumberedStock<CutSheet>[];
  readonly bars: readonly NumberedStock<CutBar>[];
}

/** Gives pieces their codes and sheets and bars their numbers. */
export function openWorkshop(input: RecipeInput): Workshop {
  const { sheets, facings, bars } = input.purchases;
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
  };
}
