/** A case with options, tried in memory: what it then answers, costs, weighs and takes. */
import { applyChange, type Change, type Edit, set, type Texts } from "../design/index.js";
import type { Finding } from "../findings/index.js";
import type { Job } from "../job/index.js";
import { buildingTime } from "../plan/index.js";
import { ProblemsError } from "../problem.js";
import { movedLocks } from "./locked.js";
import type { Option } from "./option.js";

/** What a case costs, weighs and takes to build. */
export interface Measures {
  /** The whole bill. */
  readonly cost: number;
  /** Its currency. */
  readonly currency: string;
  /** Of the stacked case with what rides in it, kg. */
  readonly mass: number;
  /** At the bench, s. */
  readonly time: number;
}

/** What a case costs, weighs and takes, from its whole plan; its hours from timings or the builder's guess, else none. */
export function measuresOf(job: Job): Measures {
  const { review } = job;
  const { amount, currency } = review.bill.total;
  const mass = review.masses.reduce((sum, one) => sum + one.mass, 0);
  return { cost: amount, currency, mass, time: buildingTime(job, review.purchases).time };
}

/**
 * A job with options; nothing where the files would not be a job, a place is not there, or a locked thing would move.
 *
 * @throws whatever is no mistake of the files
 */
export function withOptions(job: Job, options: readonly Option[]): Job | undefined {
  const texts = textsOrNot(job, together(job, options)) ?? textsOrNot(job, changesOf(job, options));
  const changed = texts && changedJob(job, rewritten(job, texts));
  return changed && movedLocks(job, changed).length === 0 ? changed : undefined;
}

/** Texts with changes; nothing where a place is not there. */
function textsOrNot({ texts }: Job, changes: readonly Change[]): Texts | undefined {
  try {
    return applyChange(texts, ...changes).texts;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Whole texts in the place of others. */
function rewritten({ texts: before }: Job, after: Texts): readonly Change[] {
  const edits = Object.entries(after)
    .filter(([file, now]) => now !== before[file])
    .map(([file, now]) => ({ file, at: 0, old: before[file] ?? "", now }));
  return [{ kind: "edits", edits }];
}

/** A job with changes; nothing where its files would then not be a job, or a place is not there. */
export function changedJob(job: Job, changes: readonly Change[]): Job | undefined {
  try {
    return job.with(...changes);
  } catch (error) {
    if (error instanceof ProblemsError || error instanceof RangeError) return undefined;
    throw error;
  }
}

/** Each change of an option as an edit of the texts that it was first tried on, so that it is looked up once. */
const edits = new WeakMap<Texts, Map<Change, Edit | undefined>>();

function editOf(texts: Texts, change: Change): Edit | undefined {
  const known = edits.get(texts) ?? new Map<Change, Edit | undefined>();
  edits.set(texts, known);
  if (!known.has(change)) known.set(change, madeEdit(texts, change));
  return known.get(change);
}

function madeEdit(texts: Texts, change: Change): Edit | undefined {
  try {
    const after = applyChange(texts, change).texts;
    const file = Object.keys(after).find((name) => after[name] !== texts[name]);
    return file === undefined ? undefined : { file, ...difference(texts[file] ?? "", after[file] ?? "") };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

/** The one piece in which two texts differ. */
function difference(before: string, after: string): Omit<Edit, "file"> {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let end = 0;
  while (end < shorter - start && before.at(-1 - end) === after.at(-1 - end)) end++;
  return {
    at: start,
    old: before.slice(start, before.length - end),
    now: after.slice(start, after.length - end),
  };
}

/** An edit with the place of its change in the order of all. */
interface Placed {
  readonly edit: Edit;
  readonly i: number;
}

/**
 * Options as edits of the same texts, from the last to the first, so that none moves another; and after them the changes
 * that touch what an earlier one edits, or whose place only comes with another.
 */
function together({ texts }: Job, options: readonly Option[]): readonly Change[] {
  const all = changesOf({ texts }, options);
  const apart: Placed[] = [];
  const after: Change[] = [];
  all.forEach((change, i) => {
    const edit = editOf(texts, change);
    if (edit && !apart.some((one) => touch(one.edit, edit))) apart.push({ edit, i });
    else after.push(change);
  });
  const edits = apart
    .sort((a, b) => a.edit.file.localeCompare(b.edit.file) || b.edit.at - a.edit.at || b.i - a.i)
    .map(({ edit }) => edit);
  return edits.length > 0 ? [{ kind: "edits", edits }, ...after] : after;
}

function touch(one: Edit, other: Edit): boolean {
  return (
    one.file === other.file && one.at < other.at + other.old.length && other.at < one.at + one.old.length
  );
}

/** The changes of options, one after another; the first stiffener of a file that has none brings their block. */
export function changesOf({ texts }: Pick<Job, "texts">, options: readonly Option[]): readonly Change[] {
  const all = lastOf(options.flatMap(({ changes }) => changes));
  const first = all.find((change) => stiffenerOf(change) !== undefined);
  if (!first || /^stiffeners:/m.test(texts["case.yaml"] ?? "")) return all;
  return all.map((change) => (change === first ? withBlock(change) : change));
}

/** Changes without values that a later one puts in their place. */
function lastOf(changes: readonly Change[]): readonly Change[] {
  const placeOf = (change: Change): string | undefined =>
    change.kind === "set" ? JSON.stringify(change.at) : undefined;
  const last = new Map(changes.map((change, i) => [placeOf(change), i]));
  return changes.filter((change, i) => placeOf(change) === undefined || last.get(placeOf(change)) === i);
}

function stiffenerOf(change: Change): string | undefined {
  return change.kind === "set" && typeof change.at === "string"
    ? /^stiffeners\.([^.]+)$/.exec(change.at)?.[1]
    : undefined;
}

function withBlock(change: Change): Change {
  const to = change.kind === "set" ? change.to : "";
  return set("stiffeners", `{ ${JSON.stringify(stiffenerOf(change))}: ${to} }`);
}

/** The files of a job with options. */
export function textsWith({ texts }: Pick<Job, "texts">, options: readonly Option[]) {
  return applyChange(texts, ...changesOf({ texts }, options)).texts;
}

/** Answers of some questions of a job, by their ids. */
export function answersOf(
  { review }: Pick<Job, "review">,
  questions: ReadonlySet<string>,
): readonly Finding[] {
  return review.steps.filter(({ id }) => questions.has(id)).flatMap((step) => step.ask());
}
