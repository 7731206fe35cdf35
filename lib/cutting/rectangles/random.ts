/** Chance that is the same on every run: a search that uses it gives the same plan for the same files. */

/** Numbers from 0 to below 1, always in the same order for a seed. */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    // A linear congruential generator (Numerical Recipes, 2nd ed., section 7.1), its upper bits used.
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** A whole number from 0 to below a limit. */
export function pick(next: () => number, below: number): number {
  return Math.floor(next() * below);
}
