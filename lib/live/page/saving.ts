/** Saving to the job's folder through the server that the page came from; what changed there meanwhile is shown beside. */
import { html } from "../../page/html.js";
import type { LiveData } from "../document.js";
import type { Texts } from "./state.js";

/** What saving asks of the page. */
export interface SavingHost {
  /** The files as they are now. */
  texts(): Texts;
  /** Puts other files in place of these. */
  setTexts(texts: Texts): void;
  /** Says something aloud. */
  say(words: string): void;
}

/** What the server says. */
interface Told {
  /** What the folder says. */
  readonly texts?: Texts;
  /** Files that lie in the folder and are not on the page. */
  readonly left?: readonly string[];
  /** Why nothing was saved. */
  readonly words?: string;
}

/** Two texts of one file. */
interface Conflict {
  /** Its name. */
  readonly name: string;
  /** On this page. */
  readonly mine: string;
  /** In the folder. */
  readonly theirs: string;
}

const same = (one: Texts, other: Texts): boolean =>
  [...new Set([...Object.keys(one), ...Object.keys(other)])].every((name) => one[name] === other[name]);

/** The part of the page that saves. */
export class Saving {
  readonly #saves: NonNullable<LiveData["saves"]>;
  readonly #host: SavingHost;
  readonly #button: HTMLButtonElement;
  readonly #conflict: HTMLElement;
  #known: Texts;
  #busy = false;

