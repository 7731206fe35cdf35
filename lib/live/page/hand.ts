/** A face seen from outside, on which openings and hardware are moved by hand. */
import { type Html, html } from "../../page/html.js";
import type { CaseView, FaceView, HeldOpening, MovableThing } from "../messages.js";
import { bareLength, moveChanges, movedBy, type Placed, type SetChange, stepOf } from "../move.js";

/** What the hand asks of the page. */
export interface HandHost {
  /** Makes changes of the files. */
  change(changes: readonly SetChange[]): void;
  /** Asks how far a panel would sag with an opening where it is held. */
  hold(opening: HeldOpening): void;
  /** Says something aloud. */
  say(words: string): void;
}

/** The part of the page where things are moved. */
export class Hand {
  readonly #place: HTMLElement;
  readonly #host: HandHost;
  #view: CaseView | undefined;
  #face = "";
  #next: HeldOpening | undefined;
  #isAsking = false;
  #held: { readonly thing: MovableThing; readonly x: number; readonly y: number; to: Placed } | undefined;

  constructor(place: HTMLElement, host: HandHost) {
    this.#place = place;
    this.#host = host;
    place.addEventListener("change", ({ target }) => {
      if (!(target instanceof HTMLSelectElement)) return;
      this.#face = target.value;
      this.#draw();
    });
    place.addEventListener("pointerdown", (event) => this.#take(event));
    place.addEventListener("pointermove", (event) => this.#move(event));
    place.addEventListener("pointerup", () => this.#drop());
    place.addEventListener("pointercancel", () => this.#letGo());
    place.addEventListener("keydown", (event) => this.#key(event));
  }

  /** Draws the faces of a case; what is held stays held. */
  show(view: CaseView): void {
    this.#view = view;
    const fullest = [...view.faces].sort((a, b) => b.things.length - a.things.length)[0];
    if (!view.faces.some(({ id }) => id === this.#face)) this.#face = fullest?.id ?? "";
    if (!this.#held) this.#draw();
  }

  #draw(): void {
    const face = this.#view?.faces.find(({ id }) => id === this.#face);
    if (!this.#view || !face) return;
    const focused = document.activeElement?.getAttribute("data-thing");
    const hadSelect = document.activeElement?.id === "face";
    const ids = this.#view.faces.map(({ id }) => id);
    this.#place.innerHTML = String(faceBox(face, ids));
    if (hadSelect) this.#place.querySelector<HTMLElement>("#face")?.focus();
    if (focused) this.#place.querySelector<SVGElement>(`[data-thing="${CSS.escape(focused)}"]`)?.focus();
  }

  #thingAt(target: EventTarget | null): MovableThing | undefined {
    const name = target instanceof SVGElement ? target.dataset.thing : undefined;
    const face = this.#view?.faces.find(({ id }) => id === this.#face);
    return face?.things.find((one) => one.name === name);
  }

  #take(event: PointerEvent): void {
    const thing = this.#thingAt(event.target);
    if (!thing) return;
    event.preventDefault();
    (event.target as SVGElement).setPointerCapture(event.pointerId);
    (event.target as SVGElement).classList.add("lv-held");
    this.#held = { thing, x: event.clientX, y: event.clientY, to: thing };
  }

  #move(event: PointerEvent): void {
    const held = this.#held;
    const svg = this.#place.querySelector("svg");
    const scale = svg?.getScreenCTM()?.a;
    if (!held || !svg || !scale || !this.#view) return;
    const metres = (pixels: number): number => pixels / scale / 1000;
    const { lengths } = this.#view;
    held.to = movedBy(held.thing, metres(event.clientX - held.x), -metres(event.clientY - held.y), lengths);
    const sign = held.thing.from.endsWith("right") ? -1 : 1;
    const turn = held.thing.from.startsWith("top") ? 1 : -1;
    const right = sign * (held.to.across - held.thing.across) * 1000;
    const down = turn * (held.to.up - held.thing.up) * 1000;
    this.#place
      .querySelector(`[data-thing="${CSS.escape(held.thing.name)}"]`)
      ?.setAttribute("transform", `translate(${right} ${down})`);
    const live = this.#place.querySelector("#hand-size");
    if (live) live.textContent = placeWords(held.thing, held.to, lengths);
    this.#wonder(held.thing, right / 1000, -down / 1000);
  }

  /** Asks for the sag there, one question at a time: the newest place is asked about when the last is answered. */
  #wonder({ name, kind }: MovableThing, right: number, up: number): void {
    if (kind !== "opening") return;
    this.#next = { panel: this.#face, name, right, up };
    if (!this.#isAsking) this.#askNext();
  }

  #askNext(): void {
    const next = this.#next;
    this.#next = undefined;
    this.#isAsking = next !== undefined;
    if (next) this.#host.hold(next);
  }

  /** Tells the sag of the panel with what is held where it is now. */
  heard(words: string): void {
    const place = this.#place.querySelector("#hand-sag");
    if (place && this.#held) place.textContent = words;
    this.#askNext();
  }

  #drop(): void {
    const held = this.#held;
    this.#held = undefined;
    if (!held || !this.#view) return;
    const changes = moveChanges(held.thing, held.to, this.#view.lengths);
    if (changes.length > 0) this.#host.change(changes);
    else this.#draw();
  }

  #letGo(): void {
    this.#held = undefined;
    this.#draw();
  }

  #key(event: KeyboardEvent): void {
    const thing = this.#thingAt(event.target);
    const way = steps[event.key];
    if (!thing || !way || !this.#view) return;
    event.preventDefault();
    const { lengths } = this.#view;
    const step = stepOf(lengths) * (event.shiftKey ? 16 : 1);
    const to = movedBy(thing, way[0] * step, way[1] * step, lengths);
    this.#host.say(placeWords(thing, to, lengths));
    this.#host.change(moveChanges(thing, to, lengths));
  }
}

const steps: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

function placeWords({ name, from }: MovableThing, { across, up }: Placed, unit: "in" | "mm"): string {
  return `${name}: ${bareLength(across, unit)} ${unit} across and ${bareLength(up, unit)} ${unit} from ${from.replace("-", " ")}`;
}

function faceBox({ id, width, height, things, cuts }: FaceView, all: readonly string[]): Html {
  const margin = 0.02 * Math.max(width, height);
  const line = Math.max(width, height) / 250;
  return html`<div class="lv-box"><h2>Move something by hand</h2><p class="lv-row"><label for="face">Face, from outside</label> <select id="face">${all.map(
    (one) =>
      one === id
        ? html`<option selected value="${one}">${one}</option>`
        : html`<option value="${one}">${one}</option>`,
  )}</select></p><div class="lv-face"><svg viewBox="${-margin} ${-height - margin} ${width + 2 * margin} ${height + 2 * margin}" role="group" aria-label="${id} with ${things.length} things to move" stroke-width="${line}" fill="none"><rect x="0" y="${-height}" width="${width}" height="${height}" fill="#faf0de" stroke="#1d2429"/>${cuts.map(
    (path) => html`<path d="${path}" stroke="#4a5660" stroke-dasharray="${4 * line} ${3 * line}"/>`,
  )}${things.map(
    ({ name, path, kind }) =>
      html`<path class="lv-thing lv-${kind}" tabindex="0" role="button" aria-label="${name}, arrow keys move it" data-thing="${name}" d="${path}"/>`,
  )}</svg></div><p id="hand-size" role="status">${things.length === 0 ? "Nothing on this face can be moved." : "Drag a thing, or go to it with the tab key and move it with the arrow keys; with shift in bigger steps."}</p><p id="hand-sag"></p></div>`;
}
