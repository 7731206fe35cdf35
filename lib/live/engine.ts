/** The library at work behind the page: files in, answers out, a step at a time, so that a newer edit ends older work. */
import { applyChange, type Change, designReader, type ReadDesign, type Texts } from "../design/index.js";
import { type Finding, reviewCase } from "../findings/index.js";
import { recipeOf } from "../job/index.js";
import { type Html, html, picturedView, plainViewHtml } from "../page/index.js";
import { recipePage } from "../recipe/index.js";
import { heldSag } from "./held.js";
import type { Asked, HeldOpening, Share, Told } from "./messages.js";
import { answersOf, type EditedCase, workOf } from "./work.js";

/** What the engine takes from where it runs. */
export interface EngineHost {
  /** Sends a message to the page. */
  tell(message: Told): void;
  /** Lets messages come in before work goes on. */
  pause(): Promise<void>;
}

/** One worker's share of the work on one job. */
export class Engine {
  readonly #host: EngineHost;
  readonly #read: (texts: Texts) => ReadDesign = designReader();
  #share: Share = "quick";
  #texts: Texts = {};
  #newest = -1;
  #last: EditedCase | undefined;

  constructor(host: EngineHost) {
    this.#host = host;
  }

  /** Takes a message; settles when all that follows from it is told, or a newer edit has come. */
  async take(message: Asked): Promise<void> {
    switch (message.kind) {
      case "begin":
        this.#share = message.share;
        return;
      case "files":
        return this.#answer(message.edit, message.texts);
      case "change":
        return this.#change(message.edit, message.changes);
      case "also":
        return this.#also(message.edit, message.question);
      case "held":
        return this.#held(message.opening);
      case "working":
        return this.#host.tell({ kind: "working", id: message.id, html: String(this.#working(message.id)) });
      case "papers":
        return this.#host.tell({ kind: "papers", html: this.#papers() });
    }
  }

  #change(edit: number, changes: readonly Change[]): Promise<void> | undefined {
    let texts: Texts;
    try {
      ({ texts } = applyChange(this.#texts, ...changes));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.#host.tell({ kind: "refused", edit, words: error.message });
      return undefined;
    }
    this.#host.tell({ kind: "texts", edit, texts });
    return this.#answer(edit, texts);
  }

  async #answer(edit: number, texts: Texts): Promise<void> {
    this.#newest = edit;
    this.#texts = texts;
    await this.#host.pause();
    if (this.#newest !== edit) return;
    const read = this.#read(texts);
    if ("problems" in read) {
      if (this.#share === "quick") this.#host.tell({ kind: "problems", edit, problems: read.problems });
      return;
    }
    const { design } = read;
    const edited = { edit, texts, design, review: reviewCase(design) };
    this.#last = edited;
    for (const step of workOf(this.#share, edited)) {
      for (const message of step()) this.#host.tell(message);
      await this.#host.pause();
      if (this.#newest !== edit) return;
    }
  }

  /** A question that was handed out, unless a newer edit has come. */
  #also(edit: number, question: string): void {
    const edited = this.#last;
    if (edited?.edit !== edit || this.#newest !== edit) return;
    const step = edited.review.steps.find(({ id }) => id === question);
    if (step) this.#host.tell(answersOf(step, edited));
    this.#host.tell({ kind: "done", edit, share: this.#share, questions: [question] });
  }

  #held(opening: HeldOpening): void {
    this.#host.tell({ kind: "held", words: this.#last ? heldSag(opening, this.#last.design) : "" });
  }

  #working(id: string): Html {
    const found = this.#finding(id);
    if (!found || !this.#last) return html`<p>This answer is being worked out again.</p>`;
    const style = { system: this.#last.design.case.units };
    return plainViewHtml(picturedView(found, style));
  }

  #finding(id: string): Finding | undefined {
    const steps = this.#last?.review.steps ?? [];
    const asked = steps.filter((step) => id === step.id || id.startsWith(`${step.id}.`));
    return asked.flatMap((step) => step.ask()).find((one) => one.id === id);
  }

  #papers(): string {
    if (!this.#last) return "";
    const { design, review } = this.#last;
    return recipePage(recipeOf({ ...design, review }));
  }
}
