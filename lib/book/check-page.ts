/** The published checks: value printed elsewhere, ours, and how far they are apart. */
import { type Html, html, readableValue, tieUnits } from "../page/index.js";
import type { CheckOutcome } from "../published-check.js";
import type { Known } from "../source.js";
import { counted } from "./counted.js";

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
