/** What mends one finding: every change that is offered for it, tried by itself in memory. */
import { type Change, caseFile, placesOf, type Texts } from "../design/index.js";
import type { Finding } from "../findings/index.js";
import type { Job } from "../job/index.js";
import type { ShowStyle } from "../quantity/index.js";
import { optionsFor } from "./options/index.js";
import { holdsForSure } from "./standing.js";
import { questionsOfIds } from "./steps.js";
import { answersOf, changesOf, measuresOf, withOptions } from "./trial.js";
import { type FiguresOfDesign, figuresOf } from "./words.js";

/** A change with which a finding holds, whatever the builder's own scatter leaves open. */
export interface Mending {
  /** What to do, as a sentence. */
  readonly words: string;
  /** What the case then costs, weighs and takes. */
  readonly figures: FiguresOfDesign;
  /** By how much the bill changes, in its currency. */
  readonly moreCost: number;
  /** What no table of the job prices, where there is such. */
  readonly unpriced?: string;
  /** The changes of the job's files. */
  readonly changes: readonly Change[];
  /** What the change moves, as it can be locked: a place of case.yaml that is there; nothing for a change of tables. */
  readonly lock?: string;
}

/**
 * Tries what is offered for a finding, one change after another: each step gives the change if the finding holds with
 * it, else nothing. Only the finding's own question is asked; what else a change does, a review of it tells.
 */
export function* triedFor(
  job: Job,
  finding: Finding,
  style: ShowStyle,
): Generator<Mending | undefined, void> {
  const questions = questionsOfIds(job, [finding.id]);
  if (questions.size === 0) return;
  const before = measuresOf(job);
  for (const option of optionsFor(job, [finding])) {
    const changed = withOptions(job, [option]);
    const answers = changed ? answersOf(changed, questions) : [];
    const answer = answers.find(({ id }) => id === finding.id);
    if (!changed || (answer && !holdsForSure(answer))) {
      yield undefined;
      continue;
    }
    const measures = measuresOf(changed);
    const lock = lockOf(job.texts, option.changes);
    yield {
      words: option.words,
      figures: figuresOf(before, { measures }, style),
      moreCost: measures.cost - before.cost,
      ...(option.unpriced === undefined ? {} : { unpriced: option.unpriced }),
      changes: changesOf(job, [option]),
      ...(lock === undefined ? {} : { lock }),
    };
  }
}

/** The first place of the case file that changes move, or of what holds it, as far as it is there. */
function lockOf(texts: Texts, changes: readonly Change[]): string | undefined {
  const text = texts[caseFile] ?? "";
  const places = changes.flatMap((change) =>
    change.kind !== "edits" && typeof change.at === "string" ? [change.at] : [],
  );
  return places
    .map((place) => {
      const words = place.split(".");
      const ways = words.map((_, i) => words.slice(0, words.length - i).join("."));
      return ways.find((way) => placesOf(text, way).length > 0);
    })
    .find((place) => place !== undefined);
}

/**
 * The change of the files that locks a place.
 *
 * @param kept what is locked already
 */
export function lockChange(kept: readonly string[], place: string): Change {
  const places = [...kept, place].map((one) => JSON.stringify(one));
  return { kind: "set", at: "keep", to: `[${places.join(", ")}]` };
}
