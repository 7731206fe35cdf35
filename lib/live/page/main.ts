/** The live page: files in, three ways to change them, answers as they come. */
import type { BenchValue } from "../bench/view.js";
import type { FormEntry } from "../case-form.js";
import { changesTold, totalsTold } from "../changed.js";
import type { LiveData } from "../document.js";
import type { Asked, Share, Told } from "../messages.js";
import { Bench } from "./bench.js";
import { Hand } from "./hand.js";
import { download } from "./keep.js";
import { Keeping } from "./keeping.js";
import { type Changes, Measuring } from "./measuring.js";
import { rackBox } from "./rack-box.js";
import {
  answersBox,
  changedBox,
  formBox,
  keptCount,
  mayBeMended,
  openAnswers,
  problemBox,
  releaseWords,
  toldInFull,
  verdictBox,
} from "./render.js";
import { maySave, Saving } from "./saving.js";
import { answersOf, isSettled, newState, type State, type Texts } from "./state.js";
import { TextEditor } from "./text-editor.js";
import { drawPicture, letTurn } from "./turn.js";
import { isTypedIn } from "./typed.js";
import { Workers } from "./workers.js";
import { fitForPage, putStyles } from "./working.js";

function part<Kind extends HTMLElement = HTMLElement>(id: string): Kind {
  const found = document.getElementById(id);
  if (!found) throw new Error(`live page: no part "${id}"`);
  return found as Kind;
}

const data: LiveData = JSON.parse(part("live-data").textContent ?? "{}");
const state: State = newState(data.job, data.texts);
const inside = part<HTMLInputElement>("inside");

/** So many steps can be undone. */
const mostSteps = 300;

const say = (words: string): void => {
  for (const place of ["state", "bench-said"]) part(place).textContent = words;
};

/** What is drawn anew with the next frame. */
const wanted = new Set<() => void>();
function soon(draw: () => void): void {
  if (wanted.size === 0) {
    requestAnimationFrame(() => {
      const now = [...wanted];
      wanted.clear();
      for (const one of now) one();
    });
  }
  wanted.add(draw);
}

/** Puts markup in a place; what was open stays open, and the field or the line that was entered stays entered. */
function put(id: string, markup: unknown): void {
  const place = part(id);
  const open = openKeys(place);
  const entered = placeInFiles(document.activeElement);
  const line = keyOfLine(document.activeElement);
  const wasInside = place.contains(document.activeElement);
  place.innerHTML = String(markup);
  putStyles(place);
  for (const one of place.querySelectorAll<HTMLDetailsElement>("details[data-key]")) {
    const { key = "" } = one.dataset;
    if (open.has(key)) one.open = true;
    if (wasInside && key === line) one.querySelector("summary")?.focus();
  }
  if (!wasInside || entered === "") return;
  const fields = [...place.querySelectorAll<HTMLElement>("input, select")];
  fields.find((one) => placeInFiles(one) === entered)?.focus();
}

/** Where a field's text stands in the files. */
function placeInFiles(field: Element | null): string {
  if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) return "";
  const { place, file, row, column } = field.dataset;
  return place ?? (file === undefined ? "" : [file, row, column].join("\n"));
}

/** The key of a line that opens. */
function keyOfLine(line: Element | null): string | undefined {
  return line?.matches("summary")
    ? line.closest<HTMLDetailsElement>("details[data-key]")?.dataset.key
    : undefined;
}

/** What waits to be drawn until a field is left. */
const waiting = new Set<() => void>();

/** Whether to wait: something is typed there. */
function waits(place: HTMLElement, draw: () => void): boolean {
  const isTyped = isTypedIn(place);
  if (isTyped) waiting.add(draw);
  return isTyped;
}

function drawWaiting(): void {
  for (const draw of waiting) soon(draw);
  waiting.clear();
}

function openKeys(place: HTMLElement): ReadonlySet<string> {
  const open = place.querySelectorAll<HTMLDetailsElement>("details[data-key][open]");
  return new Set([...open].map((one) => one.dataset.key ?? ""));
}

