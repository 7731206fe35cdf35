/** What one kind of attack is: a seed in, what is wrong out. */

/** Something that should not have happened. */
export interface FuzzFault {
  /** What happened, in a line. */
  readonly words: string;
  /** The smallest input found that still does it, as text. */
  readonly input: string;
}

/** One kind of attack. */
export interface Fuzzer {
  /**
   * Tries the attack of a seed.
   *
   * @returns what is wrong; undefined where all went as it should
   */
  attack(seed: number): FuzzFault | undefined | Promise<FuzzFault | undefined>;
}

/** The first line of an error with where it arose, for a report. */
export function errorWords(error: unknown): string {
  if (!(error instanceof Error)) return `thrown: ${String(error)}`;
  const [, at = ""] = (error.stack ?? "").split("\n").filter((line) => /^\s+at |^\S*Error/.test(line));
  return `${error.name}: ${error.message.split("\n")[0]}${at && ` (${at.trim()})`}`;
}

/**
 * A list without what its fault does not need.
 *
 * @param fails whether a shorter list still has the same fault
 */
export function shortened<Item>(
  items: readonly Item[],
  fails: (fewer: readonly Item[]) => boolean,
): readonly Item[] {
  for (let i = items.length - 1; i >= 0; i--) {
    const fewer = items.filter((_, j) => j !== i);
    if (fewer.length > 0 && fails(fewer)) return shortened(fewer, fails);
  }
  return items;
}
