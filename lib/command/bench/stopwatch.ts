/** Times a piece of work: the median of several runs, after one that does not count. */
export interface Timed {
  /** What was done. */
  readonly work: string;
  /** ms */
  readonly median: number;
  /** Shortest time, ms. */
  readonly fastest: number;
  /** Longest time, ms. */
  readonly slowest: number;
  /** How often it was done. */
  readonly runs: number;
  /** What was found, beside the time. */
  readonly note: string;
}

/**
 * Times a function.
 *
 * @param work what it does, in words
 * @param run does it, and returns a note to print
 * @param runs counted runs
 */
export function timed(work: string, run: () => string, runs = 5): Timed {
  run();
  const times: number[] = [];
  let note = "";
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    note = run();
    times.push(performance.now() - start);
  }
  return timesOf(work, times, note);
}

/**
 * What several runs took.
 *
 * @param work what was done, in words
 * @param times of each run, ms
 * @param note to print beside them
 */
export function timesOf(work: string, times: readonly number[], note: string): Timed {
  const sorted = [...times].sort((a, b) => a - b);
  return {
    work,
    median: sorted[Math.floor(sorted.length / 2)] ?? 0,
    fastest: sorted[0] ?? 0,
    slowest: sorted.at(-1) ?? 0,
    runs: sorted.length,
    note,
  };
}