const drawAnswers = (): void => {
  put("verdict", verdictBox(state));
  put("changed", changedBox(state));
  put("answers", answersBox(state));
  bench.judged();
};
const drawCase = (): void => drawPicture(part("picture"), state, inside.checked);
const drawForm = (): void => {
  const form = part("form");
  if (!part<HTMLDetailsElement>("fields").open || waits(form, drawForm)) return;
  const open = openKeys(form);
  put(
    "form",
    formBox(state.form, (place) => open.has(place)),
  );
};
const drawRack = (): void => {
  const isOpen = part<HTMLDetailsElement>("rack-part").open;
  if (!isOpen || !state.rack || waits(part("rack"), drawRack)) return;
  put("rack", rackBox(state.rack, state.rackEdit !== state.edit));
};
const drawProblems = (): void => {
  put("notice", problemBox(state));
  editor.tell(state.problems);
};
const drawTools = (): void => {
  part<HTMLButtonElement>("undo").disabled = state.past.length === 0;
  part<HTMLButtonElement>("redo").disabled = state.future.length === 0;
};

/** Takes note of what was so before an edit, and counts it. */
function beginEdit(): void {
  if (isSettled(state)) state.before = { answers: answersOf(state), totals: state.totals };
  state.edit += 1;
  state.since = performance.now();
  state.changes = [];
  state.done.clear();
  state.spare = [];
  state.lent.clear();
  state.workings.clear();
  state.mendings.clear();
  document.body.dataset.edit = String(state.edit);
  soon(drawAnswers);
  soon(drawRack);
  soon(drawTools);
  say("Working it out.");
}

function remember(): void {
  state.past.push(state.texts);
  if (state.past.length > mostSteps) state.past.shift();
  state.future.length = 0;
}

/** Files as they are now, to both workers. */
function askAll(): void {
  const asked: Asked = { kind: "files", edit: state.edit, texts: state.texts };
  for (const share of ["quick", "deep"] as const) workers.ask(share, asked);
  showFiles();
}

/** Tells whoever shows or keeps the files how they are now. */
function showFiles(): void {
  keeping.keep(state.texts);
  editor.show(state.texts);
  saving?.show(state.texts);
}

/** Other texts in place of these. */
function setTexts(texts: Texts): void {
  remember();
  state.texts = texts;
  beginEdit();
  askAll();
}

function change(changes: Changes): void {
  if (changes.length === 0) return;
  remember();
  beginEdit();
  workers.ask("quick", { kind: "change", edit: state.edit, changes });
}

function step(from: Texts[], to: Texts[]): void {
  const texts = from.pop();
  if (!texts) return;
  to.push(state.texts);
  state.texts = texts;
  beginEdit();
  askAll();
}

function heard(message: Told): void {
  if (message.kind === "working") {
    state.workings.set(message.id, fitForPage(message.html));
    return void soon(drawAnswers);
  }
  if (message.kind === "papers") {
    return void download(`${state.job}-recipe.html`, new Blob([message.html], { type: "text/html" }));
  }
  if (message.kind === "held") return void hand.heard(message.words);
  if (message.kind === "handed") {
    // Kept under what they rest on: whatever the edit, they are right.
    const other = message.share === "quick" ? "deep" : "quick";
    return void workers.ask(other, { kind: "taken", answers: message.answers });
  }
  if (message.kind === "judged" || message.kind === "as-built") return void bench.heard(message);
  if (message.edit !== state.edit) return;
  heardOfEdit(message);
}

/** What belongs to the newest edit. */
function heardOfEdit(
  message: Exclude<Told, { kind: "working" | "papers" | "held" | "handed" | "judged" | "as-built" }>,
): void {
  const { edit } = message;
  switch (message.kind) {
    case "texts":
      state.texts = message.texts;
      workers.ask("deep", { kind: "files", edit, texts: message.texts });
      showFiles();
      if (savesNext) saving?.save();
      savesNext = false;
      return;
    case "refused":
      savesNext = false;
      state.past.pop();
      askAll();
      return void say(message.words);
    case "problems":
      state.problems = message.problems;
      say("The files do not fit together.");
      document.body.dataset.settled = String(edit);
      measuring.changed();
      return void soon(drawProblems);
    case "case":
      state.problems = [];
      state.view = message.case;
      part("title").textContent = message.case.name;
      hand.show(message.case);
      bench.changed();
      measuring.changed();
      return void soon(drawProblems);
    case "bench":
      return void bench.heard(message);
    case "measuring":
      return void measuring.heard(message.measuring);
    case "form":
      state.form = message.form;
      return void soon(drawForm);
    case "rack":
      state.rack = message.rack;
      state.rackEdit = edit;
      return void soon(drawRack);
    case "mended":
      state.mendings.set(message.id, { found: message.mendings, isWhole: message.isWhole });
      return void soon(drawAnswers);
    case "spare":
      state.spare = message.questions;
      return void handOut();
    case "solids":
      state.solids = message.solids;
      return void soon(drawCase);
    case "totals":
      state.totals = message.totals;
      state.totalsEdit = edit;
      break;
    case "answers":
      for (const answer of message.answers) {
        state.answers.set(answer.id, { answer, edit, question: message.question });
      }
      break;
    case "first":
      for (const answer of message.answers) {
        if (state.answers.get(answer.id)?.edit === edit) continue;
        state.answers.set(answer.id, { answer, edit, question: message.question, isFirst: true });
      }
      break;
    case "done":
      finish(message.share, edit, message.questions);
  }
  tellChanges();
  soon(drawAnswers);
}

