/** A chapter's cells as HTML: prose and outputs in order, the code behind a disclosure. */
import { type Html, html, renderMarkdown, tieUnits, verdictBadge } from "../page/index.js";
import type { Chapter } from "./chapter.js";
import type { Cell, CodeCell } from "./notebook.js";
import { renderOutput } from "./render-output.js";

/** The body of a chapter, its answer told in short after the first prose. */
export function renderChapter(chapter: Chapter): Html {
  const pieces: Html[] = [];
  let waiting: CodeCell[] = [];
  let short = inShort(chapter);
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
  return html`${pieces}${waiting.length > 0 && renderCode(waiting)}`;
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
