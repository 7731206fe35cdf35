/** The part of the page that keeps the files and opens others. */
import { html } from "../../page/html.js";
import type { LiveData } from "../document.js";
import {
  ageWords,
  type Draft,
  download,
  draftOf,
  dropDraft,
  folderPicker,
  jobInZip,
  keepDraft,
  saveInto,
  zipOf,
} from "./keep.js";
import type { Texts } from "./state.js";

/** What keeping asks of the page. */
export interface KeepingHost {
  /** Puts other files in place of these. */
  setTexts(texts: Texts): void;
  /** Says something aloud. */
  say(words: string): void;
  /** The files as they are now. */
  texts(): Texts;
}

/** Keeps a draft with every change, and offers the ways to take the files along. */
export class Keeping {
  readonly #job: string;
  readonly #own: Texts;
  readonly #host: KeepingHost;
  #told = false;

  constructor(place: HTMLElement, notice: HTMLElement, { job, texts }: LiveData, host: KeepingHost) {
    this.#job = job;
    this.#own = texts;
    this.#host = host;
    place.innerHTML =
      String(html`<p>A draft stays in this browser with every change. To keep the files for good, take them along.</p>
<p class="lv-row"><button type="button" id="zip-out">Save as zip</button>${folderPicker() !== undefined && html` <button type="button" id="folder-out">Save into a folder</button>`} <label class="lv-row">Open a zip <input type="file" id="zip-in" accept=".zip"></label> <button type="button" id="as-given">Back to the files as given</button></p>`);
    place.addEventListener("click", ({ target }) => {
      if (target instanceof HTMLButtonElement) this.#pressed(target.id).catch(this.#failed);
    });
    place.querySelector<HTMLInputElement>("#zip-in")?.addEventListener("change", ({ target }) => {
      const [file] = (target as HTMLInputElement).files ?? [];
      if (file) this.#open(file).catch(this.#failed);
    });
    const draft = draftOf(job);
    if (draft && JSON.stringify(draft.texts) !== JSON.stringify(texts)) this.#offer(notice, draft);
  }

  /** Keeps the files as a draft; files as they were given need none. */
  keep(texts: Texts): void {
    if (texts === this.#own) return;
    const trouble = keepDraft(this.#job, texts);
    if (trouble !== undefined && !this.#told) this.#host.say(trouble);
    this.#told = trouble !== undefined;
  }

  readonly #failed = (error: Error): void => {
    if (error.name !== "AbortError") this.#host.say(error.message);
  };

  async #pressed(id: string): Promise<void> {
    if (id === "zip-out") download(`${this.#job}.zip`, zipOf(this.#job, this.#host.texts()));
    if (id === "as-given") {
      dropDraft(this.#job);
      this.#host.setTexts(this.#own);
    }
    const picker = folderPicker();
    if (id === "folder-out" && picker) {
      await saveInto(await picker({ mode: "readwrite" }), this.#host.texts());
      this.#host.say("Saved into the folder.");
    }
  }

  async #open(file: File): Promise<void> {
    this.#host.setTexts(jobInZip(new Uint8Array(await file.arrayBuffer())));
  }

  #offer(notice: HTMLElement, { at, texts }: Draft): void {
    const offer = document.createElement("div");
    offer.className = "lv-box";
    offer.id = "draft";
    offer.innerHTML = String(
      html`<p>A draft from ${ageWords(at, Date.now())} lies in this browser. What is shown are the files as they were given.</p><p class="lv-row"><button type="button" data-do="take">Take up the draft</button> <button type="button" data-do="drop">Throw it away</button></p>`,
    );
    offer.addEventListener("click", ({ target }) => {
      const wish = target instanceof HTMLElement ? target.dataset.do : undefined;
      if (wish === undefined) return;
      if (wish === "take") this.#host.setTexts(texts);
      else dropDraft(this.#job);
      offer.remove();
    });
    notice.before(offer);
  }
}
