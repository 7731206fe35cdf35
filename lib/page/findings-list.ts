/** Findings as HTML: one as a card; several as one list of questions, like ones in one table, the worst opened. */
import { byDanger } from "../findings/index.js";
import { renderCautions } from "./cautions.js";
import { type Html, html } from "./html.js";
import { renderDrawing } from "./render-drawing.js";
import { furtherSentences, shortAnswer } from "./short-answer.js";
import { readableValue, tieUnits } from "./text.js";
import { percent, renderRatio, verdictBadge } from "./verdict.js";
import type { AmountView, FindingView } from "./view.js";
import { emptyPage, isTold, type PageSoFar, renderWorked } from "./worked.js";

/** The card of a finding. */
export function renderFinding(finding: FindingView, page: PageSoFar = emptyPage(false)): Html {
  const { id, topic, subject, question, verdict } = finding;
  return html`<article class="cw-finding cw-${verdict}" id="${id}"><div class="cw-top"><p class="cw-label">${topic} · ${subject}</p>
<h3>${question}</h3>${verdictBadge(verdict)}${answerPart(finding)}</div>${picturePart(finding)}${howWeKnow(finding, page)}</article>`;
}

/** What it is about and what acts on it, behind a disclosure. */
function picturePart({ drawing }: FindingView): Html {
  if (!drawing) return html``;
  return html`<details class="cw-how cw-drawn"><summary>Picture: ${drawing.title}</summary>${renderDrawing(drawing)}</details>`;
}

/** Sentence, bar, remedy, what to measure, cautions. */
function answerPart(finding: FindingView): Html {
  const { cautions, missing, remedies } = finding;
  const [remedy] = remedies;
  return html`<p class="cw-answer-text">${tieUnits(shortAnswer(finding))}</p>${renderRatio(finding)}${
    remedy && html`<p class="cw-remedy"><b>What would help:</b> ${tieUnits(remedy.words)}</p>`
  }${missing && renderMissing(missing)}${renderCautions({ items: cautions })}`;
}

/** Like findings. */
interface Kind {
  /** The worst of them. */
  readonly worst: FindingView;
  /** The others, by danger. */
  readonly others: readonly FindingView[];
}

/** Questions that hold are behind one disclosure where there are more than these. */
const holdsInSight = 6;

/** Several findings as a list of questions: what is not yes first, each part by danger. One alone is a card. */
export function renderFindings(findings: readonly FindingView[], page: PageSoFar = emptyPage(false)): Html {
  const [only] = findings;
  if (findings.length === 1 && only) return renderFinding(only, page);
  const kinds = kindsOf(findings);
  const open = kinds.filter(({ worst }) => worst.verdict !== "holds");
  const holding = kinds.filter(({ worst }) => worst.verdict === "holds");
  const inSight = holding.length <= holdsInSight ? holding : [];
  const drawn = (some: readonly Kind[]): readonly Html[] =>
    some.map((kind) => renderKind(kind, kind === open[0], page));
  return html`<div class="cw-kinds">${drawn([...open, ...inSight])}${
    inSight.length < holding.length &&
    html`<details class="cw-holding"><summary>${holding.length} questions hold</summary>${drawn(holding)}</details>`
  }</div>`;
}

function kindsOf(findings: readonly FindingView[]): readonly Kind[] {
  const kinds = new Map<string, FindingView[]>();
  for (const finding of byDanger(findings)) {
    kinds.set(finding.asks, [...(kinds.get(finding.asks) ?? []), finding]);
  }
  const all = [...kinds.values()].flatMap(([worst, ...others]) => (worst ? [{ worst, others }] : []));
  const yes = ({ worst }: Kind): number => (worst.verdict === "holds" ? 1 : 0);
  return all.sort((a, b) => yes(a) - yes(b));
}

function renderKind({ worst, others }: Kind, open: boolean, page: PageSoFar): Html {
  const { id, question, verdict, ratio } = worst;
  const used = ratio === undefined ? "" : percent(ratio);
  const of = others.length > 0 && html`<small>worst of ${others.length + 1}</small>`;
  return html`<details class="cw-kind cw-${verdict}" id="${id}"${open && html` open`}><summary><span class="cw-kind-question">${question} ${of}</span><span class="cw-kind-used">${used}</span>${verdictBadge(verdict)}</summary>
<h3 class="cw-print-only">${question}</h3>${answerPart(worst)}${picturePart(worst)}${others.length > 0 && likeTable(others, question)}${howWeKnow(worst, page)}${othersKnown(others, page, worst)}</details>`;
}

