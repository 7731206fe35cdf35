/** The pages of reference: the published checks (value printed elsewhere, ours, how far apart), and the formulas. */

import { type AnyFormula, resultSymbols } from "../formula.js";
import { displayEquation, type Html, html, inlineSymbol, readableValue, tieUnits } from "../page/index.js";
import type { CheckOutcome } from "../published-check.js";
import { type Known, showCitation } from "../source.js";

const meanings: Readonly<Record<Known, string>> = {
  seen: "read in the source",
  derived: "worked out from the source's equations, without using this library",
  memory: "recalled, and always beside another check",
  "common practice": "a rule of the trade",
};

/** The page of checks, grouped by source. */
export function checkPage(outcomes: readonly CheckOutcome[]): Html {
  const held = outcomes.filter(({ holds }) => holds).length;
  const sources = [...new Set(outcomes.map(({ source }) => source))];
  return html`<h1>How the numbers are checked</h1>
<p>Each formula is compared with values from outside this library. ${counted(outcomes.length, "value")}, of which ${held} agree within their tolerance.</p>
<ul class="cw-pages">${knownCounts(outcomes)}</ul>${sources.map((source) =>
    sourceSection(
      source,
      outcomes.filter((outcome) => outcome.source === source),
    ),
  )}`;
}

function knownCounts(outcomes: readonly CheckOutcome[]): Html[] {
  return (Object.keys(meanings) as Known[])
    .map((known) => ({ known, count: outcomes.filter((outcome) => outcome.known === known).length }))
    .filter(({ count }) => count > 0)
    .map(({ known, count }) => html`<li><b>${known}</b>: ${meanings[known]} (${count})</li>`);
}

/** Behind a disclosure, since the tables are long. */
function sourceSection(source: string, outcomes: readonly CheckOutcome[]): Html {
  const apartOnes = outcomes.filter(({ holds }) => !holds).length;
  const tally = apartOnes === 0 ? "all agree" : `${apartOnes} do not agree`;
  return html`<section class="cw cw-formula"><h2>${source}</h2><details class="cw-how"><summary>${counted(outcomes.length, "value")}, ${tally}</summary>
<div class="cw-scroll" tabindex="0" role="group" aria-label="checks against ${source}"><table class="cw-table">
<thead><tr><th scope="col">Formula and place</th>${figures.map((heading) => html`<th scope="col" class="cw-right">${heading}</th>`)}<th scope="col">Known</th></tr></thead>
<tbody>${outcomes.map(outcomeRow)}</tbody></table></div></details></section>`;
}

const figures = ["Expected", "Ours", "Apart", "Allowed"] as const;

function outcomeRow(outcome: CheckOutcome): Html {
  const { formula, result, where, expected, ours, tolerance, holds, known } = outcome;
  const cells = [
    expected,
    ours,
    holds ? apart(outcome) : `${apart(outcome)}, does not agree`,
    showShare(tolerance),
  ];
  return html`<tr><td><code>${formula}${result === "value" ? "" : `, ${result}`}</code><small>${where}</small></td>${cells.map(
    (cell) => html`<td class="cw-right">${tieUnits(readableValue(cell))}</td>`,
  )}<td>${known}</td></tr>`;
}

function apart({ error }: CheckOutcome): string {
  return error < 5e-7 ? "none" : showShare(error);
}

function showShare(share: number): string {
  return share === 0 ? "0 %" : `${Number((100 * share).toPrecision(2))} %`;
}

/** What a formula declares. */
export type FormulaDeclaration = AnyFormula["declaration"];

/** The formulas, grouped by the first word of their ids. */
export function formulaPage(declarations: readonly FormulaDeclaration[]): Html {
  const sorted = [...declarations].sort((a, b) => a.id.localeCompare(b.id, "en"));
  const topics = [...new Set(sorted.map(topicOf))];
  return html`<h1>Formulas</h1><p>${counted(sorted.length, "formula")} behind the worked lines of this book. Each says where it holds and where it comes from.</p>${topics.map(
    (topic) => html`<h2>${topic}</h2>${sorted.filter((one) => topicOf(one) === topic).map(formulaEntry)}`,
  )}`;
}

function topicOf({ id }: FormulaDeclaration): string {
  const word = id.split(".")[0] ?? id;
  return word.charAt(0).toUpperCase() + word.slice(1);
}

function formulaEntry(declaration: FormulaDeclaration): Html {
  const { id, title, equation, validity, source } = declaration;
  return html`<article class="cw cw-formula" id="formula-${id}"><h3>${title}</h3><p class="cw-id">${id}</p>
${displayEquation(equation)}${symbolTable(declaration)}
<p class="cw-small"><b>Holds for:</b> ${validity}</p><p class="cw-small"><b>From:</b> ${source.map(showCitation).join("; ")}</p></article>`;
}

function symbolTable(declaration: FormulaDeclaration): Html {
  const inputs = Object.values(declaration.inputs) as {
    symbol: string;
    meaning: string;
    kind: { name: string };
  }[];
  const row = ({ symbol, meaning, kind }: (typeof inputs)[number], isResult: boolean): Html =>
    html`<tr${isResult && html` class="cw-result"`}><td>${inlineSymbol(symbol)}</td><td>${meaning}</td><td>${kind.name}</td></tr>`;
  return html`<details class="cw-how"><summary>Symbols<span class="cw-hidden"> of ${declaration.title}</span></summary><div class="cw-scroll" tabindex="0" role="group" aria-label="symbols of ${declaration.title}"><table class="cw-table cw-symbols">
<thead><tr><th scope="col">Symbol</th><th scope="col">Meaning</th><th scope="col">Kind</th></tr></thead>
<tbody>${inputs.map((symbol) => row(symbol, false))}${resultSymbols(declaration).map(([, symbol]) => row(symbol, true))}</tbody></table></div></details>`;
}

/** "1 question", "3 questions". */
export function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? "" : "s"}`;
}