  constructor(tools: HTMLElement, notice: HTMLElement, { saves, texts }: ServedData, host: SavingHost) {
    this.#saves = saves;
    this.#host = host;
    this.#known = texts;
    this.#button = document.createElement("button");
    Object.assign(this.#button, { type: "button", id: "save", textContent: "Save", disabled: true });
    this.#button.addEventListener("click", () => this.save());
    tools.prepend(this.#button, " ");
    this.#conflict = document.createElement("div");
    this.#conflict.id = "conflict";
    notice.before(this.#conflict);
    this.#conflict.addEventListener("click", ({ target }) => {
      if (target instanceof HTMLButtonElement) this.#settle(target.dataset.take ?? "");
    });
    document.addEventListener("keydown", (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "s") return;
      event.preventDefault();
      this.save();
    });
    new EventSource(saves.events).addEventListener("saved", () => this.#look());
  }

  /** Tells whether there is anything to save. */
  show(texts: Texts): void {
    this.#button.disabled = same(texts, this.#known);
  }

  /** Saves the files as they are now. */
  save(): void {
    if (this.#busy || this.#button.disabled) return;
    this.#busy = true;
    const texts = this.#host.texts();
    this.#ask({ method: "POST", body: JSON.stringify({ known: this.#known, texts }) })
      .then(({ status, told }) => this.#saved(status, told, texts))
      .catch(() =>
        this.#host.say("The server does not answer, so nothing was saved. Take the files along as a zip."),
      )
      .finally(() => {
        this.#busy = false;
      });
  }

  async #ask(init: RequestInit): Promise<{ readonly status: number; readonly told: Told }> {
    const { files, token } = this.#saves;
    const headers = { "x-casewright-token": token, "content-type": "application/json" };
    const answer = await fetch(files, { ...init, headers, cache: "no-store" });
    const isJson = answer.headers.get("content-type") === "application/json";
    const told: Told = isJson ? await answer.json() : { words: `Nothing was saved: ${await answer.text()}` };
    return { status: answer.status, told };
  }

  #saved(status: number, { texts, left = [], words }: Told, sent: Texts): void {
    if (status === 200) {
      const kept = left.map((name) => [name, this.#known[name] ?? ""] as const);
      this.#known = { ...Object.fromEntries(kept), ...sent };
      this.#host.say(
        left.length === 0
          ? "Saved."
          : `Saved. The folder also has ${left.join(", ")}, which this page has not.`,
      );
    } else if (texts) this.#meet(texts);
    else this.#host.say(words ?? "Nothing was saved.");
    this.show(this.#host.texts());
  }

  #look(): void {
    if (this.#busy) return void setTimeout(() => this.#look(), 200);
    this.#ask({ method: "GET" })
      .then(({ told }) => told.texts && this.#meet(told.texts))
      .catch(() => undefined);
  }

  /** The folder says something new: what is not changed here follows it, what is changed on both sides is shown. */
  #meet(theirs: Texts): void {
    if (same(theirs, this.#known)) return;
    const mine = this.#host.texts();
    const names = [...new Set([...Object.keys(mine), ...Object.keys(theirs)])];
    const isMine = (name: string): boolean => mine[name] !== this.#known[name];
    const conflicts = names
      .filter((name) => isMine(name) && theirs[name] !== this.#known[name] && theirs[name] !== mine[name])
      .map((name): Conflict => ({ name, mine: mine[name] ?? "", theirs: theirs[name] ?? "" }));
    const merged = Object.fromEntries(
      names.flatMap((name) => {
        const text = isMine(name) ? mine[name] : theirs[name];
        return text === undefined ? [] : [[name, text] as const];
      }),
    );
    // What is in conflict stays known as it was, so that nothing is saved over it before it is settled.
    const before = this.#known;
    this.#known = Object.fromEntries(
      Object.entries(theirs).map(([name, text]) => [
        name,
        conflicts.some((one) => one.name === name) ? (before[name] ?? "") : text,
      ]),
    );
    this.#theirs = theirs;
    if (!same(merged, mine)) this.#host.setTexts(merged);
    this.#conflict.innerHTML = conflicts.length === 0 ? "" : String(conflictBox(conflicts));
    this.#host.say(
      conflicts.length === 0
        ? "A file changed in the folder, and this page follows it."
        : "A file changed in the folder and on this page. Choose below which to keep.",
    );
    this.show(merged);
  }

  #theirs: Texts = {};

  #settle(which: string): void {
    this.#known = this.#theirs;
    this.#conflict.innerHTML = "";
    if (which === "theirs") {
      this.#host.setTexts(this.#theirs);
      this.#host.say("This page shows the files of the folder. Undo brings yours back.");
    } else this.#host.say("Your files stay. Save writes them over those of the folder.");
    this.show(this.#host.texts());
  }
}

/** What a served page has as data. */
export type ServedData = LiveData & { readonly saves: NonNullable<LiveData["saves"]> };

/** Whether a page was served with leave to save. */
export function maySave(data: LiveData): data is ServedData {
  return data.saves !== undefined;
}

/** The lines in which two texts differ, beside each other. */
function conflictBox(conflicts: readonly Conflict[]): ReturnType<typeof html> {
  return html`<div class="lv-problem" role="group" aria-label="Two versions of a file">${conflicts.map(
    ({ name, mine, theirs }) => {
      const [here, there] = differing(mine, theirs);
      return html`<p><b>${name} changed in the folder while you changed it here.</b></p><div class="lv-two"><div><p>Yours</p><pre tabindex="0" aria-label="Yours">${here}</pre></div><div><p>In the folder</p><pre tabindex="0" aria-label="In the folder">${there}</pre></div></div>`;
    },
  )}<p class="lv-row"><button type="button" data-take="mine">Keep yours</button> <button type="button" data-take="theirs">Take the folder's</button></p></div>`;
}

/** The parts of two texts between what is the same at both ends, with a line around. */
function differing(one: string, other: string): readonly [string, string] {
  const [a, b] = [one.split("\n"), other.split("\n")];
  let top = 0;
  while (top < Math.min(a.length, b.length) && a[top] === b[top]) top += 1;
  let end = 0;
  while (end < Math.min(a.length, b.length) - top && a[a.length - 1 - end] === b[b.length - 1 - end])
    end += 1;
  const part = (lines: readonly string[]): string =>
    lines.slice(Math.max(0, top - 1), lines.length - Math.max(0, end - 1)).join("\n");
  return [part(a), part(b)];
}
