/** What must not move: places of case.yaml and tables that the case file names under "keep". */
import { placesOf } from "../design/index.js";
import type { Job } from "../job/index.js";

/** A job before or after changes, as far as a lock looks at it. */
export type Lockable = Pick<Job, "case" | "texts">;

/**
 * The locked things that a change moves: what the file says at their place, or what the case comes to there, such as
 * the sheet that a panel has from the build.
 */
export function movedLocks(before: Lockable, after: Lockable): readonly string[] {
  return before.case.keep.filter((place) => stateOf(before, place) !== stateOf(after, place));
}

function stateOf({ case: whole, texts }: Lockable, place: string): string {
  if (place in texts) return texts[place] ?? "";
  const written = placesOf(texts["case.yaml"] ?? "", place);
  return JSON.stringify(written.map(({ path, value }) => [path, value, partAt(whole, path)]));
}

/** What the case has at a path of its file; a name among many is looked for by name. */
function partAt(whole: unknown, path: readonly string[]): unknown {
  return path.reduce<unknown>((part, word) => {
    if (Array.isArray(part)) return part.find((one) => one.name === word) ?? part[Number(word)];
    return typeof part === "object" && part !== null
      ? (part as Readonly<Record<string, unknown>>)[word]
      : undefined;
  }, whole);
}
