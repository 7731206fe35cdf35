/** The bench as markup: one step, the list of all, clocks, what becomes of a figure. */
import { type Html, html, trusted } from "../../page/html.js";
import { verdictBadge } from "../../page/verdict.js";
import { clockNames, clockWords, type RunningClock } from "../bench/clock.js";
import { type BenchNotes, measuredCount, tickName, valueName } from "../bench/notes.js";
import type { BenchMeasure, BenchStep, BenchView } from "../bench/view.js";
import type { AnswerView } from "../messages.js";

/** What became of a figure. */
export interface Judgement {
  /** Answers about it. */
  readonly answers: readonly AnswerView[];
  /** Why it cannot be read; empty where it can. */
  readonly trouble: string;
}

/**
 * One step, with what was ticked and measured there.
 *
 * @param cameFrom place of the step that sent here
 */
export function stepBox(view: BenchView, step: BenchStep, notes: BenchNotes, cameFrom?: number): Html {
  const { section, heading, words, about, ticks, measures, sheets, clocks } = step;
  const isDone = notes.done.includes(step.id);
  const isMeasured = measures.length > 0;
  return html`${cameFrom !== undefined && html`<button type="button" data-go="${cameFrom}">Back to step ${cameFrom + 1}</button>`}<p class="lv-bench-under">${section}${heading !== section && `. ${heading}`}</p>
<h2 id="bench-words" tabindex="-1">${isDone && html`<span class="lv-bench-done">Done.</span> `}${isMeasured ? "Measure, and type it in." : words}</h2>${
    about.length > 0 &&
    html`<dl class="lv-bench-about">${about.map(([what, cell]) => html`<dt>${what}</dt><dd>${cell}</dd>`)}</dl>`
  }${measures.map((one, i) => measureBox(one, i, notes))}${isMeasured && html`<p>${words}</p>`}${ticks.map(
    (one) => {
      const name = tickName(step.id, one);
      return html`<label class="lv-bench-tick"><input type="checkbox" data-tick="${name}"${notes.done.includes(name) && trusted(" checked")}> ${one}</label>`;
    },
  )}${clocks.map((i) => startButton(view, i))}${
    sheets.some((i) => view.sheets[i]?.includes("<svg")) &&
    html`<button type="button" data-do="larger">Make the drawing larger or smaller</button>`
  }${sheets.map(
    (i) =>
      html`<div class="lv-sheet" role="group" aria-label="Drawing or table of this step" tabindex="0">${trusted(view.sheets[i] ?? "")}</div>`,
  )}`;
}

function startButton({ clocks }: BenchView, i: number): Html | false {
  const clock = clocks[i];
  if (!clock) return false;
  return html`<button type="button" class="lv-bench-start" data-clock="${i}">Start the ${clockNames[clock.what]} of ${clock.adhesive}: ${clock.words}</button>`;
}

function measureBox({ key, label, unit }: BenchMeasure, i: number, notes: BenchNotes): Html {
  const name = valueName(key);
  const value = notes.values.find(([one]) => one === name)?.[1].text ?? "";
  const isSaid = key.at === undefined || key.at.toLowerCase() === label.toLowerCase();
  const where = isSaid ? "" : `, ${key.at}`;
  return html`<div class="lv-bench-measure"><label for="bench-value-${i}">${label}: ${key.what}${where}</label><span class="lv-bench-entry"><input type="text" id="bench-value-${i}" data-measure="${i}" value="${value}" autocomplete="off"${unit !== "in" && trusted(' inputmode="decimal"')} aria-describedby="bench-judged-${i}"> ${unit}</span><div id="bench-judged-${i}" role="status"></div></div>`;
}

/** What becomes of a figure: right, or how far out, what to do, and the step to go back to. */
export function judgementBox({ answers, trouble }: Judgement, madeAt: number | undefined): Html {
  if (trouble !== "") return html`<p class="lv-problem">${trouble}</p>`;
  if (answers.length === 0) return html`<p>Written down. Nothing is planned that it could be out of.</p>`;
  return html`${answers.map(({ verdict, demand, capacity, remedies }) => {
    const isRight = verdict === "holds" || verdict === "close";
    const off = [demand, capacity].flatMap((one) => (one ? [`${one.value} ${one.meaning}`] : [])).join(", ");
    return html`<p>${verdictBadge(verdict)} <b>${isRight ? "Right" : "Out"}: ${off}.</b>${!isRight && remedies.map(({ words }) => ` ${words}`)}</p>${
      !isRight &&
      madeAt !== undefined &&
      html`<button type="button" data-see="${madeAt}">See step ${madeAt + 1}</button>`
    }`;
  })}`;
}

/** Clocks that run, the one that ends first above. */
export function clocksBox(running: readonly RunningClock[], now: number): Html {
  const inOrder = [...running].sort((a, b) => a.ends - b.ends);
  return html`${inOrder.map((clock) => {
    const over = clock.ends <= now;
    const name = `${clock.adhesive}, ${clockNames[clock.what]}`;
    return html`<p class="lv-bench-clock ${over && "lv-bench-over"}"><span><b>${name}</b>: ${clockWords(clock, now)}</span> <button type="button" data-away="${running.indexOf(clock)}" aria-label="Put away: ${name}">Put away</button></p>`;
  })}`;
}

/** Every heading with how much of it is done, what was measured, and the ways to give it back. */
export function listBox(view: BenchView, notes: BenchNotes, age: string, saves: boolean): Html {
  const count = measuredCount(notes);
  const done = view.steps.filter(({ id }) => notes.done.includes(id)).length;
  return html`<h2 id="bench-words" tabindex="-1">${done} of ${view.steps.length} steps are done</h2>${
    age !== "" && html`<p>Ticks, figures and clocks are a draft in this browser. It was changed ${age}.</p>`
  }<p><b>${count} ${count === 1 ? "figure is" : "figures are"} measured.</b> Given back, they are the table as-built.csv.</p><p class="lv-bench-row">${
    saves &&
    html`<button type="button" data-do="save" ${count === 0 && trusted("disabled")}>Save in the job's folder</button>`
  } <button type="button" data-do="download" ${count === 0 && trusted("disabled")}>Download as-built.csv</button> <button type="button" data-do="take" ${count === 0 && trusted("disabled")}>Take it into the case</button></p><ol class="lv-bench-list">${headings(
    view,
  ).map(({ section, heading, first, steps }) => {
    const done = steps.filter(({ id }) => notes.done.includes(id)).length;
    const to = steps.findIndex(({ id }) => !notes.done.includes(id));
    return html`<li><button type="button" data-go="${first + Math.max(0, to)}"><span>${heading === section ? section : heading}</span> <span>${done === steps.length ? "done" : `${done} of ${steps.length}`}</span></button></li>`;
  })}</ol><p class="lv-bench-row"><button type="button" data-do="forget" ${notes.at === 0 && trusted("disabled")}>Throw the draft away</button></p>`;
}

/** Steps that follow each other under one heading. */
function headings({ steps }: BenchView) {
  const runs: { section: string; heading: string; first: number; steps: BenchStep[] }[] = [];
  steps.forEach((step, first) => {
    const last = runs.at(-1);
    if (last?.heading === step.heading && last.section === step.section) last.steps.push(step);
    else runs.push({ section: step.section, heading: step.heading, first, steps: [step] });
  });
  return runs;
}
