/** What a book takes from an executed notebook: its question, its answer, its findings, its cells. */
import { type FindingView, type Html, html, type View, viewHtml, viewMime } from "../page/index.js";
import { errorOf, errorText, isFailure } from "./failed-cells.js";
import type { CodeCell, Notebook, Output } from "./notebook.js";

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
  /** What failed, in words, in the order of the cells. */
  readonly faults: readonly string[];
  /** With its outputs. */
  readonly notebook: Notebook;
}

/** Reads a chapter out of a notebook. */
export function chapterOf({ name, notebook }: BookNotebook): Chapter {
  const prose = notebook.cells.find(({ cell_type }) => cell_type === "markdown")?.source ?? "";
  const code = notebook.cells.filter((cell) => cell.cell_type === "code");
  const views = code
    .flatMap(({ outputs }) => outputs.flatMap((output) => drawnViews(output) ?? []))
    .flatMap((drawn) => ("view" in drawn ? drawn.view : []));
  return {
    name,
    title: headingOf(prose) ?? name,
    question: paragraphOf(prose),
    answer: views.filter((view) => view.kind === "answer").at(-1),
    findings: views.filter((view) => view.kind === "finding"),
    faults: code.flatMap(faultsOf),
    notebook,
  };
}

/** A view as it stands on the page, or why it cannot be drawn. */
type Drawn = { readonly view: View; readonly html: Html } | { readonly fault: string };

const drawnBefore = new WeakMap<Output, readonly Drawn[]>();

/**
 * The views of an output, each drawn; undefined where it is of another kind. A view that was damaged on its way
 * costs the reader nothing but itself.
 */
export function drawnViews(output: Output): readonly Drawn[] | undefined {
  const data = "data" in output ? output.data[viewMime] : undefined;
  if (!Array.isArray(data)) return undefined;
  const drawn = drawnBefore.get(output) ?? (data as readonly View[]).map(drawnView);
  drawnBefore.set(output, drawn);
  return drawn;
}

function drawnView(view: View): Drawn {
  try {
    return { view, html: html`${viewHtml(view)}` };
  } catch (error) {
    return { fault: `this output cannot be drawn: ${(error as Error).message}` };
  }
}

function faultsOf(cell: CodeCell): string[] {
  const error = errorOf(cell.outputs);
  return [...undrawnOf(cell), ...(error && isFailure(error) ? [errorText(error)] : [])];
}

function undrawnOf({ outputs }: CodeCell): string[] {
  const drawn = outputs.flatMap((output) => drawnViews(output) ?? []);
  return drawn.flatMap((one) => ("fault" in one ? one.fault : []));
}

/** What cells of a notebook gave that no page can draw, and why. */
export function undrawnIn({ notebook }: BookNotebook): readonly string[] {
  return notebook.cells.flatMap((cell) => (cell.cell_type === "code" ? undrawnOf(cell) : []));
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
