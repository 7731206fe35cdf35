/** Views as HTML, every text in them escaped. */

import { renderChart } from "./chart.js";
import { type Html, html } from "./html.js";
import { displayEquation, inlineSymbol, renderMarkdown } from "./markup.js";
import { renderDrawing } from "./render-drawing.js";
import { percent, renderRatio, verdictBadge } from "./verdict.js";
import type {
  AmountView,
  AnswerView,
  CautionsView,
  FindingView,
  ListView,
  SentenceView,
  SymbolView,
  TableView,
  View,
  WorkedView,
} from "./view.js";

/** A view as HTML, every text in it escaped. */
export function viewHtml(view: View): Html {
  switch (view.kind) {
    case "sentence":
      return renderSentence(view);
    case "answer":
      return renderAnswer(view);
    case "table":
      return renderTable(view);
    case "list":
      return renderList(view);
    case "cautions":
      return renderCautions(view);
    case "worked":
      return renderWorked(view);
    case "finding":
      return renderFinding(view);
    case "chart":
      return renderChart(view);
    case "drawing":
      return renderDrawing(view);
    case "markdown":
      return renderMarkdown(view.text);
  }
}

/** Views as one piece of HTML text. */
export function renderViews(views: readonly View[]): string {
  return String(html`<div class="cw">${views.map(viewHtml)}</div>`);
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
  return html`<div class="cw-list">${head}${ordered ? html`<ol>${points}</ol>` : html`<ul>${points}</ul>`}</div>`;
}

/** Cautions in a ruled box; nothing where there are none. */
function renderCautions({ items }: CautionsView): Html {
  if (items.length === 0) return html``;
  const points = items.map((item) => html`<li>${tieUnits(item)}</li>`);
  return html`<div class="cw-cautions" role="note"><p class="cw-label">Mind this</p><ul>${points}</ul></div>`;
}

/** A table that scrolls inside its own box where the page is narrower. */
function renderTable({ caption, columns, rows }: TableView): Html {
  const head = columns.map(({ heading, align }) => html`<th scope="col" class="cw-${align}">${heading}</th>`);
  const body = rows.map(
    (row) =>
      html`<tr>${columns.map(({ align }, i) => html`<td class="cw-${align}">${tieUnits(readableValue(row[i] ?? ""))}</td>`)}</tr>`,
  );
  return html`<div class="cw-scroll" tabindex="0" role="group" aria-label="${caption ?? "table"}"><table class="cw-table">${
    caption !== undefined && html`<caption>${caption}</caption>`
  }<thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div>`;
}

/** The whole line. */
function renderWorked(line: WorkedView): Html {
  return html`<section class="cw-worked" data-formula="${line.id}"><h4>${line.title}</h4>
${displayEquation(line.equation)}${line.substituted.map(displayEquation)}
<div class="cw-scroll" tabindex="0" role="group" aria-label="symbols of ${line.title}"><table class="cw-table cw-symbols">
<thead><tr><th scope="col">Symbol</th><th scope="col">Meaning</th><th scope="col" class="cw-right">Value</th></tr></thead>
<tbody>${line.inputs.map((symbol) => symbolRow(symbol, false))}${line.results.map((symbol) => symbolRow(symbol, true))}</tbody></table></div>
<p class="cw-small"><b>Holds for:</b> ${line.validity}</p>
<p class="cw-small"><b>From:</b> ${line.source.join("; ")}</p>
${renderCautions({ kind: "cautions", items: line.warnings })}</section>`;
}

function symbolRow({ symbol, meaning, value }: SymbolView, isResult: boolean): Html {
  return html`<tr${isResult && html` class="cw-result"`}><td>${inlineSymbol(symbol)}</td><td>${meaning}</td>${valueCell(value)}</tr>`;
}

/** A list stands line by line, a long one behind a disclosure. */
function valueCell(value: string): Html {
  const parts = value.split("; ");
  if (parts.length === 1 && value.length <= 30) return html`<td class="cw-right">${shown(value)}</td>`;
  const lines = parts.map((part) => html`<span class="cw-line">${shown(part)}</span>`);
  return parts.length <= 6
    ? html`<td>${lines}</td>`
    : html`<td><details class="cw-how"><summary>${parts.length} values</summary>${lines}</details></td>`;
}

function shown(value: string): string {
  return tieUnits(readableValue(value));
}

/** The card. */
function renderFinding(finding: FindingView): Html {
  const { id, topic, subject, question, verdict, answer, cautions, missing } = finding;
  return html`<article class="cw-finding cw-${verdict}" id="${id}"><div class="cw-top"><p class="cw-label">${topic} · ${subject}</p>
<h3>${question}</h3>${verdictBadge(verdict)}<p class="cw-answer-text">${tieUnits(answer)}</p>
${amounts(finding)}${renderRatio(finding)}</div>${missing && renderMissing(missing)}
${renderCautions({ kind: "cautions", items: cautions })}${howWeKnow(finding)}</article>`;
}

function amounts({ demand, capacity }: FindingView): Html {
  if (!demand && !capacity) return html``;
  return html`<dl class="cw-amounts">${demand && amount(demand)}${capacity && amount(capacity)}</dl>`;
}

function amount({ meaning, value }: AmountView): Html {
  return html`<div><dt>${meaning}</dt><dd>${readableValue(value)}</dd></div>`;
}

function renderMissing({ measure, how }: { readonly measure: string; readonly how: string }): Html {
  return html`<div class="cw-missing"><p><b>To measure:</b> ${measure}</p><p><b>How:</b> ${how}</p></div>`;
}

function howWeKnow({ because, source, interval, subject, assumes, remedies, error }: FindingView): Html {
  const shares = (interval?.shares ?? []).map(({ input, share }) => `${input} ${percent(share)}`);
  const gains = remedies.flatMap(({ gives }) => gives.map(({ meaning, value }) => `${meaning}: ${value}`));
  const notes = [
    ...(shares.length > 0 ? [note("The scatter comes from", shares.join(", "))] : []),
    ...(gains.length > 0 ? [note("What would help, worked out", gains.join("; "))] : []),
    ...assumes.map((one) => note("Assumed", one)),
    ...(source.length > 0 ? [note("Sources", source.join("; "))] : []),
  ];
  const wrong = error === undefined ? [] : [note("What went wrong", error)];
  if (because.length + notes.length + wrong.length === 0) return html``;
  return html`<details class="cw-how"><summary>How we know<span class="cw-hidden"> about ${subject}</span></summary>${wrong}${because.map(renderWorked)}${notes}</details>`;
}

function note(heading: string, text: string): Html {
  return html`<p class="cw-small"><b>${heading}:</b> ${text}</p>`;
}

const powers: Readonly<Record<string, string>> = { "2": "²", "3": "³", "4": "⁴" };

/** "12 mm2" -> "12 mm²", for a text that is one value with its unit. */
export function readableValue(text: string): string {
  if (!/^[-+±]?[\d.][\d.\u202fe-]*\s\S+$/.test(text)) return text;
  return text.replace(/(?<=[A-Za-zµ])[234](?![\d.])/g, (power) => powers[power] ?? power);
}

/** Keeps a number and its unit on one line. */
export function tieUnits(text: string): string {
  return text.replace(/(\d) (?=[A-Za-z°%µ²³·/]{1,6}(?![A-Za-z]))/g, "$1\u00a0");
}
