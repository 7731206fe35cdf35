/** The live page at the bench: a step a screen, for a phone, with ticks, figures and clocks that stay when it sleeps. */
import { html } from "../../page/html.js";
import { clockNames, endedBetween, started } from "../bench/clock.js";
import {
  type BenchNotes,
  noNotes,
  notesIn,
  readTogether,
  ticked,
  valued,
  valueName,
} from "../bench/notes.js";
import type { BenchStep, BenchValue, BenchView } from "../bench/view.js";
import type { Asked, Told } from "../messages.js";
import { clocksBox, judgementBox, listBox, stepBox } from "./bench-markup.js";
import { ageWords } from "./keep.js";

/** What the bench asks of the page. */
export interface BenchHost {
  /** Asks the worker that answers at once. */
  ask(message: Asked): void;
  /** Puts the figures into the files of the case. */
  take(values: readonly BenchValue[]): void;
  /** Puts them there and saves; absent where nobody saves. */
  readonly save?: (values: readonly BenchValue[]) => void;
  /** Hands a file to the browser's downloads. */
  download(name: string, text: string): void;
  /** Whether it may be built, in a sentence, and whether something keeps it from being. */
  release(): { readonly words: string; readonly isKept: boolean };
}

/** Part of the address that opens the bench. */
export const benchAddress = "#bench";

/** How long a hand rests before what it typed is judged, ms. */
const typingRest = 350;

/** The part of the page that is used at the bench. */
export class Bench {
  readonly #place: HTMLElement;
  readonly #host: BenchHost;
  readonly #storage: string;
  #view: BenchView | undefined;
  #notes: BenchNotes;
  #shown: number | "list" = "list";
  #looked: number = Date.now();
  #cameFrom: number | undefined;
  #typing: ReturnType<typeof setTimeout> | undefined;

