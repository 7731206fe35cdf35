import { type Html, html } from "./html.js";
import { renderMarkdown } from "./markdown.js";
import { renderChart } from "./render-chart.js";
import { renderDrawing } from "./render-drawing.js";
import { renderFinding } from "./render-finding.js";
import { renderAnswer, renderCautions, renderList, renderSentence, renderTable } from "./render-simple.js";
import { renderWorked } from "./render-worked.js";
import type { View } from "./view.js";

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
