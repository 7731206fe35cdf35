/** Short makers of the blocks that only a recipe has, and of plain sentences. */
import { type Column, type SentenceView, tableOf } from "../page/index.js";
import type { BlanksBlock, GroupBlock, RecipeBlock, RecipeSection } from "./recipe.js";

/** A section that starts a new sheet of paper. */
export function section(title: string, ...blocks: readonly RecipeBlock[]): RecipeSection {
  return { title, newPage: true, blocks };
}

/** A section that follows on the same sheet. */
export function flowingSection(title: string, ...blocks: readonly RecipeBlock[]): RecipeSection {
  return { title, newPage: false, blocks };
}

/** Blocks under one heading, kept on one page where they fit. */
export function group(title: string, ...blocks: readonly RecipeBlock[]): GroupBlock {
  return { kind: "group", title, blocks };
}

/** A plain paragraph. */
export function sentence(text: string): SentenceView {
  return { kind: "sentence", text };
}

/** A table with printed columns, one line a row, and empty columns for figures. */
export function blanks<Row>(
  rows: readonly Row[],
  columns: readonly Column<Row>[],
  toFill: readonly string[],
): BlanksBlock {
  const { kind: _, ...table } = tableOf(rows, columns);
  return { kind: "blanks", ...table, blanks: toFill, room: "figure" };
}

/** The same with empty columns for a few words each. */
export function notes<Row>(
  rows: readonly Row[],
  columns: readonly Column<Row>[],
  toFill: readonly string[],
): BlanksBlock {
  return { ...blanks(rows, columns, toFill), room: "words" };
}

/** The block where there is something to say, nothing where there is not. */
export function when<Block>(there: boolean, block: () => Block): Block[] {
  return there ? [block()] : [];
}
