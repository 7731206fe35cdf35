/** A formula with its numbers, as HTML. */
import { renderCautions } from "./cautions.js";
import { displayEquation, inlineSymbol } from "./equation.js";
import { type Html, html } from "./html.js";
import { readableValue, tieUnits } from "./text.js";
import type { SymbolView, WorkedView } from "./view.js";

/** What a page has so far, and how it sets what comes. */
export interface PageSoFar {
  /** What of formulas it has written out: their ids, and each set of values. */
  readonly told: Set<string>;
  /** Whether long tables fold. */
  readonly foldsTables: boolean;
  /** How many levels a heading of its Markdown stands under the page's own. */
  readonly under: 0 | 1;
}

/**
 * A page with nothing on it yet: a chapter, to be read on a screen, folds long tables and has a title of its own; one to
 * be worked from does not.
 */
export function emptyPage(isChapter: boolean): PageSoFar {
  return { told: new Set(), foldsTables: isChapter, under: isChapter ? 1 : 0 };
}

/**
 * A formula with its numbers: written out where a page uses it first; later its values, with the way to the first; the
 * same values once.
 */
export function renderWorked(line: WorkedView, page: PageSoFar): Html {
  if (isTold(line, page)) return toldBefore(line);
  page.told.add(valuesOf(line));
  if (page.told.has(line.id)) return usedAgain(line);
  page.told.add(line.id);
  return html`<section class="cw-worked" data-formula="${line.id}" id="formula-${line.id}"><p class="cw-worked-title">${line.title}</p>
${displayEquation(line.equation)}${line.substituted.map(displayEquation)}
<div class="cw-scroll" tabindex="0" role="group" aria-label="symbols of ${line.title}"><table class="cw-table cw-symbols">
<thead><tr><th scope="col">Symbol</th><th scope="col">Meaning</th><th scope="col" class="cw-right">Value</th></tr></thead>
<tbody>${line.inputs.map((symbol) => symbolRow(symbol, false))}${line.results.map((symbol) => symbolRow(symbol, true))}</tbody></table></div>
<p class="cw-small"><b>Holds for:</b> ${line.validity}</p>
<p class="cw-small"><b>From:</b> ${line.source.join("; ")}</p>
${renderCautions({ items: line.warnings })}</section>`;
}

/** Whether a page has these very values of a formula. */
export function isTold(line: WorkedView, page: PageSoFar): boolean {
  return page.told.has(valuesOf(line));
}

function valuesOf({ id, inputs, results }: WorkedView): string {
  return JSON.stringify([id, inputs, results]);
}

function toldBefore({ id, title, results }: WorkedView): Html {
  return html`<p class="cw-small cw-again">As before: <a href="#formula-${id}">${title}</a>, <b>${tieUnits(results.map(({ value }) => shortened(value)).join("; "))}</b></p>`;
}

function usedAgain({ id, title, inputs, results, warnings }: WorkedView): Html {
  return html`<p class="cw-small cw-again"><a href="#formula-${id}">${title}</a>: ${tieUnits(inputs.map(saidValue).join("; "))}; gives <b>${tieUnits(results.map(saidValue).join("; "))}</b></p>${renderCautions({ items: warnings })}`;
}

/** A value longer than this is a list, which is not repeated. */
const longValue = 240;

function saidValue({ meaning, value }: SymbolView): string {
  return `${meaning} ${shortened(value)}`;
}

function shortened(value: string): string {
  return value.length <= longValue ? readableValue(value) : `(${value.split("; ").length} values)`;
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
