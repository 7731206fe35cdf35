import type { FactoredFront, Factors } from "./factor.js";

/**
 * Displacements under a load.
 *
 * @param factors of the structure
 * @param load one value a freedom; what lies on held freedoms goes into the supports
 * @returns one value a freedom, 0 where held
 */
export function displacementsUnder({ fronts, held }: Factors, load: Float64Array): Float64Array {
  const x = new Float64Array(load.length);
  for (let freedom = 0; freedom < load.length; freedom++) if (!held[freedom]) x[freedom] = load[freedom]!;
  const own = new Float64Array(fronts.reduce((most, { eliminated }) => Math.max(most, eliminated), 0));
  for (const front of fronts) forwards(front, x, own);
  for (let i = fronts.length - 1; i >= 0; i--) backwards(fronts[i]!, x, own);
  return x;
}

/** Frees the freedoms of a front from the load of those eliminated in it. */
function forwards({ freedoms, eliminated, rows }: FactoredFront, x: Float64Array, own: Float64Array): void {
  for (let i = 0; i < freedoms.length; i++) {
    const start = i * eliminated;
    const end = i < eliminated ? i : eliminated;
    let rest = x[freedoms[i]!]!;
    for (let k = 0; k < end; k++) rest -= rows[start + k]! * own[k]!;
    if (i < eliminated) {
      rest *= rows[start + i]!;
      own[i] = rest;
    }
    x[freedoms[i]!] = rest;
  }
}

/** The freedoms eliminated in a front, from those that came after. */
function backwards({ freedoms, eliminated, rows }: FactoredFront, x: Float64Array, own: Float64Array): void {
  for (let k = 0; k < eliminated; k++) own[k] = x[freedoms[k]!]!;
  for (let i = freedoms.length - 1; i >= 0; i--) {
    const start = i * eliminated;
    const end = i < eliminated ? i : eliminated;
    let known = 0;
    if (i < eliminated) {
      known = own[i]! * rows[start + i]!;
      own[i] = known;
    } else known = x[freedoms[i]!]!;
    for (let k = 0; k < end; k++) own[k]! -= rows[start + k]! * known;
  }
  for (let k = 0; k < eliminated; k++) x[freedoms[k]!] = own[k]!;
}