/** Who has nothing to do takes one of the questions that are left. */
function handOut(): void {
  for (const share of state.done) {
    const [question, ...rest] = state.spare;
    if (question === undefined) return;
    state.spare = rest;
    state.done.delete(share);
    state.lent.set(share, question);
    workers.ask(share, { kind: "also", edit: state.edit, question });
  }
}

/** A share is done: what it no longer asks goes. */
function finish(share: Share, edit: number, questions: readonly string[]): void {
  for (const [id, one] of state.answers) {
    if (one.edit !== edit && questions.includes(one.question)) state.answers.delete(id);
  }
  state.done.add(share);
  state.lent.delete(share);
  handOut();
  if (!isSettled(state)) return;
  for (const [id, one] of state.answers) if (one.edit !== edit) state.answers.delete(id);
  const seconds = ((performance.now() - state.since) / 1000).toFixed(1);
  say(`All answers after ${seconds} s.`);
  document.body.dataset.settled = String(edit);
  soon(drawCase);
  for (const { answer } of openAnswers(state).slice(0, toldInFull)) askWhatMends(answer.id);
}

/** Has it tried what mends an answer, once for each edit: by the worker that edits do not come to first. */
function askWhatMends(id: string): void {
  if (!isSettled(state) || !mayBeMended(state, id) || state.mendings.has(id)) return;
  state.mendings.set(id, { found: [], isWhole: false });
  workers.ask("deep", { kind: "mend", edit: state.edit, id });
  soon(drawAnswers);
}

/** Takes what mends an answer, or locks what it would move. */
function takeMending({ dataset }: HTMLElement): void {
  const { mends = "", number = "", lock } = dataset;
  if (lock !== undefined) {
    remember();
    beginEdit();
    workers.ask("quick", { kind: "lock", edit: state.edit, place: lock });
    return;
  }
  const mending = state.mendings.get(mends)?.found[Number(number)];
  if (mending) change(mending.changes);
}

function tellChanges(): void {
  const { before, edit, answers } = state;
  const fresh = new Map(
    [...answers].filter(([, one]) => one.edit === edit).map(([id, one]) => [id, one.answer]),
  );
  const known = isSettled(state)
    ? before.answers
    : new Map([...before.answers].filter(([id]) => fresh.has(id)));
  const totals = state.totalsEdit === edit ? totalsTold(before.totals, state.totals) : [];
  state.changes = [...totals, ...changesTold(known, fresh)];
}

const workers = new Workers(data.worker, data.job, heard, (share, words) => {
  say(`Part of the work stopped (${words}); it is begun again.`);
  const lent = state.lent.get(share);
  if (lent !== undefined) state.spare = [lent, ...state.spare];
  state.lent.delete(share);
  workers.begin(share);
  workers.ask(share, { kind: "files", edit: state.edit, texts: state.texts });
});
const hand = new Hand(part("hand"), {
  change,
  say,
  hold: (opening) => workers.ask("quick", { kind: "held", opening }),
});
const editor = new TextEditor(part("texts"), setTexts);
const fileHost = { setTexts, say, texts: () => state.texts };
const keeping = new Keeping(part("keeping"), part("notice"), data, fileHost);
const saving = maySave(data) ? new Saving(part("tools"), part("notice"), data, fileHost) : undefined;

const measuring = new Measuring(part("measuring-part"), part("measuring"), {
  ask: () => workers.ask("quick", { kind: "measuring" }),
  change,
  problems: () => state.problems,
});

