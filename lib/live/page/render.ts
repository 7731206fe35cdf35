/** State to markup: figures, what changed, answers, problems, the form. */
import { byDanger, keepsFromRelease, type Tier } from "../../findings/finding.js";
import type { Mending } from "../../improve/index.js";
import { type Html, html, trusted } from "../../page/html.js";
import { furtherSentences, shortAnswer } from "../../page/short-answer.js";
import { tieUnits } from "../../page/text.js";
import { ratioWords, verdictBadge } from "../../page/verdict.js";
import { showProblem } from "../../problem.js";
import type { FormEntry } from "../case-form.js";
import { isSettled, type KeptAnswer, type Mendings, type State } from "./state.js";

const tierWords: Readonly<Record<Tier, string>> = {
  safety: "Somebody can be hurt",
  strength: "Something can break",
  handling: "Harder to handle than guidance allows",
  feel: "Comfort, looks and marks",
};

/** What does not hold, the worst first. */
export function openAnswers({ answers }: State): readonly KeptAnswer[] {
  return inOrder([...answers.values()].filter(({ answer }) => answer.verdict !== "holds"));
}

function inOrder(answers: readonly KeptAnswer[]): readonly KeptAnswer[] {
  return byDanger(answers.map((kept) => ({ ...kept.answer, kept }))).map(({ kept }) => kept);
}

/** Whether it may be built, in a sentence. */
export function releaseWords(state: State): string {
  const kept = keptCount(state);
  if (kept > 0)
    return `Not to be built yet: ${kept} ${kept === 1 ? "question" : "questions"} of safety or strength not answered with yes.`;
  return isReleased(state)
    ? "May be built: every question of safety and strength is answered with yes."
    : "Questions of safety and strength are still being answered.";
}

/** How many questions keep it from being built. */
export function keptCount({ answers }: State): number {
  return [...answers.values()].filter(({ answer }) => keepsFromRelease(answer)).length;
}

function isReleased(state: State): boolean {
  return isSettled(state) && state.problems.length === 0 && keptCount(state) === 0;
}

/** Whether it may be built, and the figures of the whole case. */
export function verdictBox(state: State): Html {
  const { totals } = state;
  const look = keptCount(state) > 0 ? "lv-kept" : isReleased(state) ? "lv-released" : "lv-open";
  const rows: readonly (readonly [string, string])[] = totals
    ? [
        ["Size over metal", totals.size],
        ["Weight", totals.mass],
        ...totals.sections.map(({ name, mass }) => [`of ${name}`, mass] as const),
        ["Material", totals.cost],
        ["Bench time", totals.hours],
      ]
    : [];
  const isStale = state.totalsEdit !== state.edit;
  return html`<div class="lv-box ${look}"><h2>${releaseWords(state)}</h2><dl class="lv-totals ${isStale && "lv-stale"}">${rows.map(
    ([what, value]) => html`<dt>${what}</dt><dd>${value}</dd>`,
  )}</dl>${(totals?.lacking ?? []).map((one) => html`<p>${one}</p>`)}</div>`;
}

/** So many changes are told; the rest is counted. */
const mostChanges = 8;

/** What the last edit changed. */
export function changedBox({ changes, past }: State): Html {
  if (past.length === 0) return html``;
  const more = changes.length - mostChanges;
  return html`<div class="lv-box"><h2>Since the last change</h2>${
    changes.length === 0
      ? html`<p>No answer has changed so far.</p>`
      : html`<ul>${changes.slice(0, mostChanges).map(({ words }) => html`<li>${words}</li>`)}</ul>`
  }${more > 0 && html`<p>And ${more} more that moved less.</p>`}</div>`;
}

/** So many answers are told in full; of the others the question stands, and a line opens to the rest. */
export const toldInFull = 3;

/** So many changes that mend an answer are shown. */
const mostMendings = 3;

/** Whether changes are tried for an answer: it does not hold, and all that it rests on is known. */
export function mayBeMended({ answers }: State, id: string): boolean {
  const verdict = answers.get(id)?.answer.verdict;
  return verdict === "fails" || verdict === "close";
}

/** Every answer: what does not hold by tier, a caution with the first answer that it belongs to; what holds behind one line. */
export function answersBox(state: State): Html {
  const open = openAnswers(state);
  const good = inOrder([...state.answers.values()].filter(({ answer }) => answer.verdict === "holds"));
  const cautioned = new Set<string>();
  const tiers = (Object.keys(tierWords) as Tier[]).map((tier) => {
    const own = open.filter(({ answer }) => answer.tier === tier);
    return (
      own.length > 0 &&
      html`<h3 class="lv-tier">${tierWords[tier]}</h3>${own.map((one) => answerOf(state, one, cautioned, open.indexOf(one) + 1))}`
    );
  });
  return html`<div class="lv-box"><h2>What does not hold, or is not known</h2>${
    open.length === 0 ? html`<p>Nothing so far.</p>` : tiers
  }</div><div class="lv-box"><details data-key="holds"><summary>${good.length} answers hold</summary>${good.map(
    (one) => answerOf(state, one, cautioned),
  )}</details></div>`;
}

