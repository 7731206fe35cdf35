import type { Factors } from "./factor.js";

/**
 * Displacements under a load.
 *
 * @param factors of the structure
 * @param load one value a freedom; what lies on held freedoms goes into the supports
 * @returns one value a freedom, 0 where held
 */
export function displacementsUnder({ fronts, held }: Factors, load: Float64Array): Float64Array {
  const x = Float64Array.from(load, (value, freedom) => (held[freedom] ? 0 : value));
  for (const { freedoms, eliminated, rows } of fronts) {
    for (let i = 0; i < freedoms.length; i++) {
      const start = i * eliminated;
      const end = Math.min(i, eliminated);
      let rest = x[freedoms[i]!]!;
      for (let k = 0; k < end; k++) rest -= rows[start + k]! * x[freedoms[k]!]!;
      x[freedoms[i]!] = i < eliminated ? rest * rows[start + i]! : rest;
    }
  }
  for (let front = fronts.length - 1; front >= 0; front--) {
    const { freedoms, eliminated, rows } = fronts[front]!;
    const y = Float64Array.from(freedoms.subarray(0, eliminated), (freedom) => x[freedom]!);
    for (let i = freedoms.length - 1; i >= 0; i--) {
      const start = i * eliminated;
      const end = Math.min(i, eliminated);
      if (i < eliminated) y[i]! *= rows[start + i]!;
      const known = i < eliminated ? y[i]! : x[freedoms[i]!]!;
      for (let k = 0; k < end; k++) y[k]! -= rows[start + k]! * known;
    }
    for (let k = 0; k < eliminated; k++) x[freedoms[k]!] = y[k]!;
  }
  return x;
}
