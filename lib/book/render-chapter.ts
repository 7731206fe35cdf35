/** A chapter's cells as HTML: prose and outputs in order, the code behind a disclosure. Our own views are drawn anew; all else is text, a picture, or boxed in. */

import { stripVTControlCharacters } from "node:util";
import {
  bareMarkdown,
  emptyPage,
  type Html,
  html,
  type PageSoFar,
  renderMarkdown,
  sentencesOf,
  tieUnits,
  trusted,
  type View,
  verdictBadge,
  viewHtml,
  viewsHtml,
} from "../page/index.js";
import { recipeMime } from "../recipe/index.js";
import { type Chapter, drawnViews } from "./chapter.js";
import { counted } from "./check-page.js";
import { errorText, isFailure } from "./failed-cells.js";
import type { Cell, CodeCell, MimeBundle, Output } from "./notebook.js";
import { saidOnce } from "./said-once.js";

/** What is known while a chapter is drawn. */
interface Drawing {
  /** What the page has so far. */
  readonly page: PageSoFar;
  /** What stands at the head, not in its place: the chart, and an answer that is short enough. */
  readonly atHead: readonly View[];
}

/** The body of a chapter; after the first prose its answer in short, what of it failed, and its first chart. */
export function renderChapter(chapter: Chapter): Html {
  const pieces: Html[] = [];
  const lead = leadOf(chapter);
  const { answer } = chapter;
  const isWhole = answer !== undefined && sentencesOf(answer.text).length <= sentencesInShort;
  const drawing: Drawing = { page: emptyPage(true), atHead: [lead ?? [], isWhole ? answer : []].flat() };
  let waiting: CodeCell[] = [];
  let short = html`${failed(chapter)}${inShort(chapter)}${
    lead && html`<div class="cw" id="lead">${viewHtml(lead)}</div>`
  }`;
  for (const cell of chapter.notebook.cells) {
    if (cell.cell_type === "code") {
      waiting.push(cell);
      if (cell.outputs.length > 0) {
        pieces.push(renderCode(waiting, drawing));
        waiting = [];
      }
    } else {
      pieces.push(...prose(cell, pieces.length === 0), short);
      short = html``;
    }
  }
  const rest = waiting.length > 0 && renderCode(waiting, drawing);
  return trusted(saidOnce(String(html`${String(short) !== "" && short}${pieces}${rest}`)));
}

/** The first chart of a chapter, or else its first drawing. */
function leadOf({ notebook }: Chapter): View | undefined {
  const views = notebook.cells
    .flatMap((cell) => (cell.cell_type === "code" ? cell.outputs : []))
    .flatMap((output) => drawnViews(output) ?? [])
    .flatMap((drawn) => ("view" in drawn ? drawn.view : []));
  const first = (...kinds: readonly View["kind"][]): View | undefined =>
    views.find(({ kind }) => kinds.includes(kind));
  return first("chart") ?? first("drawing", "picture");
}

function failed({ faults }: Chapter): Html {
  if (faults.length === 0) return html``;
  const where = faults.length === 1 ? "Its error stands" : "Their errors stand";
  return html`<div class="cw cw-failed" role="note"><p><b>${counted(faults.length, "part")} of this chapter failed.</b> ${where} in place; the rest is worked out.</p></div>`;
}

/** Words of a section's prose that are in sight. */
const proseInSight = 25;

/** Heading and first sentences; the rest is behind a disclosure, but for the chapter's own first words. */
function prose(cell: Cell, isFirst: boolean): Html[] {
  // Raw cells are for converters, not for readers.
  if (cell.cell_type !== "markdown") return [];
  const [first, rest] = isFirst ? [cell.source, ""] : proseParts(cell.source);
  const more =
    rest !== "" &&
    html`<details class="cw-how cw-more"><summary>More on this</summary>${renderMarkdown(rest)}</details>`;
  return [html`<div class="cw">${renderMarkdown(first)}${more}</div>`];
}

