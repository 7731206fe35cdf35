/** Views as HTML, every text in them escaped. */

import { renderCautions } from "./cautions.js";
import { renderChart } from "./chart.js";
import { renderFinding, renderFindings } from "./findings-list.js";
import { type Html, type HtmlPart, html } from "./html.js";
import { renderMarkdown } from "./markdown.js";
import { renderPicture } from "./picture/index.js";
import { renderDrawing } from "./render-drawing.js";
import { readableValue, tieUnits } from "./text.js";
import { verdictBadge } from "./verdict.js";
import type {
  Alignment,
  AnswerView,
  FindingView,
  ListView,
  PlainView,
  SentenceView,
  TableView,
  View,
  WorkedView,
} from "./view.js";
import { emptyPage, type PageSoFar, renderWorked } from "./worked.js";

/**
 * A view as HTML, every text in it escaped.
 *
 * @param page what the page has so far: its formulas are not written out again
 */
export function viewHtml(view: View, page: PageSoFar = emptyPage(false)): Html {
  return view.kind === "markdown" ? renderMarkdown(view.text, page.under) : plainViewHtml(view, page);
}

/**
 * A view without markup as HTML, every text in it escaped.
 *
 * @param page what the page has so far: its formulas are not written out again
 */
export function plainViewHtml(view: PlainView, page: PageSoFar = emptyPage(false)): Html {
  switch (view.kind) {
    case "sentence":
      return renderSentence(view);
    case "answer":
      return renderAnswer(view);
    case "table":
      return page.foldsTables ? renderTable(view) : wholeTable(view);
    case "list":
      return renderList(view);
    case "cautions":
      return renderCautions(view);
    case "worked":
      return renderWorkedAside(view, page);
    case "finding":
      return renderFinding(view, page);
    case "chart":
      return renderChart(view);
    case "drawing":
      return renderDrawing(view);
    case "picture":
      return renderPicture(view);
  }
}

/** Views in order; findings that follow each other are drawn as one list. */
export function viewsHtml(views: readonly View[], page: PageSoFar = emptyPage(true)): readonly Html[] {
  const drawn: Html[] = [];
  for (let i = 0; i < views.length; ) {
    const run: FindingView[] = [];
    for (let view = views[i]; view?.kind === "finding"; view = views[++i]) run.push(view);
    const view = views[i];
    if (run.length > 0) drawn.push(renderFindings(run, page));
    else if (view) {
      drawn.push(viewHtml(view, page));
      i += 1;
    }
  }
  return drawn;
}

/** A worked line among others: behind a disclosure that tells what it gives. */
function renderWorkedAside(line: WorkedView, page: PageSoFar): Html {
  const gives = line.results.map(({ value }) => readableValue(value)).join("; ");
  const short = gives.length <= 30 ? `: ${gives}` : "";
  return html`<details class="cw-how"><summary>${tieUnits(`${line.title}${short}`)}</summary>${renderWorked(line, page)}</details>`;
}

/** Views as one piece of HTML text. */
export function renderViews(views: readonly View[]): string {
  return String(html`<div class="cw">${viewsHtml(views)}</div>`);
}

/** One view as HTML text. */
export function renderView(view: View): string {
  return renderViews([view]);
}

/** One sentence. */
function renderSentence({ text }: SentenceView): Html {
  return html`<p class="cw-sentence">${tieUnits(text)}</p>`;
}

/** The answer, set off from the rest. */
function renderAnswer({ text, verdict }: AnswerView): Html {
  return html`<div class="cw-answer${verdict && ` cw-${verdict}`}"><p class="cw-label">Answer</p>${
    verdict && verdictBadge(verdict)
  }<p class="cw-answer-text">${tieUnits(text)}</p></div>`;
}

/** Points or steps. */
function renderList({ title, ordered, items }: ListView): Html {
  const points = items.map((item) => html`<li>${tieUnits(item)}</li>`);
  const head = title !== undefined && html`<p class="cw-list-title">${title}</p>`;
  const ticked = items.every((item) => item.startsWith("☐")) && html` class="cw-ticks"`;
  return html`<div class="cw-list">${head}${ordered ? html`<ol>${points}</ol>` : html`<ul${ticked}>${points}</ul>`}</div>`;
}

/** So many rows of a table are in sight; a few more than these are not worth a disclosure. */
const rowsInSight = 4;
const fewMore = 2;

/** A table; the rows of a long one beyond the first are behind a disclosure, and those of a folded one all. */
function renderTable(table: TableView): Html {
  const { rows, isFolded } = table;
  if (isFolded) {
    const { caption, ...bare } = table;
    return html`<details class="cw-how cw-more"><summary>${caption ?? "table"}</summary>${wholeTable(bare)}</details>`;
  }
  if (rows.length <= rowsInSight + fewMore) return wholeTable(table);
  const { caption, ...rest } = table;
  const more = rows.length - rowsInSight;
  return html`${wholeTable({ ...table, rows: rows.slice(0, rowsInSight) })}<details class="cw-how cw-more"><summary>${more} more rows${
    caption !== undefined && html`<span class="cw-hidden"> of ${caption}</span>`
  }</summary>${wholeTable({ ...rest, rows: rows.slice(rowsInSight) })}</details>`;
}

/** The class of a cell that is not set to the left, as cells are of themselves. */
export function alignedTo(align: Alignment): Html | false {
  return align !== "left" && html` class="cw-${align}"`;
}

/** A text that may go on in another line after each dot of a name, as in "lower.bottom.left". */
function withBreaks(text: string): readonly HtmlPart[] {
  return text.split(/(?<=[a-z]\.)(?=[a-z])/i).map((part, i) => (i === 0 ? part : html`<wbr>${part}`));
}

/** A table that scrolls inside its own box where the page is narrower. */
function wholeTable({ caption, columns, rows }: TableView): Html {
  const head = columns.map(({ heading, align }) => html`<th scope="col"${alignedTo(align)}>${heading}</th>`);
  const body = rows.map(
    (row) =>
      html`<tr>${columns.map(({ align }, i) => html`<td${alignedTo(align)}>${withBreaks(tieUnits(readableValue(row[i] ?? "")))}</td>`)}</tr>`,
  );
  return html`<div class="cw-scroll" tabindex="0" role="group" aria-label="${caption ?? "table"}"><table class="cw-table">${
    caption !== undefined && html`<caption><span>${caption}</span></caption>`
  }<thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div>`;
}