  constructor(place: HTMLElement, job: string, host: BenchHost) {
    this.#place = place;
    this.#host = host;
    this.#storage = `casewright bench of ${job}`;
    this.#notes = this.#kept();
    this.#part("bench-parts").innerHTML = String(
      html`<header class="lv-bench-top"><a href="#" id="bench-back">The case</a><p id="bench-count" role="status">Writing the steps.</p><button type="button" data-do="list">All steps</button></header><h1 id="bench-title" class="lv-bench-title">At the bench</h1><p id="bench-release"></p><div id="bench-alarm" role="alert"></div><div id="bench-clocks"></div><div id="bench-step"></div><nav class="lv-bench-foot" aria-label="Steps"><button type="button" data-do="before">Before</button><button type="button" data-do="tick" aria-pressed="false">Done</button><button type="button" data-do="next">Next</button></nav>`,
    );
    place.addEventListener("click", ({ target }) => {
      const button = target instanceof Element ? target.closest("button") : null;
      if (button) this.#pressed(button.dataset);
    });
    place.addEventListener("change", ({ target }) => {
      if (target instanceof HTMLInputElement && target.dataset.tick !== undefined)
        this.#keep(ticked(this.#notes, target.dataset.tick, target.checked));
    });
    place.addEventListener("input", ({ target }) => {
      if (target instanceof HTMLInputElement && target.dataset.measure !== undefined) this.#typed(target);
    });
    document.addEventListener("keydown", (event) => {
      if (!this.isOpen || event.target instanceof HTMLInputElement) return;
      if (event.key === "ArrowRight") this.#go(1);
      if (event.key === "ArrowLeft") this.#go(-1);
    });
    document.addEventListener("visibilitychange", () => this.#tick());
    addEventListener("hashchange", () => this.#opened());
    addEventListener("storage", ({ key }) => {
      if (key !== this.#storage) return;
      this.#notes = this.#kept();
      this.#draw();
    });
    setInterval(() => this.#tick(), 1000);
    this.#opened();
  }

  /** Whether the bench is what is shown. */
  get isOpen(): boolean {
    return location.hash === benchAddress;
  }

  /** The case was read anew: its steps may be others. */
  changed(): void {
    this.#view = undefined;
    if (this.isOpen) this.#host.ask({ kind: "bench" });
  }

  /** Whether it may be built may have changed. */
  judged(): void {
    if (!this.isOpen) return;
    const { words, isKept } = this.#host.release();
    const place = this.#part("bench-release");
    place.textContent = words;
    place.className = isKept ? "lv-kept" : "";
    place.hidden = !isKept && this.#shown !== "list";
  }

  /** Takes what a worker told. */
  heard(message: Extract<Told, { kind: "bench" | "judged" | "as-built" }>): void {
    if (message.kind === "bench") return void this.#written(message.bench);
    if (message.kind === "judged") return void this.#judged(message);
    if (message.trouble === "") return void this.#host.download("as-built.csv", message.text);
    this.#part("bench-alarm").textContent = message.trouble;
  }

  #written(bench: Extract<Told, { kind: "bench" }>["bench"]): void {
    if ("refused" in bench) {
      this.#part("bench-count").textContent = `There are no steps: ${bench.refused}.`;
      return;
    }
    this.#view = bench;
    const last = bench.steps.findIndex(({ id }) => id === this.#notes.step);
    this.#shown = last >= 0 ? last : this.#notes.at > 0 ? "list" : 0;
    this.#draw();
  }

  #judged({ name, answers, trouble }: Extract<Told, { kind: "judged" }>): void {
    const step = this.#step();
    const i = step?.measures.findIndex(({ key }) => valueName(key) === name) ?? -1;
    if (i < 0) return;
    this.#part(`bench-judged-${i}`).innerHTML = String(judgementBox({ answers, trouble }, step?.madeAt));
  }

  #opened(): void {
    document.body.classList.toggle("lv-at-bench", this.isOpen);
    this.#place.hidden = !this.isOpen;
    if (!this.isOpen) return;
    this.judged();
    this.#tick();
    if (this.#view) this.#draw();
    else this.#host.ask({ kind: "bench" });
  }

  #pressed({ do: wish, go, see, clock, away }: DOMStringMap): void {
    if (go !== undefined) return void this.#show(Number(go));
    if (see !== undefined) return void this.#show(Number(see), this.#shown);
    if (away !== undefined)
      return void this.#keepClocks(this.#notes.clocks.filter((_, i) => i !== Number(away)));
    const begun = clock === undefined ? undefined : this.#view?.clocks[Number(clock)];
    if (begun) return void this.#keepClocks(started(this.#notes.clocks, begun, Date.now()));
    const wishes: Readonly<Record<string, () => void>> = {
      before: () => this.#go(-1),
      next: () => this.#go(1),
      tick: () => this.#tickStep(),
      list: () => this.#show("list"),
      larger: () => this.#place.classList.toggle("lv-bench-larger"),
      take: () => this.#host.take(this.#values()),
      save: () => this.#host.save?.(this.#values()),
      download: () => this.#host.ask({ kind: "as-built", values: this.#values() }),
      forget: () => this.#askToForget(),
      forgotten: () => {
        this.#keep(noNotes);
        this.#show(0);
      },
    };
    if (wish !== undefined && Object.hasOwn(wishes, wish)) wishes[wish]?.();
  }

  #values(): readonly BenchValue[] {
    return this.#notes.values.map(([, value]) => value);
  }

