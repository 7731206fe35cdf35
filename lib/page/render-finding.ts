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
