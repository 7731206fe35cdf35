/** Displacements from loads, by the factors of a structure. */

/** A structure ready to be solved for any number of loads. */
export interface Factors {
  /** In the order of elimination. */
  readonly fronts: readonly FactoredFront[];
  /** 1 for each degree of freedom that cannot move. */
  readonly held: Uint8Array;
  /** Numbers kept. */
  readonly fill: number;
}

/** One step of elimination, done. */
export interface FactoredFront {
  /** First those eliminated here, then those shared with later fronts. */
  readonly dofs: Int32Array;
  /** How many are eliminated here. */
  readonly eliminated: number;
  /** A row a degree of freedom, a column for each eliminated one; reciprocals on the diagonal. */
  readonly rows: Float64Array;
}

/**
 * Displacements under a load.
 *
 * @param factors of the structure
 * @param load one value a degree of freedom; what lies on held degrees of freedom goes into the supports
 * @returns one value a degree of freedom, 0 where held
 */
export function displacementsUnder({ fronts, held }: Factors, load: Float64Array): Float64Array {
  const x = new Float64Array(load.length);
  for (let dof = 0; dof < load.length; dof++) if (!held[dof]) x[dof] = load[dof]!;
  const own = new Float64Array(mostEliminated(fronts));
  for (const front of fronts) forwards(front, x, own);
  substituteBack(fronts, x);
  return x;
}

/** The most degrees of freedom that a front eliminates. */
export function mostEliminated(fronts: readonly FactoredFront[]): number {
  return fronts.reduce((most, { eliminated }) => Math.max(most, eliminated), 0);
}

/** Turns what substitution forwards left into displacements, in place. */
export function substituteBack(fronts: readonly FactoredFront[], x: Float64Array): void {
  const own = new Float64Array(mostEliminated(fronts));
  for (let i = fronts.length - 1; i >= 0; i--) backwards(fronts[i]!, x, own);
}

/** Whether nothing lies on what a front eliminates, so that it passes nothing on: most fronts under a load at a place. */
export function isBare({ dofs, eliminated }: FactoredFront, x: Float64Array, abreast: number): boolean {
  for (let i = 0; i < eliminated; i++) {
    const at = abreast * dofs[i]!;
    for (let k = 0; k < abreast; k++) if (x[at + k] !== 0) return false;
  }
  return true;
}

/** Frees the degrees of freedom of a front from the load of those eliminated in it. */
function forwards(front: FactoredFront, x: Float64Array, own: Float64Array): void {
  if (isBare(front, x, 1)) return;
  const { dofs, eliminated, rows } = front;
  for (let i = 0; i < dofs.length; i++) {
    const start = i * eliminated;
    const end = Math.min(i, eliminated);
    let rest = x[dofs[i]!]!;
    for (let k = 0; k < end; k++) rest -= rows[start + k]! * own[k]!;
    if (i < eliminated) {
      rest *= rows[start + i]!;
      own[i] = rest;
    }
    x[dofs[i]!] = rest;
  }
}

/** The degrees of freedom eliminated in a front, from those that came after. */
function backwards({ dofs, eliminated, rows }: FactoredFront, x: Float64Array, own: Float64Array): void {
  for (let k = 0; k < eliminated; k++) own[k] = x[dofs[k]!]!;
  for (let i = dofs.length - 1; i >= 0; i--) {
    const start = i * eliminated;
    const end = Math.min(i, eliminated);
    let known = 0;
    if (i < eliminated) {
      known = own[i]! * rows[start + i]!;
      own[i] = known;
    } else known = x[dofs[i]!]!;
    for (let k = 0; k < end; k++) own[k]! -= rows[start + k]! * known;
  }
  for (let k = 0; k < eliminated; k++) x[dofs[k]!] = own[k]!;
}

/** Loads taken together. */
export const together = 4;

/** As for one load, with four loads side by side: four values a degree of freedom, four sums at a time. */
export function forwardsFour(front: FactoredFront, x: Float64Array, own: Float64Array): void {
  const { dofs, eliminated, rows } = front;
  for (let i = 0; i < dofs.length; i++) {
    const start = i * eliminated;
    const end = Math.min(i, eliminated);
    const at = together * dofs[i]!;
    let [a, b, c, d] = [x[at]!, x[at + 1]!, x[at + 2]!, x[at + 3]!];
    for (let k = 0; k < end; k++) {
      const factor = rows[start + k]!;
      const from = together * k;
      a -= factor * own[from]!;
      b -= factor * own[from + 1]!;
      c -= factor * own[from + 2]!;
      d -= factor * own[from + 3]!;
    }
    const scale = i < eliminated ? rows[start + i]! : 1;
    x[at] = a * scale;
    x[at + 1] = b * scale;
    x[at + 2] = c * scale;
    x[at + 3] = d * scale;
    if (i < eliminated) for (let load = 0; load < together; load++) own[together * i + load] = x[at + load]!;
  }
}
