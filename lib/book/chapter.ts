/** What a book takes from an executed notebook: its question, its answer, its findings, its cells. */
import { type FindingView, type View, viewMime } from "../page/index.js";
import type { Notebook, Output } from "./notebook.js";

/** An executed notebook under the name of its page. */
export interface BookNotebook {
  /** File name without its ending: "02-stiffness". */
  readonly name: string;
  /** With its outputs. */
  readonly notebook: Notebook;
}

/** One page of the book. */
export interface Chapter {
  /** File name of its page without the ending. */
  readonly name: string;
  /** First heading of the notebook's prose. */
  readonly title: string;
  /** The paragraph that follows it. */
  readonly question: string | undefined;
  /** The last answer shown. */
  readonly answer: Extract<View, { kind: "answer" }> | undefined;
  /** Every finding shown, in order. */
  readonly findings: readonly FindingView[];
  /** With its outputs. */
  readonly notebook: Notebook;
}

/** Reads a chapter out of a notebook. */
export function chapterOf({ name, notebook }: BookNotebook): Chapter {
  const prose = notebook.cells.find(({ cell_type }) => cell_type === "markdown")?.source ?? "";
  const views = notebook.cells.flatMap((cell) =>
    cell.cell_type === "code" ? cell.outputs.flatMap((output) => viewsOf(output) ?? []) : [],
  );
  return {
    name,
    title: headingOf(prose) ?? name,
    question: paragraphOf(prose),
    answer: views.filter((view) => view.kind === "answer").at(-1),
    findings: views.filter((view) => view.kind === "finding"),
    notebook,
  };
}

/** The views of an output; undefined where it is of another kind. */
export function viewsOf(output: Output): readonly View[] | undefined {
  const data = "data" in output ? output.data[viewMime] : undefined;
  return Array.isArray(data) ? (data as readonly View[]) : undefined;
}

function headingOf(prose: string): string | undefined {
  return /^#+\s+(.+?)\s*#*\s*$/m.exec(prose)?.[1];
}

/** The first paragraph that is neither heading nor list, or what of it is set bold at its start. */
function paragraphOf(prose: string): string | undefined {
  const paragraph = prose
    .replace(/^#.*$/gm, "")
    .split(/\n\s*\n/)
    .find((block) => !/^\s*(>|\||[-*+]\s|\d+\.\s)/.test(block) && block.trim() !== "");
  const text = /^\s*\*\*([^*]+)\*\*/.exec(paragraph ?? "")?.[1] ?? paragraph;
  return text?.replace(/[*_`]/g, "").replace(/\s+/g, " ").trim();
}
