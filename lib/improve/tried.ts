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
  /** Whether it is a rule that people must keep, rather than a thing that is built or bought. */
  readonly rule: boolean;
  /** What no table of the job prices, where there is such. */
  readonly unpriced?: string;
  /** The changes of the job's files. */
  readonly changes: readonly Change[];
  /** What the change moves, as it can be locked: a place of case.yaml that is there; nothing for a change of tables. */
  readonly lock?: string;
}

/** What is built or bought before a rule that people must keep; of each the cheapest first. */
export function builtThenCheapest(one: Mending, other: Mending): number {
  return Number(one.rule) - Number(other.rule) || one.moreCost - other.moreCost;
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
  const asked = new Set(answersOf(job, questions).map(({ id }) => id));
  for (const option of optionsFor(job, [finding])) {
    const changed = withOptions(job, [option]);
    if (!changed || !isMended(finding, asked, answersOf(changed, questions))) {
      yield undefined;
      continue;
    }
    const measures = measuresOf(changed);
    const lock = lockOf(job.texts, option.changes);
    yield {
      words: option.words,
      figures: figuresOf(before, { measures }, style),
      moreCost: measures.cost - before.cost,
      rule: option.rule,
      ...(option.unpriced === undefined ? {} : { unpriced: option.unpriced }),
      changes: changesOf(job, [option]),
      ...(lock === undefined ? {} : { lock }),
    };
  }
}

/**
 * Whether a finding holds among the answers of the changed case. What it is named after may have another name there:
 * then what was not asked before must hold in its place.
 *
 * @param asked ids of the answers before
 */
function isMended({ id }: Finding, asked: ReadonlySet<string>, answers: readonly Finding[]): boolean {
  const same = answers.filter((one) => one.id === id);
  const inItsPlace = answers.filter((one) => !asked.has(one.id));
  return (same.length > 0 ? same : inItsPlace).every(holdsForSure);
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
