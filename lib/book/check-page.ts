/** The published checks: value printed elsewhere, ours, and how far they are apart. */
import { type Html, html, renderTable, tableOf } from "../page/index.js";
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

function sourceSection(source: string, outcomes: readonly CheckOutcome[]): Html {
  const table = tableOf(
    outcomes,
    [
      {
        heading: "Formula",
        cell: ({ formula, result }) => (result === "value" ? formula : `${formula} (${result})`),
      },
      { heading: "Expected", cell: ({ expected }) => expected, align: "right" },
      { heading: "Ours", cell: ({ ours }) => ours, align: "right" },
      { heading: "Apart", cell: apart, align: "right" },
      { heading: "Allowed", cell: ({ tolerance }) => showShare(tolerance), align: "right" },
      { heading: "", cell: ({ holds }) => (holds ? "agrees" : "DISAGREES") },
      { heading: "Known", cell: ({ known }) => known },
      { heading: "Where", cell: ({ where }) => where },
    ],
    counted(outcomes.length, "value"),
  );
  return html`<h2>${source}</h2><div class="cw">${renderTable(table)}</div>`;
}

function apart({ error }: CheckOutcome): string {
  return error < 5e-7 ? "none" : showShare(error);
}

function showShare(share: number): string {
  return share === 0 ? "0 %" : `${Number((100 * share).toPrecision(2))} %`;
}
