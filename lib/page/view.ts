/**
 * What can be shown, as plain data: no functions, so that it travels as JSON from a notebook's kernel to
 * the book and is drawn there anew.
 */
import type { Verdict } from "../findings/index.js";
import type { DrawingView } from "./drawing.js";

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
  | MarkdownView;

/** One sentence. */
export interface SentenceView {
  readonly kind: "sentence";
  readonly text: string;
}

/** The sentence a notebook ends in. */
export interface AnswerView {
  readonly kind: "answer";
  readonly text: string;
  /** Absent where the answer is a quantity rather than a judgement. */
  readonly verdict?: Verdict;
}

/** How a column's cells are set. */
export type Alignment = "left" | "right" | "center";

/** One column of a table. */
export interface TableColumn {
  readonly heading: string;
  readonly align: Alignment;
}

/** Rows of text. */
export interface TableView {
  readonly kind: "table";
  readonly caption?: string;
  readonly columns: readonly TableColumn[];
  /** One text a column. */
  readonly rows: readonly (readonly string[])[];
}

/** Points, or numbered steps. */
export interface ListView {
  readonly kind: "list";
  readonly title?: string;
  readonly ordered: boolean;
  readonly items: readonly string[];
}

/** What to mind before starting. */
export interface CautionsView {
  readonly kind: "cautions";
  readonly items: readonly string[];
}

/** One symbol of an equation with its value as text. */
export interface SymbolView {
  /** TeX. */
  readonly symbol: string;
  readonly meaning: string;
  readonly value: string;
}

/** A formula with its numbers. */
export interface WorkedView {
  readonly kind: "worked";
  /** The formula's id. */
  readonly id: string;
  readonly title: string;
  /** TeX. */
  readonly equation: string;
  /** TeX with the numbers put in, one a line; none where the equation is of a kind that takes no numbers. */
  readonly substituted: readonly string[];
  readonly inputs: readonly SymbolView[];
  readonly results: readonly SymbolView[];
  /** Citations as a reader sees them. */
  readonly source: readonly string[];
  readonly validity: string;
  readonly warnings: readonly string[];
}

/** A value under a name. */
export interface AmountView {
  readonly meaning: string;
  readonly value: string;
}

/** One question about the case, answered with its working. */
export interface FindingView {
  readonly kind: "finding";
  readonly id: string;
  readonly topic: string;
  readonly subject: string;
  readonly question: string;
  readonly verdict: Verdict;
  readonly answer: string;
  readonly demand?: AmountView;
  readonly capacity?: AmountView;
  /** demand / capacity */
  readonly ratio?: number;
  readonly interval?: {
    readonly low: number;
    readonly high: number;
    readonly shares: readonly { readonly input: string; readonly share: number }[];
  };
  readonly because: readonly WorkedView[];
  readonly cautions: readonly string[];
  readonly source: readonly string[];
  readonly missing?: { readonly measure: string; readonly how: string };
}

/** A value that JSON can carry. */
export type Json = string | number | boolean | null | readonly Json[] | { readonly [field: string]: Json };

/** A chart's specification in Vega-Lite, as plain JSON. */
export type ChartSpec = { readonly [field: string]: Json };

/** A chart. */
export interface ChartView {
  readonly kind: "chart";
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
  readonly kind: "markdown";
  readonly text: string;
}
