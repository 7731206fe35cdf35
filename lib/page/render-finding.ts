/** A finding as a card: question, verdict, answer, bar, and behind a disclosure how we know. */
import { type Html, html } from "./html.js";
import { percent, renderRatio } from "./ratio-bar.js";
import { readableValue, tieUnits } from "./readable.js";
import { renderCautions } from "./render-simple.js";
import { renderWorked } from "./render-worked.js";
import { verdictBadge } from "./verdict.js";
import type { AmountView, FindingView } from "./view.js";

/** The card. */
export function renderFinding(finding: FindingView): Html {
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

function howWeKnow({ because, source, interval, subject, assumes, error }: FindingView): Html {
  if (because.length + source.length + assumes.length === 0 && error === undefined) return html``;
  const shares = (interval?.shares ?? []).map(({ input, share }) => `${input} ${percent(share)}`);
  return html`<details class="cw-how"><summary>How we know<span class="cw-hidden"> about ${subject}</span></summary>${
    error !== undefined && html`<p class="cw-small"><b>What went wrong:</b> ${error}</p>`
  }${because.map(renderWorked)}${
    shares.length > 0 && html`<p class="cw-small"><b>The scatter comes from:</b> ${shares.join(", ")}</p>`
  }${assumes.map((one) => html`<p class="cw-small"><b>Assumed:</b> ${one}</p>`)}${source.length > 0 && html`<p class="cw-small"><b>Sources:</b> ${source.join("; ")}</p>`}</details>`;
}