/** Whether the files are saved as soon as the next change is made. */
let savesNext = false;

/** Puts the figures of the bench into as-built.csv, among the files of the case. */
function takeFigures(values: readonly BenchValue[]): void {
  remember();
  beginEdit();
  workers.ask("quick", { kind: "as-built", edit: state.edit, values });
}
function takeAndSave(values: readonly BenchValue[]): void {
  savesNext = true;
  takeFigures(values);
}
const bench = new Bench(part("bench"), data.job, {
  ask: (message) => workers.ask("quick", message),
  take: takeFigures,
  ...(saving ? { save: takeAndSave } : {}),
  download: (name, text) => download(name, new Blob([text], { type: "text/csv" })),
  release: () => ({ words: releaseWords(state), isKept: keptCount(state) > 0 }),
});

/** What a field of the form asks for. */
function changeOfField({ dataset, value }: HTMLInputElement | HTMLSelectElement): Changes {
  const at = dataset.place ?? "";
  const entry = entryAt(state.form, at);
  const to = value.trim();
  if (!entry || to === (entry.value ?? "")) return [];
  return to === "" ? [{ kind: "remove", at }] : [{ kind: "set", at, to }];
}

function entryAt(entries: readonly FormEntry[], place: string): FormEntry | undefined {
  for (const entry of entries) {
    if (entry.place === place) return entry;
    const found = place.startsWith(`${entry.place}.`) ? entryAt(entry.inner ?? [], place) : undefined;
    if (found) return found;
  }
  return undefined;
}

function listen(): void {
  part("undo").addEventListener("click", () => step(state.past, state.future));
  part("redo").addEventListener("click", () => step(state.future, state.past));
  part("papers").addEventListener("click", () => {
    say("Writing the recipe.");
    workers.ask("deep", { kind: "papers" });
  });
  document.addEventListener("keydown", (event) => {
    const isField = event.target instanceof HTMLTextAreaElement || event.target instanceof HTMLInputElement;
    if (isField || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
    event.preventDefault();
    if (event.shiftKey) step(state.future, state.past);
    else step(state.past, state.future);
  });
  part("fields").addEventListener(
    "toggle",
    ({ target }) => {
      const block = target as HTMLDetailsElement;
      const isNew =
        block.dataset.key === undefined ||
        block.querySelector(":scope > .lv-field, :scope > .lv-block") === null;
      if (block.open && isNew) drawForm();
    },
    true,
  );
  part("rack-part").addEventListener("toggle", drawRack);
  part("rack").addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement)) return;
    const { file = "", row = "", column = "" } = target.dataset;
    target.defaultValue = target.value;
    change([{ kind: "set", at: { file, row, column }, to: target.value.trim() }]);
  });
  part("form").addEventListener("change", ({ target }) => {
    if (!(target instanceof HTMLInputElement || target instanceof HTMLSelectElement)) return;
    if (target instanceof HTMLInputElement) target.defaultValue = target.value;
    change(changeOfField(target));
  });
  for (const id of ["rack", "form"]) part(id).addEventListener("focusout", drawWaiting);
  part("answers").addEventListener("click", ({ target }) => {
    const button = target instanceof Element && target.closest<HTMLElement>("[data-mends], [data-lock]");
    if (button) takeMending(button);
  });
  part("answers").addEventListener(
    "toggle",
    ({ target }) => {
      const { open, dataset } = target as HTMLDetailsElement;
      if (open && dataset.key?.startsWith("answer ")) askWhatMends(dataset.key.slice("answer ".length));
      const id = dataset.working;
      const known = id === undefined ? undefined : state.answers.get(id);
      if (!open || id === undefined || !known || state.workings.has(id)) return;
      for (const share of ["quick", "deep"] as const) workers.ask(share, { kind: "working", id });
    },
    true,
  );
  inside.addEventListener("change", drawCase);
  letTurn(part("picture"), part("sights"), () => soon(drawCase));
}

/** What the case answered where this page was written, until it is worked out here. */
function showPassedOn({ answers, totals }: NonNullable<LiveData["passedOn"]>): void {
  for (const answer of answers) state.answers.set(answer.id, { answer, edit: -1, question: "" });
  state.totals = totals;
  part<HTMLDetailsElement>("rack-part").open = true;
}

listen();
if (data.passedOn) showPassedOn(data.passedOn);
document.body.dataset.edit = "0";
askAll();
drawAnswers();
