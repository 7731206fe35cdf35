/** Many loads at once: the factors are read once for four of them, which is what the time goes into. */
import type { FactoredFront, Factors } from "./factor.js";
import { displacementsUnder } from "./substitute.js";

/** Loads taken together. */
const together = 4;

/**
 * Displacements under many loads.
 *
 * @param factors of the structure
 * @param loads one value a freedom each
 * @returns one a load, in order, as `displacementsUnder` gives them
 */
export function displacementsUnderMany(
  factors: Factors,
  loads: readonly Float64Array[],
): readonly Float64Array[] {
  const result: Float64Array[] = [];
  for (let first = 0; first < loads.length; first += together) {
    const group = loads.slice(first, first + together);
    if (group.length < together) result.push(...group.map((load) => displacementsUnder(factors, load)));
    else result.push(...underFour(factors, group));
  }
  return result;
}

function underFour({ fronts, held }: Factors, loads: readonly Float64Array[]): readonly Float64Array[] {
  const x = new Float64Array(together * held.length);
  held.forEach((stands, freedom) => {
    if (!stands)
      for (let load = 0; load < together; load++) x[together * freedom + load] = loads[load]![freedom]!;
  });
  const most = fronts.reduce((size, { eliminated }) => Math.max(size, eliminated), 0);
  const own = new Float64Array(together * most);
  for (const front of fronts) forwards(front, x, own);
  for (let i = fronts.length - 1; i >= 0; i--) backwards(fronts[i]!, x, own);
  return loads.map((_, load) => Float64Array.from(held, (_held, freedom) => x[together * freedom + load]!));
}

/** As for one load, four sums at a time. */
function forwards({ freedoms, eliminated, rows }: FactoredFront, x: Float64Array, own: Float64Array): void {
  for (let i = 0; i < freedoms.length; i++) {
    const start = i * eliminated;
    const end = i < eliminated ? i : eliminated;
    const at = together * freedoms[i]!;
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

/** As for one load, four at a time. */
function backwards({ freedoms, eliminated, rows }: FactoredFront, x: Float64Array, own: Float64Array): void {
  for (let k = 0; k < eliminated; k++)
    for (let load = 0; load < together; load++) own[together * k + load] = x[together * freedoms[k]! + load]!;
  for (let i = freedoms.length - 1; i >= 0; i--) {
    const start = i * eliminated;
    const end = i < eliminated ? i : eliminated;
    const at = together * freedoms[i]!;
    if (i < eliminated)
      for (let load = 0; load < together; load++) x[at + load] = own[together * i + load]! * rows[start + i]!;
    const [a, b, c, d] = [x[at]!, x[at + 1]!, x[at + 2]!, x[at + 3]!];
    for (let k = 0; k < end; k++) {
      const factor = rows[start + k]!;
      const to = together * k;
      own[to]! -= factor * a;
      own[to + 1]! -= factor * b;
      own[to + 2]! -= factor * c;
      own[to + 3]! -= factor * d;
    }
  }
}
