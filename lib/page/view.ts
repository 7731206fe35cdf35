/** What can be shown, as plain data without functions, so that it travels as JSON from a notebook's kernel to
 * the book and is drawn there anew; and short makers of the views that no other room returns. */
import { type Tier, type Verdict, worstVerdict } from "../findings/index.js";
import type { DrawingView } from "./drawing.js";
import type { PictureView } from "./picture/index.js";

/** The type under which a notebook hands views to the book. */
export const viewMime = "application/vnd.casewright.view+json";

/** Anything that can be shown. */
export type View =
  | SentenceView
  | AnswerView
  | TableView
  | ListView
  | CautionsView
  | WorkedView
  | FindingView
  | ChartView
  | DrawingView
  | PictureView
  | MarkdownView;

const viewKinds: Readonly<Record<View["kind"], true>> = {
  sentence: true,
  answer: true,
  table: true,
  list: true,
  cautions: true,
  worked: true,
  finding: true,
  chart: true,
  drawing: true,
  picture: true,
  markdown: true,
};

/** Whether something is a view. */
export function isView(thing: object): thing is View {
  return "kind" in thing && typeof thing.kind === "string" && thing.kind in viewKinds;
}

/** One sentence. */
export interface SentenceView {
  /** The kind of view. */
  readonly kind: "sentence";
  /** The sentence as a reader sees it. */
  readonly text: string;
}

/** The sentence a notebook ends in. */
export interface AnswerView {
  /** The kind of view. */
  readonly kind: "answer";
  /** The answer in a sentence. */
  readonly text: string;
  /** Absent where the answer is a quantity rather than a judgement. */
  readonly verdict?: Verdict;
}

/** How a column's cells are set. */
export type Alignment = "left" | "right" | "center";

/** One column of a table. */
export interface TableColumn {
  /** The words above the column. */
  readonly heading: string;
  /** The side on which the cells stand. */
  readonly align: Alignment;
}

/** Rows of text. */
export interface TableView {
  /** The kind of view. */
  readonly kind: "table";
  /** The words above the whole table. */
  readonly caption?: string;
  /** The columns from left to right. */
  readonly columns: readonly TableColumn[];
  /** One text a column. */
  readonly rows: readonly (readonly string[])[];
  /** Whether the rows are folded under the caption, to be opened by who wants them. */
  readonly isFolded?: true;
}

/** Points, or numbered steps. */
export interface ListView {
  /** The kind of view. */
  readonly kind: "list";
  /** The words above the points. */
  readonly title?: string;
  /** Whether the points are numbered. */
  readonly ordered: boolean;
  /** The points in their order. */
  readonly items: readonly string[];
}

/** What to mind before starting. */
export interface CautionsView {
  /** The kind of view. */
  readonly kind: "cautions";
  /** The warnings, one a sentence or two. */
  readonly items: readonly string[];
}

/** One symbol of an equation with its value as text. */
export interface SymbolView {
  /** TeX. */
  readonly symbol: string;
  /** What the symbol stands for. */
  readonly meaning: string;
  /** The value with its unit. */
  readonly value: string;
}

/** A formula with its numbers. */
export interface WorkedView {
  /** The kind of view. */
  readonly kind: "worked";
  /** The formula's id. */
  readonly id: string;
  /** The formula's name as a reader sees it. */
  readonly title: string;
  /** TeX. */
  readonly equation: string;
  /** TeX with the numbers put in, one a line; none where the equation is of a kind that takes no numbers. */
  readonly substituted: readonly string[];
  /** The symbols that go in. */
  readonly inputs: readonly SymbolView[];
  /** The symbols that come out. */
  readonly results: readonly SymbolView[];
  /** Citations as a reader sees them. */
  readonly source: readonly string[];
  /** The conditions under which the formula holds. */
  readonly validity: string;
  /** What to mind with these numbers. */
  readonly warnings: readonly string[];
}

/** A value under a name. */
export interface AmountView {
  /** What the value is of. */
  readonly meaning: string;
  /** The value with its unit. */
  readonly value: string;
}