  #askToForget(): void {
    const button = this.#place.querySelector<HTMLButtonElement>('[data-do="forget"]');
    if (!button) return;
    button.dataset.do = "forgotten";
    button.textContent = "Yes, throw ticks, figures and clocks away";
  }

  /** Ticks the step and goes on, or takes its tick back. */
  #tickStep(): void {
    const step = this.#step();
    if (!step) return;
    const isDone = this.#notes.done.includes(step.id);
    this.#keep(ticked(this.#notes, step.id, !isDone));
    if (isDone) this.#draw();
    else this.#go(1);
  }

  #go(by: number): void {
    const count = this.#view?.steps.length ?? 0;
    const from = this.#shown === "list" ? 0 : this.#shown;
    const to = this.#shown === "list" ? from : from + by;
    if (to >= 0 && to < count) this.#show(to);
    else if (to >= count) this.#show("list");
  }

  /** @param from the step that sent here, to go back to */
  #show(shown: number | "list", from?: number | "list"): void {
    this.#shown = shown;
    this.#cameFrom = from === "list" ? undefined : from;
    const step = this.#step();
    if (step) this.#keep({ ...this.#notes, step: step.id });
    this.#draw();
    scrollTo(0, 0);
    this.#part("bench-words").focus({ preventScroll: true });
  }

  #step(): BenchStep | undefined {
    return this.#shown === "list" ? undefined : this.#view?.steps[this.#shown];
  }

  #typed(field: HTMLInputElement): void {
    const i = Number(field.dataset.measure);
    const measure = this.#step()?.measures[i];
    if (!measure) return;
    const value = { key: measure.key, text: field.value, unit: measure.unit };
    this.#keep(valued(this.#notes, value));
    clearTimeout(this.#typing);
    this.#part(`bench-judged-${i}`).textContent = "";
    this.#typing = setTimeout(() => this.#judgeStep(), typingRest);
  }

  /** Asks what becomes of every figure of the step that is shown. */
  #judgeStep(): void {
    this.#step()?.measures.forEach(({ key }, i) => {
      const name = valueName(key);
      const value = this.#notes.values.find(([one]) => one === name)?.[1];
      if (!value || value.text.trim() === "" || !this.isOpen) return;
      this.#part(`bench-judged-${i}`).textContent = "Being judged.";
      this.#host.ask({ kind: "judge", name, values: [value, ...readTogether(this.#notes, value)] });
    });
  }

  #draw(): void {
    if (!this.#view || !this.isOpen) return;
    const { steps } = this.#view;
    const step = this.#step();
    const age = this.#notes.at === 0 ? "" : ageWords(this.#notes.at, Date.now());
    this.#part("bench-count").textContent =
      this.#shown === "list" ? "" : `${this.#shown + 1} of ${steps.length}`;
    this.#place.classList.toggle("lv-bench-listing", this.#shown === "list");
    this.judged();
    this.#part("bench-step").innerHTML = String(
      step
        ? stepBox(this.#view, step, this.#notes, this.#cameFrom)
        : listBox(this.#view, this.#notes, age, this.#host.save !== undefined),
    );
    const tick = this.#place.querySelector<HTMLButtonElement>('[data-do="tick"]');
    const isDone = step !== undefined && this.#notes.done.includes(step.id);
    if (tick) {
      tick.disabled = step === undefined;
      tick.textContent = isDone ? "Not done" : "Done";
      tick.setAttribute("aria-pressed", String(isDone));
    }
    this.#tick();
    this.#judgeStep();
  }

  /** Once a second, and when the phone wakes. */
  #tick(): void {
    const now = Date.now();
    const ended = endedBetween(this.#notes.clocks, this.#looked, now);
    this.#looked = now;
    if (this.isOpen) this.#drawClocks(now);
    if (ended.length === 0) return;
    this.#part("bench-alarm").textContent = ended
      .map(({ adhesive, what }) => `The ${clockNames[what]} of ${adhesive} is over.`)
      .join(" ");
    navigator.vibrate?.([500, 200, 500]);
  }

  #drawClocks(now: number): void {
    const place = this.#part("bench-clocks");
    const entered =
      document.activeElement instanceof HTMLElement ? document.activeElement.dataset.away : undefined;
    place.innerHTML = String(clocksBox(this.#notes.clocks, now));
    if (entered !== undefined) place.querySelector<HTMLElement>(`[data-away="${entered}"]`)?.focus();
  }

  #keepClocks(clocks: BenchNotes["clocks"]): void {
    this.#keep({ ...this.#notes, clocks });
    this.#part("bench-alarm").textContent = "";
    this.#tick();
  }

  #keep(notes: BenchNotes): void {
    this.#notes = notes === noNotes ? noNotes : { ...notes, at: Date.now() };
    try {
      if (notes === noNotes) localStorage.removeItem(this.#storage);
      else localStorage.setItem(this.#storage, JSON.stringify(this.#notes));
    } catch {
      this.#part("bench-alarm").textContent =
        "This browser keeps no draft: its storage is full or shut. Download as-built.csv before you close this page.";
    }
  }

  #kept(): BenchNotes {
    try {
      return notesIn(localStorage.getItem(this.#storage));
    } catch {
      return noNotes;
    }
  }

  #part(id: string): HTMLElement {
    const found = this.#place.querySelector<HTMLElement>(`#${id}`);
    if (!found) throw new Error(`bench: no part "${id}"`);
    return found;
  }
}
