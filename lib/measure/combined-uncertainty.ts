import { type Formula, formula } from "../formula.js";
import { Count, listOf, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** What each uncertain input does to a result. */
export interface UncertaintyParts {
  /** Change of the result for one standard uncertainty of each input, in one unit. */
  readonly changes: readonly Ratio[];
  /** Degrees of freedom of each; 10 000 for what is no average of readings. */
  readonly freedoms: readonly number[];
  /** Correlation of each input with each other, row by row; none for independent inputs. */
  readonly correlations: readonly (readonly Ratio[])[];
}

/** The uncertainty of a result. */
export type CombinedUncertainty = {
  readonly standard: Ratio;
  readonly degreesOfFreedom: number;
};

/** Beyond so many, Student's factor is the normal one to five digits. */
export const manyFreedoms = 10_000;

/**
 * Combined standard uncertainty: u^2 = sum r_ij c_i c_j, with the effective degrees of freedom of
 * Welch and Satterthwaite for independent inputs, u^4 / sum (c_i^4 / nu_i) truncated; for correlated inputs,
 * for which there is no rule, the least of those that count.
 *
 * @throws RangeError for lists of unlike length or fewer than one degree of freedom
 * @example combinedUncertainty(combinedUncertainty.read({ changes: [5.8, 3.9, 6.7], freedoms: [24, 5, 8],
 *   correlations: [] })) // standard 9.682, degreesOfFreedom 25
 */
export const combinedUncertainty: Formula<UncertaintyParts, CombinedUncertainty> = formula<
  UncertaintyParts,
  CombinedUncertainty
>({
  id: "uncertainty.combined",
  title: "Uncertainty of a result from those of its inputs",
  equation: String.raw`u^2 = \sum_{i,j} r_{ij}\,c_i\,c_j,\quad \nu = \frac{u^4}{\sum c_i^4 / \nu_i}`,
  inputs: {
    changes: { symbol: "c_i", kind: listOf(Ratio), meaning: "change of the result for each input" },
    freedoms: { symbol: String.raw`\nu_i`, kind: listOf(Count), meaning: "degrees of freedom of each" },
    correlations: {
      symbol: "r_{ij}",
      kind: listOf(listOf(Ratio)),
      meaning: "correlations, none if independent",
    },
  },
  result: {
    standard: { symbol: "u", kind: Ratio, meaning: "combined standard uncertainty" },
    degreesOfFreedom: { symbol: String.raw`\nu`, kind: Count, meaning: "effective degrees of freedom" },
  },
  source: [cite("gum", "5.1.2 eq. 10, 5.2.2 eq. 16, G.4.1 eq. G.2b")],
  validity: "First order: the result is nearly straight over each input's uncertainty.",
  refuse: ({ changes, freedoms, correlations }) => [
    ...(freedoms.length === changes.length ? [] : ["as many degrees of freedom as changes"]),
    ...(freedoms.every((one) => one >= 1) ? [] : ["at least one degree of freedom each"]),
    ...(correlations.every((row) => row.length === changes.length) &&
    [0, changes.length].includes(correlations.length)
      ? []
      : ["correlations must be a square of as many rows as changes, or none"]),
  ],
  compute: ({ changes, freedoms, correlations }) => {
    const variance = changes.reduce<number>((sum, one, i) => sum + one * joined(changes, correlations, i), 0);
    const standard = Math.sqrt(Math.max(0, variance));
    return { standard, degreesOfFreedom: effectiveFreedom(changes, freedoms, correlations, variance) };
  },
});

/** What an input's change comes to with all that errs with it: sum over j of r_ij c_j. */
function joined(changes: readonly number[], correlations: readonly (readonly number[])[], i: number): number {
  const row = correlations[i];
  return row ? row.reduce((sum, r, j) => sum + r * (changes[j] ?? 0), 0) : (changes[i] ?? 0);
}

/** Share of each input in the variance; they sum to 1, or are all 0 without scatter. */
export function varianceShares(
  changes: readonly number[],
  correlations: readonly (readonly number[])[],
): readonly number[] {
  const parts = changes.map((one, i) => one * joined(changes, correlations, i));
  const variance = parts.reduce((sum, one) => sum + one, 0);
  return parts.map((one) => (variance > 0 ? one / variance : 0));
}

function effectiveFreedom(
  changes: readonly number[],
  freedoms: readonly number[],
  correlations: readonly (readonly number[])[],
  variance: number,
): number {
  if (!(variance > 0)) return manyFreedoms;
  if (correlations.some((row, i) => row.some((r, j) => i !== j && r !== 0))) {
    return Math.min(manyFreedoms, ...freedoms.filter((_, i) => changes[i] !== 0));
  }
  // As shares of the variance, so that tiny quantities do not underflow.
  const inverse = changes.reduce<number>(
    (sum, change, i) => sum + (change ** 2 / variance) ** 2 / (freedoms[i] ?? manyFreedoms),
    0,
  );
  return Math.min(manyFreedoms, Math.max(1, Math.floor(1 / inverse + 1e-9)));
}