/** What of a section's Markdown is in sight, and the rest. */
function proseParts(source: string): readonly [string, string] {
  const [, headings = "", text = ""] = /^((?:\s*#.*\n?)*)([\s\S]*)$/.exec(source.trim()) ?? [];
  const [paragraph = "", ...others] = text.trim().split(/\n\s*\n/);
  const isPlain = !/^\s*(>|\||[-*+]\s|\d+\.\s)/m.test(paragraph);
  const sentences = isPlain ? sentencesOf(paragraph) : [paragraph];
  let shown = 1;
  const joined = (count: number): string => sentences.slice(0, count).join(" ");
  while (shown < sentences.length && joined(shown + 1).split(/\s+/).length <= proseInSight) shown += 1;
  while (shown < sentences.length && isOpen(joined(shown))) shown += 1;
  return [
    `${headings}\n${joined(shown)}`,
    [sentences.slice(shown).join(" "), ...others].filter(Boolean).join("\n\n"),
  ];
}

/** Whether a mark of emphasis or code is open at a text's end. */
function isOpen(text: string): boolean {
  return (text.match(/\*/g)?.length ?? 0) % 2 === 1 || (text.match(/`/g)?.length ?? 0) % 2 === 1;
}

/** So many sentences of the answer stand at the head. */
const sentencesInShort = 2;

/** The answer in two sentences at most; a longer one stands whole at the chapter's end. */
function inShort({ answer }: Chapter): Html {
  if (!answer) return html``;
  const short = sentencesOf(answer.text).slice(0, sentencesInShort).join(" ");
  return html`<div class="cw cw-short" id="short"><p><b>In short:</b> ${tieUnits(short)}</p>${answer.verdict && verdictBadge(answer.verdict)}</div>`;
}

/** Cells without an output of their own are read with the next one that has some. */
function renderCode(cells: readonly CodeCell[], drawing: Drawing): Html {
  const outputs = cells.flatMap((cell) => cell.outputs).map((output) => renderOutput(output, drawing));
  const code = cells.map(({ source }) => source.trim()).filter((source) => source !== "");
  return html`<section class="cw-cell">${outputs}${
    code.length > 0 &&
    html`<details class="cw-workings"><summary>Workings</summary>${code.map(
      (source) => html`<pre tabindex="0"><code>${source}</code></pre>`,
    )}</details>`
  }</section>`;
}

/** One output. */
function renderOutput(output: Output, drawing: Drawing): Html {
  switch (output.output_type) {
    case "stream":
      return printed(output.text, output.name === "stderr" ? "Warnings" : "Printed");
    case "error":
      return isFailure(output)
        ? printed([errorText(output), ...output.traceback].join("\n"), "Error")
        : notAnswered(output.evalue);
    case "display_data":
    case "execute_result":
      return renderViewsOf(output, drawing) ?? renderBundle(output.data);
  }
}

/** Kinds of which a cell may show many alike. */
const alike: ReadonlySet<View["kind"]> = new Set(["table", "drawing", "picture", "worked", "chart"]);

/** So many of them are in sight. */
const viewsInSight = 3;

function renderViewsOf(output: Output, { page, atHead }: Drawing): Html | undefined {
  const drawn = drawnViews(output);
  if (!drawn) return undefined;
  const faults = drawn.flatMap((one) => ("fault" in one ? printed(one.fault, "Error") : []));
  const all = drawn.flatMap((one) => ("view" in one ? one.view : []));
  const views = all.filter((view) => !atHead.includes(view));
  const moved = all
    .filter((view) => atHead.includes(view))
    .map(({ kind }) => {
      const place = kind === "answer" ? "short" : "lead";
      const what = kind === "answer" ? "answer" : kind === "chart" ? "chart" : "picture";
      return html`<p class="cw-small"><a href="#${place}">The ${what} stands at the head of this chapter.</a></p>`;
    });
  const many = views.length > viewsInSight + 1 && views.every(({ kind }) => alike.has(kind));
  if ("data" in output && recipeMime in output.data)
    return html`<div class="cw">${moved}${faults}${papersHtml(views, page)}</div>`;
  const [first, rest] = many ? [views.slice(0, viewsInSight), views.slice(viewsInSight)] : [views, []];
  return html`<div class="cw">${moved}${faults}${viewsHtml(first, page)}${
    rest.length > 0 &&
    html`<details class="cw-how cw-more"><summary>${rest.length} more like these</summary>${viewsHtml(rest, page)}</details>`
  }</div>`;
}

/** The papers of a recipe: on a screen each section is folded under its heading, in which nothing folds again. */
function papersHtml(views: readonly View[], page: PageSoFar): readonly Html[] {
  const starts = views.flatMap((view, i) => (isSectionHeading(view) ? i : []));
  const set = { ...page, foldsTables: false };
  const sections = starts.map((start, i) => {
    const [heading, ...blocks] = views.slice(start, starts[i + 1]);
    return html`<details class="cw-how cw-paper"><summary>${
      heading?.kind === "markdown" && bareMarkdown(heading.text, page.under)
    }<small>${whatIsIn(blocks)}</small></summary>${viewsHtml(blocks, set)}</details>`;
  });
  return [...viewsHtml(views.slice(0, starts[0]), set), ...sections];
}

function isSectionHeading(view: View): boolean {
  return view.kind === "markdown" && view.text.startsWith("## ");
}

/** What is counted in the heading line of a section. */
const countedKinds: readonly (readonly [string, readonly View["kind"][]])[] = [
  ["drawing", ["drawing", "picture"]],
  ["table", ["table"]],
  ["list", ["list", "cautions"]],
  ["question", ["finding"]],
];

/** "5 drawings, 11 tables". */
function whatIsIn(views: readonly View[]): string {
  return countedKinds
    .map(([thing, kinds]) => [views.filter(({ kind }) => kinds.includes(kind)).length, thing] as const)
    .filter(([count]) => count > 0)
    .map(([count, thing]) => counted(count, thing))
    .join(", ");
}

/** Why an answer cannot be given, each line of it a paragraph. */
function notAnswered(why: string): Html {
  return html`<div class="cw cw-not-answered">${why.split("\n").map((line) => html`<p>${tieUnits(line)}</p>`)}</div>`;
}

/** The richest kind that can be shown without trusting it. */
function renderBundle(data: MimeBundle): Html {
  const text = (kind: string): string | undefined =>
    typeof data[kind] === "string" ? data[kind] : undefined;
  const svg = text("image/svg+xml");
  if (svg !== undefined) return picture("image/svg+xml", Buffer.from(svg, "utf8").toString("base64"), data);
  const bitmap = ["image/png", "image/jpeg"].find((kind) => text(kind) !== undefined);
  if (bitmap) return picture(bitmap, text(bitmap)?.replace(/\s/g, "") ?? "", data);
  const markup = text("text/html");
  if (markup !== undefined) return boxed(markup);
  const prose = text("text/markdown");
  return prose === undefined
    ? printed(text("text/plain") ?? "", "Printed")
    : html`<div class="cw">${renderMarkdown(prose, 1)}</div>`;
}

function picture(kind: string, base64: string, data: MimeBundle): Html {
  const words = typeof data["text/plain"] === "string" ? data["text/plain"] : "picture shown by the notebook";
  return html`<img class="cw-picture" alt="${words}" src="data:${kind};base64,${base64}">`;
}

/** Markup of unknown origin: no scripts, no links out, its own document. */
function boxed(markup: string): Html {
  return html`<iframe class="cw-boxed" sandbox title="output of a cell" srcdoc="${markup}"></iframe>`;
}

function printed(text: string, label: string): Html {
  const plain = stripVTControlCharacters(text).trimEnd();
  if (plain === "") return html``;
  return html`<div class="cw-printed"><p class="cw-printed-label">${label}</p><pre tabindex="0">${plain}</pre></div>`;
}
