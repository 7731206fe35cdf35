/** The files as text: whatever is typed is a change like any other. */
import { html } from "../../page/html.js";
import { type Problem, showProblem } from "../../problem.js";
import type { Texts } from "./state.js";

/** After so long without a key, what was typed counts, ms. */
const typingPause = 250;

/** The part of the page where files are typed. */
export class TextEditor {
  readonly #place: HTMLDetailsElement;
  readonly #select: HTMLSelectElement;
  readonly #area: HTMLTextAreaElement;
  readonly #setTexts: (texts: Texts) => void;
  #texts: Texts = {};
  #waiting: ReturnType<typeof setTimeout> | undefined;

  /** @param setTexts told the files after what was typed */
  constructor(place: HTMLElement, setTexts: (texts: Texts) => void) {
    this.#place = place as HTMLDetailsElement;
    this.#select = place.querySelector("select") as HTMLSelectElement;
    this.#area = place.querySelector("textarea") as HTMLTextAreaElement;
    this.#setTexts = setTexts;
    this.#select.addEventListener("change", () => {
      this.#take();
      this.#fill();
    });
    this.#area.addEventListener("input", () => {
      clearTimeout(this.#waiting);
      this.#waiting = setTimeout(() => this.#take(), typingPause);
    });
    this.#place.addEventListener("toggle", () => this.#fill());
  }

  /** Shows files as they are now; what is being typed stays. */
  show(texts: Texts): void {
    this.#texts = texts;
    const names = Object.keys(texts).filter((name) => /\.(ya?ml|csv)$/.test(name));
    const now = [...this.#select.options].map(({ value }) => value);
    if (names.join() !== now.join()) {
      const chosen = this.#select.value || "case.yaml";
      this.#select.innerHTML = String(
        html`${names.map((name) => html`<option value="${name}">${name}</option>`)}`,
      );
      if (names.includes(chosen)) this.#select.value = chosen;
    }
    if (this.#waiting === undefined) this.#fill();
  }

  /** Tells what is wrong, each with a way to its line. */
  tell(problems: readonly Problem[]): void {
    const told = this.#place.querySelector("#text-problems");
    if (!told) return;
    told.innerHTML = String(
      html`${problems.map(
        (one) =>
          html`<p><button type="button" data-file="${one.file}" data-row="${one.row ?? 1}">Go there</button> ${showProblem(one)}</p>`,
      )}`,
    );
    for (const button of told.querySelectorAll("button")) {
      button.addEventListener("click", () => this.#go(button.dataset.file ?? "", Number(button.dataset.row)));
    }
  }

  #go(file: string, row: number): void {
    this.#select.value = file;
    this.#fill();
    const lines = this.#area.value.split("\n");
    const from = lines.slice(0, row - 1).join("\n").length + (row > 1 ? 1 : 0);
    this.#area.focus();
    this.#area.setSelectionRange(from, from + (lines[row - 1]?.length ?? 0));
    this.#area.scrollTop = (this.#area.scrollHeight * Math.max(0, row - 6)) / lines.length;
  }

  #take(): void {
    clearTimeout(this.#waiting);
    this.#waiting = undefined;
    const file = this.#shown;
    if (file !== "" && this.#area.value !== this.#texts[file]) {
      this.#setTexts({ ...this.#texts, [file]: this.#area.value });
    }
  }

  #shown = "";

  #fill(): void {
    this.#shown = this.#select.value;
    const text = this.#texts[this.#shown] ?? "";
    if (!this.#place.open || this.#area.value === text) return;
    const { selectionStart, selectionEnd, scrollTop } = this.#area;
    this.#area.value = text;
    this.#area.setSelectionRange(selectionStart, selectionEnd);
    this.#area.scrollTop = scrollTop;
  }
}