/** More disclosures than these are behind one of their own. */
const knownInSight = 2;

/** What else there is to say of the others of a kind. */
function othersKnown(others: readonly FindingView[], page: PageSoFar, worst: FindingView): readonly Html[] {
  const known = others.map((one) => howWeKnow(one, page, worst));
  return others.length > knownInSight
    ? [
        html`<details class="cw-how cw-more"><summary>How we know about the other ${others.length}</summary>${known}</details>`,
      ]
    : known;
}

/** The others of like findings, a row each; the worst is told above. */
function likeTable(findings: readonly FindingView[], heading: string): Html {
  const row = (finding: FindingView): Html => {
    const { id, subject, verdict, ratio } = finding;
    return html`<tr id="${id}"><td>${subject}</td><td>${tieUnits(shortAnswer(finding))}</td><td class="cw-right">${ratio === undefined ? "" : percent(ratio)}</td><td>${verdictBadge(verdict)}</td></tr>`;
  };
  return html`<div class="cw-scroll" tabindex="0" role="group" aria-label="${heading}"><table class="cw-table cw-like"><thead><tr><th scope="col">Of</th><th scope="col" class="cw-said">Answer</th><th scope="col" class="cw-right">Of the limit</th><th scope="col">Verdict</th></tr></thead><tbody>${findings.map(row)}</tbody></table></div>`;
}

function renderMissing({ how }: { readonly how: string }): Html {
  return html`<div class="cw-missing"><p><b>How:</b> ${how}</p></div>`;
}

/**
 * What else there is to say, behind a disclosure.
 *
 * @param like the worst of its kind, where that is another: what was said with it is not said again
 */
function howWeKnow(finding: FindingView, page: PageSoFar, like?: FindingView): Html {
  const { because, interval, subject, error } = finding;
  const shares = (interval?.shares ?? []).map(({ input, share }) => `${input} ${percent(share)}`);
  const notes = [
    ...further(finding),
    ...(shares.length > 0 ? [note("The scatter comes from", shares.join(", "))] : []),
    ...gains(finding),
    ...groundsOf(finding, like),
  ];
  const wrong = error === undefined ? [] : [note("What went wrong", error)];
  const lines = like ? because.filter((line) => !isTold(line, page)) : because;
  if (lines.length + notes.length + wrong.length === 0) return html``;
  const name = like ? html`: ${subject}` : html`<span class="cw-hidden"> about ${subject}</span>`;
  return html`<details class="cw-how"><summary>How we know${name}</summary>${wrong}${amounts(finding)}${lines.map((line) => renderWorked(line, page))}${notes}</details>`;
}

/** What is taken for granted, and where limit and working come from. */
function groundsOf({ assumes, source }: FindingView, like?: FindingView): readonly Html[] {
  const assumed = assumes.filter((one) => !like?.assumes.includes(one)).map((one) => note("Assumed", one));
  const sources = source.join("; ");
  const same = like?.source.join("; ") === sources;
  return [...assumed, ...(source.length > 0 && !same ? [note("Sources", sources)] : [])];
}

/** What the answer says beyond its short form, and what else would help. */
function further(finding: FindingView): readonly Html[] {
  const rest = furtherSentences(finding);
  const more = finding.remedies.slice(1).map(({ words }) => note("Also of help", words));
  return [...(rest.length > 0 ? [html`<p>${tieUnits(rest.join(" "))}</p>`] : []), ...more];
}

function gains({ remedies }: FindingView): readonly Html[] {
  const all = remedies.flatMap(({ gives }) => gives.map(({ meaning, value }) => `${meaning}: ${value}`));
  return all.length > 0 ? [note("What would help, worked out", all.join("; "))] : [];
}

function amounts({ demand, capacity }: FindingView): Html {
  if (!demand && !capacity) return html``;
  return html`<dl class="cw-amounts">${demand && amount(demand)}${capacity && amount(capacity)}</dl>`;
}

function amount({ meaning, value }: AmountView): Html {
  return html`<div><dt>${meaning}</dt><dd>${readableValue(value)}</dd></div>`;
}

function note(heading: string, text: string): Html {
  return html`<p class="cw-small"><b>${heading}:</b> ${text}</p>`;
}
