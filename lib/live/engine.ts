/** The library at work behind the page: files in, answers out, a step at a time, so that a newer edit ends older work. */
import { applyChange, type Change, designReader, type ReadDesign, type Texts } from "../design/index.js";
import { type Finding, reviewCase } from "../findings/index.js";
import { builtThenCheapest, lockChange, type Mending, triedFor } from "../improve/index.js";
import { jobFromTexts, recipeOf, workPapersOf } from "../job/index.js";
import { takeAnswers } from "../kept/index.js";
import { picturedView, plainViewHtml } from "../page/index.js";
import { recipePage } from "../recipe/index.js";
import { Refusal } from "../refusal.js";
import { asBuiltChanges, asBuiltFile } from "./bench/as-built-changes.js";
import { benchView } from "./bench/bench-steps.js";
import { judged } from "./bench/judge.js";
import type { BenchValue, BenchView } from "./bench/view.js";
import { answerView } from "./case-view.js";
import { heldSag } from "./held.js";
import { measuringView } from "./measuring/measuring-view.js";
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
  readonly #read = designReader();
  readonly #readFigures: (texts: Texts) => ReadDesign = designReader();
  #share: Share = "quick";
  #texts: Texts = {};
  #newest = -1;
  #last: EditedCase | undefined;
  /** Questions that this worker has answered for the newest edit. */
  readonly #answered = new Set<string>();

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
      case "mend":
        return this.#mend(message.edit, message.id);
      case "lock":
        return this.#lock(message.edit, message.place);
      case "taken":
        return takeAnswers(message.answers);
      case "held":
        return this.#held(message.opening);
      case "working":
        return this.#working(message.id);
      case "papers":
        return this.#host.tell({ kind: "papers", html: this.#papers() });
      case "bench":
        return this.#bench();
      case "measuring":
        return this.#measuring();
      case "judge":
        return this.#judge(message.name, message.values);
      case "as-built":
        return this.#asBuilt(message.values, message.edit);
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
    this.#answered.clear();
    for (const step of workOf(this.#share, edited)) {
      for (const message of step()) this.#tell(message);
      await this.#host.pause();
      if (this.#newest !== edit) return;
    }
  }

  #tell(message: Told): void {
    if (message.kind === "answers") this.#answered.add(message.question);
    this.#host.tell(message);
  }

  /** A question that was handed out, unless a newer edit has come. */
  #also(edit: number, question: string): void {
    const edited = this.#last;
    if (edited?.edit !== edit || this.#newest !== edit) return;
    const step = edited.review.steps.find(({ id }) => id === question);
    if (step) this.#tell(answersOf(step, edited));
    this.#host.tell({ kind: "done", edit, share: this.#share, questions: [question] });
  }

  #held(opening: HeldOpening): void {
    this.#host.tell({ kind: "held", words: this.#last ? heldSag(opening, this.#last.design) : "" });
  }

  /** Told by the worker that answered the question, so that the other need not work it out too. */
  #working(id: string): void {
    const found = this.#finding(id, (question) => this.#answered.has(question));
    if (!found || !this.#last) return;
    const style = { system: this.#last.design.case.units };
    const markup = plainViewHtml(picturedView(found, style));
    this.#host.tell({ kind: "working", id, html: String(markup) });
  }

  #finding(id: string, isAsked: (question: string) => boolean): Finding | undefined {
    const steps = this.#last?.review.steps ?? [];
    const own = steps.filter((step) => id === step.id || id.startsWith(`${step.id}.`));
    return own
      .filter((step) => isAsked(step.id))
      .flatMap((step) => step.ask())
      .find((one) => one.id === id);
  }

  /** Tries what is offered for an answer, telling what mends it as it is found, unless a newer edit comes. */
  async #mend(edit: number, id: string): Promise<void> {
    const last = this.#last;
    const finding = this.#finding(id, () => true);
    if (last?.edit !== edit || !finding) return;
    const read = jobFromTexts(last.design.case.name, last.texts, this.#read);
    if ("problems" in read) return;
    const mendings: Mending[] = [];
    const tell = (isWhole: boolean): void =>
      this.#host.tell({ kind: "mended", edit, id, isWhole, mendings: mendings.toSorted(builtThenCheapest) });
    for (const mending of triedFor(read.job, finding, { system: last.design.case.units })) {
      if (mending) {
        mendings.push(mending);
        tell(false);
      }
      await this.#host.pause();
      if (this.#newest !== edit) return;
    }
    tell(true);
  }

  #lock(edit: number, place: string): Promise<void> | undefined {
    const kept = this.#last?.design.case.keep ?? [];
    return this.#change(edit, [lockChange(kept, place)]);
  }

  #papers(): string {
    if (!this.#last) return "";
    const { design, review } = this.#last;
    return recipePage(recipeOf({ ...design, review }));
  }

  #bench(): void {
    if (!this.#last) return;
    const { edit, design, review } = this.#last;
    this.#host.tell({ kind: "bench", edit, bench: benchOf({ ...design, review }) });
  }

  #measuring(): void {
    if (!this.#last) return;
    const { texts, design } = this.#last;
    const said = texts === this.#texts ? design : undefined;
    const measuring = measuringView(this.#texts, said, design.stock);
    this.#host.tell({ kind: "measuring", edit: this.#newest, measuring });
  }

  #judge(name: string, values: readonly BenchValue[]): void {
    if (!this.#last) return;
    const { case: build } = this.#last.design;
    const found = judged(this.#texts, values, build, this.#readFigures);
    const trouble = "trouble" in found ? found.trouble : "";
    const style = { system: build.units };
    const answers = "trouble" in found ? [] : found.findings.map((one) => answerView(one, style));
    this.#host.tell({ kind: "judged", name, answers, trouble });
  }

  #asBuilt(values: readonly BenchValue[], edit: number | undefined): Promise<void> | undefined {
    if (!this.#last) return undefined;
    const changes = asBuiltChanges(this.#texts[asBuiltFile], values, this.#last.design.case);
    if (edit !== undefined) return this.#change(edit, changes);
    try {
      const { texts } = applyChange(this.#texts, ...changes);
      this.#host.tell({ kind: "as-built", text: texts[asBuiltFile] ?? "", trouble: "" });
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      this.#host.tell({ kind: "as-built", text: "", trouble: error.message });
    }
    return undefined;
  }
}

/** The work at the bench, or why there are no papers to work from. */
function benchOf(job: Parameters<typeof workPapersOf>[0]): BenchView | { readonly refused: string } {
  try {
    return benchView({ ...job, sections: workPapersOf(job).sections });
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    return { refused: error.message };
  }
}
