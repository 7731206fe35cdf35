/** A change that may help: what it moves, and why it is offered. */
import type { Change } from "../design/index.js";

/** One change of a case that may mend some of its findings. */
export interface Option {
  /** What it moves, with its setting: unique among options. */
  readonly id: string;
  /** What it moves: two options of one lever are never taken together. */
  readonly lever: string;
  /** What to do, as a sentence. */
  readonly words: string;
  /** The changes of the job's files. */
  readonly changes: readonly Change[];
  /** Ids of the findings that it is offered for. */
  readonly helps: readonly string[];
  /** Whether it is a rule that people must keep ("sits"), rather than a thing that is built or bought. */
  readonly rule: boolean;
  /** What it takes that no table of the job prices: "a strap with its anchors". */
  readonly unpriced?: string;
}

/** Options that say the same made one; each of a lever is offered for all that any of that lever was offered for. */
export function merged(options: readonly Option[]): readonly Option[] {
  const helps = new Map<string, Set<string>>();
  for (const one of options) {
    const ids = helps.get(one.lever) ?? new Set<string>();
    for (const id of one.helps) ids.add(id);
    helps.set(one.lever, ids);
  }
  const byId = new Map(options.map((one) => [one.id, one]));
  return [...byId.values()].map((one) => ({ ...one, helps: [...(helps.get(one.lever) ?? [])] }));
}
