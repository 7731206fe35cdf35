/** A chapter's cells as HTML: prose and outputs in order, the code behind a disclosure. Our own views are drawn anew; all else is text, a picture, or boxed in. */

import { stripVTControlCharacters } from "node:util";
import { type Html, html, renderMarkdown, tieUnits, verdictBadge } from "../page/index.js";
import { type Chapter, drawnViews } from "./chapter.js";
import { counted } from "./check-page.js";
import { errorText, isFailure } from "./failed-cells.js";
import type { Cell, CodeCell, MimeBundle, Output } from "./notebook.js";

/** The body of a chapter; after the first prose its answer in short, and what of it failed. */
export function renderChapter(chapter: Chapter): Html {
  const pieces: Html[] = [];
  let waiting: CodeCell[] = [];
  let short = html`${failed(chapter)}${inShort(chapter)}`;
  for (const cell of chapter.notebook.cells) {
    if (cell.cell_type === "code") {
      waiting.push(cell);
      if (cell.outputs.length > 0) {
        pieces.push(renderCode(waiting));
        waiting = [];
      }
    } else {
      pieces.push(...prose(cell), short);
      short = html``;
    }
  }
  const rest = waiting.length > 0 && renderCode(waiting);
  return html`${String(short) !== "" && short}${pieces}${rest}`;
}

function failed({ faults }: Chapter): Html {
  if (faults.length === 0) return html``;
  const where = faults.length === 1 ? "Its error stands" : "Their errors stand";
  return html`<div class="cw cw-failed" role="note"><p><b>${counted(faults.length, "part")} of this chapter failed.</b> ${where} in place; the rest is worked out.</p></div>`;
}

/** Raw cells are for converters, not for readers. */
function prose(cell: Cell): Html[] {
  return cell.cell_type === "markdown" ? [html`<div class="cw">${renderMarkdown(cell.source)}</div>`] : [];
}

function inShort({ answer }: Chapter): Html {
  if (!answer) return html``;
  return html`<div class="cw cw-short"><p><b>In short:</b> ${tieUnits(answer.text)}</p>${answer.verdict && verdictBadge(answer.verdict)}</div>`;
}

/** Cells without an output of their own are read with the next one that has some. */
function renderCode(cells: readonly CodeCell[]): Html {
  const outputs = cells.flatMap((cell) => cell.outputs).map(renderOutput);
  const code = cells.map(({ source }) => source.trim()).filter((source) => source !== "");
  return html`<section class="cw-cell">${outputs}${
    code.length > 0 &&
    html`<details class="cw-workings"><summary>Workings</summary>${code.map(
      (source) => html`<pre tabindex="0"><code>${source}</code></pre>`,
    )}</details>`
  }</section>`;
}

/** One output. */
function renderOutput(output: Output): Html {
  switch (output.output_type) {
    case "stream":
      return printed(output.text, output.name === "stderr" ? "Warnings" : "Printed");
    case "error":
      return isFailure(output)
        ? printed([errorText(output), ...output.traceback].join("\n"), "Error")
        : notAnswered(output.evalue);
    case "display_data":
    case "execute_result":
      return renderViewsOf(output) ?? renderBundle(output.data);
  }
}

function renderViewsOf(output: Output): Html | undefined {
  const drawn = drawnViews(output);
  return (
    drawn &&
    html`<div class="cw">${drawn.map((one) => ("html" in one ? one.html : printed(one.fault, "Error")))}</div>`
  );
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
    : html`<div class="cw">${renderMarkdown(prose)}</div>`;
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
