/** Sentences, answers, lists, cautions and tables as HTML. */
import { type Html, html } from "./html.js";
import { readableValue, tieUnits } from "./readable.js";
import { verdictBadge } from "./verdict.js";
import type { AnswerView, CautionsView, ListView, SentenceView, TableView } from "./view.js";

/** One sentence. */
export function renderSentence({ text }: SentenceView): Html {
  return html`<p class="cw-sentence">${tieUnits(text)}</p>`;
}

/** The answer, set off from the rest. */
export function renderAnswer({ text, verdict }: AnswerView): Html {
  return html`<div class="cw-answer${verdict && ` cw-${verdict}`}"><p class="cw-label">Answer</p>${
    verdict && verdictBadge(verdict)
  }<p class="cw-answer-text">${tieUnits(text)}</p></div>`;
}

/** Points or steps. */
export function renderList({ title, ordered, items }: ListView): Html {
  const points = items.map((item) => html`<li>${tieUnits(item)}</li>`);
  const head = title !== undefined && html`<p class="cw-list-title">${title}</p>`;
  return html`<div class="cw-list">${head}${ordered ? html`<ol>${points}</ol>` : html`<ul>${points}</ul>`}</div>`;
}

/** Cautions in a ruled box; nothing where there are none. */
export function renderCautions({ items }: CautionsView): Html {
  if (items.length === 0) return html``;
  const points = items.map((item) => html`<li>${tieUnits(item)}</li>`);
  return html`<div class="cw-cautions" role="note"><p class="cw-label">Mind this</p><ul>${points}</ul></div>`;
}

/** A table that scrolls inside its own box where the page is narrower. */
export function renderTable({ caption, columns, rows }: TableView): Html {
  const head = columns.map(({ heading, align }) => html`<th scope="col" class="cw-${align}">${heading}</th>`);
  const body = rows.map(
    (row) =>
      html`<tr>${columns.map(({ align }, i) => html`<td class="cw-${align}">${tieUnits(readableValue(row[i] ?? ""))}</td>`)}</tr>`,
  );
  return html`<div class="cw-scroll" tabindex="0" role="group" aria-label="${caption ?? "table"}"><table class="cw-table">${
    caption !== undefined && html`<caption>${caption}</caption>`
  }<thead><tr>${head}</tr></thead><tbody>${body}</tbody></table></div>`;
}
