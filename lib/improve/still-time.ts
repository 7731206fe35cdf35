/** Whether a search goes on. */

/** How long a search may take. */
export interface SearchBounds {
  /** Time for it, s; 60 unless said. */
  readonly seconds?: number;
  /** Ends it early; what is known by then is kept. */
  readonly signal?: AbortSignal;
}

/** Whether there is still time, asked between two pieces of work. */
export type StillTime = () => boolean;

/** Time from now on. */
export function stillTimeFor({ seconds = 60, signal }: SearchBounds): StillTime {
  const until = performance.now() + 1000 * seconds;
  return () => !signal?.aborted && performance.now() < until;
}