/** Question, short answer, what would help or is to be measured; the rest and its working behind one line. */
function answerOf(state: State, kept: KeptAnswer, cautioned: Set<string>, number = 0): Html {
  const { answer, edit, isFirst = false } = kept;
  const { id, question, verdict } = answer;
  const isStale = edit !== state.edit;
  const head = html`${number > 0 && html`<b>${number}</b> `}${verdictBadge(verdict)} <b>${question}</b>${isStale && html` (before the last change)`}${isFirst && html` (first value: alone on the bench; how the box holds it follows)`}`;
  const isFull = number > 0 && number <= toldInFull;
  const inside = insideOf(state, kept, cautioned);
  return html`<article class="lv-answer ${isStale && "lv-stale"}" data-id="${id}">${
    isFull
      ? html`<p>${head}</p>${inside}`
      : html`<details data-key="answer ${id}"><summary>${head}</summary>${inside}</details>`
  }</article>`;
}

function insideOf({ workings, mendings }: State, { answer }: KeptAnswer, cautioned: Set<string>): Html {
  const { id, remedies, missing, cautions } = answer;
  const [first, ...others] = remedies;
  const fresh = cautions.filter((one) => !cautioned.has(one));
  for (const one of fresh) cautioned.add(one);
  const of = ratioWords({ ...answer, because: [], source: [] });
  return html`<p>${tieUnits(shortAnswer(answer))}${of !== "" && html` <small>${of}</small>`}</p>${first && html`<p><b>What would help:</b> ${tieUnits(first.words)}${gainsOf(first)}</p>`}${fresh.map(
    (one) => html`<p><small>Caution: ${one}</small></p>`,
  )}${mendingsBox(id, mendings.get(id))}<details data-key="working ${id}" data-working="${id}"><summary>More, and its working</summary>${
    missing && html`<p><b>How:</b> ${missing.how}</p>`
  }${others.map((one) => html`<p><b>Also of help:</b> ${tieUnits(one.words)}${gainsOf(one)}</p>`)}<p>${tieUnits(furtherSentences(answer).join(" "))}</p><div>${trusted(workings.get(id) ?? "")}</div></details>`;
}

/** What was tried and mends an answer: what it costs, a button that takes it and one that locks what it would move. */
function mendingsBox(id: string, mendings: Mendings | undefined): Html {
  if (!mendings) return html``;
  const { found, isWhole } = mendings;
  const state = !isWhole
    ? "Trying what mends it."
    : found.length === 0
      ? "No single change that is known here mends it."
      : "";
  return html`<div class="lv-mendings">${found.length > 0 && html`<p><b>Tried: with each of these it holds.</b></p>`}<ul>${found
    .slice(0, mostMendings)
    .map((one, i) => mendingOf(id, one, i))}</ul>${state !== "" && html`<p>${state}</p>`}</div>`;
}

function mendingOf(id: string, { words, figures, unpriced, lock }: Mending, i: number): Html {
  const { cost, mass, time } = figures;
  const moves = [cost, mass, time].some(({ more }) => more !== "the same");
  const more = moves
    ? `Cost ${cost.more}, weight ${mass.more}, bench time ${time.more}.`
    : "It costs, weighs and takes the same.";
  return html`<li>${tieUnits(words)} <small>${tieUnits(more)}${unpriced !== undefined && html` Not priced by your tables: ${unpriced}.`}</small><br>
<button type="button" data-mends="${id}" data-number="${i}">Take this change</button>${
    lock !== undefined && html` <button type="button" data-lock="${lock}">Keep ${lock} as it is</button>`
  }</li>`;
}

function gainsOf({ gives = [] }: KeptAnswer["answer"]["remedies"][number]): string {
  return gives.map(({ meaning, value }) => ` ${meaning}: ${value}.`).join("");
}

/** Everything that is wrong with the files. */
export function problemBox({ problems }: State): Html {
  if (problems.length === 0) return html``;
  return html`<div class="lv-problem"><p><b>The files do not fit together as they are.</b> The answers below are those from before.</p><ul>${problems
    .slice(0, 12)
    .map((one) => html`<li>${showProblem(one)}</li>`)}</ul>${
    problems.length > 12 && html`<p>And ${problems.length - 12} more.</p>`
  }</div>`;
}

/** The form; only what stands in an open block is there. */
export function formBox(entries: readonly FormEntry[], isOpen: (place: string) => boolean): Html {
  return html`${entries.map((entry) => entryBox(entry, isOpen))}`;
}

function entryBox(entry: FormEntry, isOpen: (place: string) => boolean): Html {
  const { place, word, doc, inner } = entry;
  if (!inner) return fieldBox(entry);
  const name = /^\d+$/.test(word) ? `place ${Number(word) + 1}` : word;
  return html`<details class="lv-block" data-key="block ${place}"><summary>${name}</summary>${doc !== "" && html`<p>${doc}</p>`}${isOpen(`block ${place}`) && formBox(inner, isOpen)}</details>`;
}

function fieldBox({ place, word, doc, expected, choices, value = "", needed }: FormEntry): Html {
  const id = `field-${place.replace(/\W/g, "-")}`;
  const words = choices && !choices.includes(value) ? [value, ...choices] : choices;
  const input = words
    ? html`<select id="${id}" data-place="${place}">${words.map((one) =>
        one === value
          ? html`<option selected value="${one}">${one}</option>`
          : html`<option value="${one}">${one}</option>`,
      )}</select>`
    : html`<input type="text" id="${id}" data-place="${place}" value="${value}">`;
  const hint = [doc, expected && !choices ? `Expected: ${expected}.` : "", needed ? "" : "May be left out."];
  return html`<div class="lv-field"><label for="${id}">${word}</label>${input}<small>${hint.filter(Boolean).join(" ")}</small></div>`;
}
