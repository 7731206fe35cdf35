/** The first page as HTML: what a builder needs in half a minute, then the chapters, then all that was asked. */
import type { Tier, Verdict } from "../../findings/index.js";
import { type Html, html } from "../html.js";
import { pictureSvg } from "../picture/index.js";
import { tieUnits } from "../text.js";
import { verdictBadge, verdictCount, verdictWords } from "../verdict.js";
import type { FindingView } from "../view.js";
import { type Fact, type FirstPage, type ToMeasure, type ToSettle, tierWords } from "./first-page.js";

/** Where the page leads to. */
export interface FirstPageLinks {
  /** The address of the place where a finding is explained; undefined where there is none. */
  readonly finding: (id: string) => string | undefined;
  /** The address of the page on which the case can be changed; undefined where there is none. */
  readonly change?: string;
}

/** The part above the chapters: picture, facts, what to settle and to measure. */
export function firstLookHtml(page: FirstPage, links: FirstPageLinks): Html {
  const { picture, settle, measure } = page;
  return html`<section class="cw cw-first" aria-label="The case at one look">
<div class="cw-first-case">${picture && pictureSvg(picture)}${releaseStamp(page)}${links.change !== undefined && html`<p class="cw-change"><a href="${links.change}">Change this case</a> and watch it answer.</p>`}<dl class="cw-facts">${page.facts.map(fact)}</dl></div>
<div class="cw-first-words">${
    settle.length > 0 &&
    html`<h2>Settle these first</h2><ol class="cw-settle">${settle.map((one) => toSettle(one, links))}</ol>`
  }${measure.length > 0 && html`<h2>Measure next</h2><ul class="cw-measure">${measure.map(toMeasure)}</ul>`}</div></section>`;
}

function releaseStamp({ released, release }: FirstPage): Html {
  const verdict: Verdict = released ? "holds" : "fails";
  return html`<p class="cw-stamp cw-${verdict}"><b>${released ? "RELEASED" : "NOT RELEASED"}</b> ${release}</p>`;
}

function fact({ name, value }: Fact): Html {
  return html`<div><dt>${name}</dt><dd>${tieUnits(value)}</dd></div>`;
}

function toSettle({ id, verdict, sentence, remedy }: ToSettle, { finding }: FirstPageLinks): Html {
  const address = finding(id);
  const words = html`${tieUnits(sentence)}`;
  return html`<li><span class="cw-settle-verdict cw-${verdict}">${verdictWords[verdict]}.</span> ${
    address === undefined ? words : html`<a href="${address}">${words}</a>`
  }${remedy !== "" && html` <span class="cw-remedy">${tieUnits(remedy)}</span>`}</li>`;
}

function toMeasure({ sentence, how }: ToMeasure): Html {
  return html`<li><b>${tieUnits(sentence)}</b>${how !== "" && html`<details><summary>How</summary>${tieUnits(how)}</details>`}</li>`;
}

const verdictOrder: readonly Verdict[] = ["fails", "broken", "unknown", "close", "holds"];

/** Everything that was asked: a table for each tier, with filters by verdict and topic that need no script. */
export function everythingAskedHtml({ asked }: FirstPage, links: FirstPageLinks): Html {
  if (asked.length === 0) return html``;
  const verdicts = verdictOrder.filter((verdict) => asked.some((one) => one.verdict === verdict));
  const topics = [...new Set(asked.map(({ topic }) => topic))];
  const tiers = (Object.keys(tierWords) as Tier[]).filter((tier) => asked.some((one) => one.tier === tier));
  return html`<section class="cw cw-asked" aria-label="Everything that was asked"><h2>Everything that was asked</h2>
<p>${countsWords(asked)}</p>
${filter("verdict", "Show", [["all", "all"], ...verdicts.map((one) => [one, verdictWords[one].toLowerCase()] as const)])}
${filter("topic", "About", [["all", "everything"], ...topics.map((one) => [one, one] as const)])}
${tiers.map((tier) =>
  tierTable(
    tier,
    asked.filter((one) => one.tier === tier),
    links,
  ),
)}</section>`;
}

/** Radio buttons in one row; the style sheet hides what was not chosen. */
function filter(name: string, label: string, choices: readonly (readonly [string, string])[]): Html {
  return html`<fieldset class="cw-filter"><legend>${label}</legend>${choices.map(
    ([value, words], i) =>
      html`<label><input type="radio" name="cw-${name}" value="${value}"${i === 0 && html` checked`}>${words}</label>`,
  )}</fieldset>`;
}

/** "45 questions: 3 do not hold, 2 are close, 40 hold." */
function countsWords(asked: readonly FindingView[]): string {
  const counts = verdictOrder
    .map((verdict) => [verdict, asked.filter((one) => one.verdict === verdict).length] as const)
    .filter(([, count]) => count > 0)
    .map(([verdict, count]) => verdictCount(verdict, count));
  return `${asked.length} questions: ${counts.join(", ")}.`;
}

function tierTable(tier: Tier, asked: readonly FindingView[], { finding }: FirstPageLinks): Html {
  const row = ({ id, question, subject, topic, verdict }: FindingView): Html => {
    const address = finding(id);
    return html`<tr class="cw-is-${verdict} cw-about-${topic}"><td>${
      address === undefined ? question : html`<a href="${address}">${question}</a>`
    }</td><td>${subject}</td><td>${verdictBadge(verdict)}</td></tr>`;
  };
  return html`<details class="cw-tier"><summary><span>${tierWords[tier]} <small>${countsWords(asked)}</small></span></summary>
<div class="cw-scroll" tabindex="0" role="group" aria-label="${tierWords[tier]}"><table class="cw-table"><thead><tr><th scope="col">Question</th><th scope="col">Of</th><th scope="col">Answer</th></tr></thead><tbody>${asked.map(row)}</tbody></table></div></details>`;
}