/** One question about the case, answered with its working. */
export interface FindingView {
  /** The kind of view. */
  readonly kind: "finding";
  /** Dotted path, unique in a review. */
  readonly id: string;
  /** The id of its question, without the subject's. */
  readonly asks: string;
  /** The trade that asks. */
  readonly topic: string;
  /** The part it is about. */
  readonly subject: string;
  /** As a builder would ask it. */
  readonly question: string;
  /** What is at stake: safety, strength, handling or feel. */
  readonly tier: Tier;
  /** What the answer comes to. */
  readonly verdict: Verdict;
  /** The answer in sentences. */
  readonly answer: string;
  /** What is asked for. */
  readonly demand?: AmountView;
  /** What is there or allowed. */
  readonly capacity?: AmountView;
  /** Demand over capacity. */
  readonly ratio?: number;
  /** The range that the builder's own scatter gives the ratio. */
  readonly interval?: {
    /** The lower end of the ratio. */
    readonly low: number;
    /** The upper end of the ratio. */
    readonly high: number;
    /** Share of each measured input in the scatter; they sum to 1. */
    readonly shares: readonly {
      /** The measured input's name. */
      readonly input: string;
      /** Its part of the scatter, from 0 to 1. */
      readonly share: number;
    }[];
  };
  /** The worked lines behind it. */
  readonly because: readonly WorkedView[];
  /** What somebody must be told who may be hurt. */
  readonly cautions: readonly string[];
  /** What the answer takes for granted. */
  readonly assumes: readonly string[];
  /** What would help, each with what it gave when it was tried. */
  readonly remedies: readonly {
    /** What to change, in words. */
    readonly words: string;
    /** What came out when it was tried. */
    readonly gives: readonly AmountView[];
  }[];
  /** Where limit and working come from. */
  readonly source: readonly string[];
  /** What an unknown answer waits for. */
  readonly missing?: {
    /** What to measure. */
    readonly measure: string;
    /** How to measure it, and where to write it. */
    readonly how: string;
    /** Whether nothing is to be measured but something changed. */
    readonly isChange?: true;
  };
  /** What went wrong inside this program, of a broken answer. */
  readonly error?: string;
  /** What it is about, drawn with what acts on it. */
  readonly drawing?: DrawingView;
}

/** A value that JSON can carry. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [field: string]: Json };

/** A chart's specification in Vega-Lite, as plain JSON. */
export type ChartSpec = { readonly [field: string]: Json };

/** A chart. */
export interface ChartView {
  /** The kind of view. */
  readonly kind: "chart";
  /** The words above the chart. */
  readonly title: string;
  /** What the chart shows, for a reader who cannot see it. */
  readonly description: string;
  /** Without a title, which the page sets as text that can wrap. */
  readonly spec: ChartSpec;
  /** The same chart as a still picture (SVG), for print and for pages whose scripts do not run. */
  readonly still?: string;
}

/** Text with markup, as in a notebook's own prose. */
export interface MarkdownView {
  /** The kind of view. */
  readonly kind: "markdown";
  /** The text with its Markdown marks. */
  readonly text: string;
}

/** A view without markup, as the library makes all of its own. */
export type PlainView = Exclude<View, MarkdownView>;

/**
 * The sentence a notebook ends in, with its verdict where it is a judgement.
 *
 * @param judged a verdict, or findings whose worst one it is
 */
export function answer(
  text: string,
  judged?: Verdict | readonly { readonly verdict: Verdict }[],
): AnswerView {
  const verdict = typeof judged === "object" ? worstVerdict(judged.map((one) => one.verdict)) : judged;
  return { kind: "answer", text, ...(verdict ? { verdict } : {}) };
}

/** Points under a title. */
export function list(items: readonly string[], title?: string): ListView {
  return { kind: "list", ordered: false, items, ...(title === undefined ? {} : { title }) };
}

/** Numbered steps under a title. */
export function steps(items: readonly string[], title?: string): ListView {
  return { ...list(items, title), ordered: true };
}

/** What to mind before starting. */
export function cautions(...items: readonly string[]): CautionsView {
  return { kind: "cautions", items };
}

/** Text with Markdown marks. */
export function markdown(text: string): MarkdownView {
  return { kind: "markdown", text };
}

/** A chart from a Vega-Lite specification of one's own. */
export function chart(title: string, description: string, spec: ChartSpec): ChartView {
  return { kind: "chart", title, description, spec };
}

/** One column of a table: what stands above it and how a row fills it. */
export interface Column<Row> {
  /** The words above the column. */
  readonly heading: string;
  /** Makes the cell of a row. */
  readonly cell: (row: Row) => string | number;
  /** Default: right where every cell is a number or starts with one, else left. */
  readonly align?: Alignment;
}

/**
 * A table with one line a row.
 *
 * @example
 * const sheets = [{ name: "ply", mass: kg(12) }];
 * tableOf(sheets, [{ heading: "Sheet", cell: (s) => s.name }, { heading: "Mass", cell: (s) => Mass.show(s.mass) }])
 */
export function tableOf<Row>(
  rows: readonly Row[],
  columns: readonly Column<Row>[],
  caption?: string,
): TableView {
  const cells = rows.map((row) => columns.map(({ cell }) => String(cell(row))));
  return {
    kind: "table",
    ...(caption === undefined ? {} : { caption }),
    columns: columns.map(({ heading, align }, i) => ({
      heading,
      align: align ?? (cells.length > 0 && cells.every((row) => isFigure(row[i] ?? "")) ? "right" : "left"),
    })),
    rows: cells,
  };
}

/** A table whose rows are folded under its caption: for what few readers of a page want. */
export function folded(table: TableView): TableView {
  return { ...table, isFolded: true };
}

/** Starts with a number, or is left blank or dashed among numbers. */
function isFigure(text: string): boolean {
  return /^[-+−±]?[\d.]|^[-–]?$/.test(text);
}
