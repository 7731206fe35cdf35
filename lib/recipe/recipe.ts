/** The written recipe as a document: numbered sections of blocks, for paper, for Markdown and for a notebook. */
import type { AsBuiltMeasure } from "../design/index.js";
import { type Column, type PlainView, type SentenceView, type TableColumn, tableOf } from "../page/index.js";
import type { PartLabel } from "./labels.js";

/** The type under which a notebook hands its recipe to the book, whole, to be printed. */
export const recipeMime = "application/vnd.casewright.recipe+json";

/** One recipe, whole. */
export interface Recipe {
  /** Name of the case. */
  readonly title: string;
  /** True for a made-up scenario; every form of the recipe says so. */
  readonly invented: boolean;
  /** Whether it may be built, at the foot of every page: "NOT RELEASED: 3 questions of safety or strength are open". */
  readonly stamp: string;
  /** In the order of the work. */
  readonly sections: readonly RecipeSection[];
  /** A table of every line that is filled in with a figure, as CSV: filled in and saved beside the case, it is read. */
  readonly asBuilt: string;
  /** A label for every piece. */
  readonly labels: readonly PartLabel[];
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
export type RecipeBlock = PlainView | BlanksBlock | ChecklistBlock | GroupBlock;

/** Short things to tick off, in two columns. */
export interface ChecklistBlock {
  /** The kind of block. */
  readonly kind: "checklist";
  /** The words above them. */
  readonly title: string;
  /** In their order. */
  readonly items: readonly string[];
}

/** What a blank becomes in as-built.csv. */
export interface AsBuiltKey {
  /** What is measured. */
  readonly what: AsBuiltMeasure;
  /** What it is measured of. */
  readonly of: string;
  /** Where, of what is measured in several places. */
  readonly at?: string;
  /** Pieces of a work that is timed. */
  readonly pieces?: number;
}

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
  /** What the blanks of each row become in as-built.csv; absent where they are words. */
  readonly records?: readonly (readonly AsBuiltKey[])[];
}

/** Blocks that belong on one page under one heading, such as a panel's drawing and its holes. */
export interface GroupBlock {
  /** The kind of block. */
  readonly kind: "group";
  /** The heading of the group. */
  readonly title: string;
  /** What stands under the heading, in order. */
  readonly blocks: readonly RecipeBlock[];
  /** Whether it starts a new sheet of paper. */
  readonly newPage?: boolean;
  /** Whether its picture stands beside its words. */
  readonly pictureBeside?: boolean;
  /** The step beside it after which it is done, counted from 1; after all of them where absent. */
  readonly afterStep?: number;
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

/** The same on a sheet of its own. */
export function page(title: string, ...blocks: readonly RecipeBlock[]): GroupBlock {
  return { ...group(title, ...blocks), newPage: true };
}

/** Short things to tick off. */
export function checklist(title: string, items: readonly string[]): ChecklistBlock {
  return { kind: "checklist", title, items };
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
  recordsOf?: (row: Row) => readonly AsBuiltKey[],
): BlanksBlock {
  const { kind: _, ...table } = tableOf(rows, columns);
  const records = recordsOf && { records: rows.map(recordsOf) };
  return { kind: "blanks", ...table, blanks: toFill, room: "figure", ...records };
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
