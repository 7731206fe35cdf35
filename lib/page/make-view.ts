/** Short makers of the views that no other room returns. */
import type { Verdict } from "../findings/index.js";
import type { AnswerView, CautionsView, ChartSpec, ChartView, ListView, MarkdownView } from "./view.js";

/** The sentence a notebook ends in, with its verdict where it is a judgement. */
export function answer(text: string, verdict?: Verdict): AnswerView {
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
