/** The written recipe as a document: numbered sections of blocks, for paper, for Markdown and for a notebook. */
import { type Column, type SentenceView, type TableColumn, tableOf, type View } from "../page/index.js";

/** The type under which a notebook hands its recipe to the book, whole, to be printed. */
export const recipeMime = "application/vnd.casewright.recipe+json";

/** One recipe, whole. */
export interface Recipe {
  /** Name of the case. */
  readonly title: string;
  /** True for a made-up scenario; every form of the recipe says so. */
  readonly invented: boolean;
  /** In the order of the work. */
  readonly sections: readonly RecipeSection[];
}

/** One stretch of the work. */
export interface RecipeSection {
  /** The heading, without its number. */
  readonly title: string;
  /** Whether it starts a new sheet of paper, to be carried to the bench or the shop by itself. */
  readonly newPage: boolean;
  /** What stands under the heading, in order. */
  readonly blocks: readonly RecipeBlock[];
}

/** What a section is made of. */
export type RecipeBlock = View | BlanksBlock | GroupBlock;

/** A table with columns left empty, to be filled in with a pencil. */
export interface BlanksBlock {
  /** The kind of block. */
  readonly kind: "blanks";
  /** The printed columns from left to right. */
  readonly columns: readonly TableColumn[];
  /** One text a printed column. */
  readonly rows: readonly (readonly string[])[];
  /** Headings of the empty columns, right of the printed ones. */
  readonly blanks: readonly string[];
  /** How much room an empty cell gives: for a figure, or for a few words. */
  readonly room: "figure" | "words";
}

/** Blocks that belong on one page under one heading, such as a panel's drawing and its holes. */
export interface GroupBlock {
  /** The kind of block. */
  readonly kind: "group";
  /** The heading of the group. */
  readonly title: string;
  /** What stands under the heading, in order. */
  readonly blocks: readonly RecipeBlock[];
}

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
