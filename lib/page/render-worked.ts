/** A worked line as HTML: equation, numbers put in, what each symbol is, the result, where it comes from. */
import { displayEquation, inlineSymbol } from "./equation.js";
import { type Html, html } from "./html.js";
import { readableValue, tieUnits } from "./readable.js";
import { renderCautions } from "./render-simple.js";
import type { SymbolView, WorkedView } from "./view.js";

/** The whole line. */
export function renderWorked(line: WorkedView): Html {
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
