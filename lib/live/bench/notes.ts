/** What a builder ticked, measured and started at the bench, as it is kept in a browser. */
import type { AsBuiltKey } from "../../recipe/index.js";
import type { RunningClock } from "./clock.js";
import type { BenchValue } from "./view.js";

/** Notes of one job. */
export interface BenchNotes {
  /** When they were last changed, ms since 1970; 0 for none. */
  readonly at: number;
  /** Id of the step that was shown last; empty for none. */
  readonly step: string;
  /** Ids of what is done: of a step, or of a thing of its list. */
  readonly done: readonly string[];
  /** Figures, by what each is known by. */
  readonly values: readonly (readonly [string, BenchValue])[];
  /** Clocks that run, or are over and were not put away. */
  readonly clocks: readonly RunningClock[];
}

/** Notes before anything is done. */
export const noNotes: BenchNotes = { at: 0, step: "", done: [], values: [], clocks: [] };

/** What a figure is known by. */
export function valueName({ what, of, at = "" }: AsBuiltKey): string {
  return [what, of, at].join("\n");
}

/** What a thing of a step's list is known by. */
export function tickName(step: string, tick: string): string {
  return `${step}\n${tick}`;
}

/** Notes with a thing done, or not done any more. */
export function ticked(notes: BenchNotes, name: string, isDone: boolean): BenchNotes {
  const others = notes.done.filter((one) => one !== name);
  return { ...notes, done: isDone ? [...others, name] : others };
}

/** Notes with a figure; one that was emptied stays as an empty one, so that it is taken out of the table too. */
export function valued(notes: BenchNotes, value: BenchValue): BenchNotes {
  const name = valueName(value.key);
  const others = notes.values.filter(([one]) => one !== name);
  const isNone = value.text.trim() === "" && others.length === notes.values.length;
  return { ...notes, values: isNone ? others : [...others, [name, value]] };
}

/** How many figures there are. */
export function measuredCount({ values }: BenchNotes): number {
  return values.filter(([, { text }]) => text.trim() !== "").length;
}

/** Figures that are read together with one: of a can, before and after. */
export function readTogether(notes: BenchNotes, { key }: BenchValue): readonly BenchValue[] {
  const others = notes.values.map(([, one]) => one);
  if (!key.what.startsWith("can ")) return [];
  return others.filter(
    (one) => one.key.of === key.of && one.key.what.startsWith("can ") && one.key.what !== key.what,
  );
}

/** Notes out of a browser's storage; none where it holds something else. */
export function notesIn(text: string | null): BenchNotes {
  try {
    const notes: Partial<BenchNotes> = JSON.parse(text ?? "{}") ?? {};
    const { at, step, done, values, clocks } = notes;
    const isWhole =
      typeof at === "number" &&
      typeof step === "string" &&
      Array.isArray(done) &&
      done.every((one) => typeof one === "string") &&
      Array.isArray(values) &&
      values.every(isNamedValue) &&
      Array.isArray(clocks) &&
      clocks.every(isRunning);
    return isWhole ? { at, step, done, values, clocks } : noNotes;
  } catch {
    return noNotes;
  }
}

function isNamedValue(one: unknown): boolean {
  if (!Array.isArray(one) || typeof one[0] !== "string") return false;
  const { key, text, unit } = (one[1] ?? {}) as Partial<BenchValue>;
  return (
    typeof text === "string" &&
    typeof unit === "string" &&
    typeof key?.what === "string" &&
    typeof key.of === "string"
  );
}

function isRunning(one: unknown): boolean {
  const { adhesive, what, ends } = (one ?? {}) as Partial<RunningClock>;
  return (
    typeof adhesive === "string" && ["open", "press", "cure"].includes(what ?? "") && typeof ends === "number"
  );
}
