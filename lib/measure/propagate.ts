/** From the uncertainty of inputs to that of a result, first order, correlations included. */

import { at } from "../algebra/lists.js";
import { type Formula, formula } from "../formula.js";
import { Count, listOf, Ratio, ratio, withoutUnits } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { cite } from "../source.js";
import { studentFactor } from "./distributions.js";
import { type Interval, relabel } from "./mean.js";

/** How well one input is known. */
export interface Uncertainty {
  /** Standard uncertainty, in the input's own SI unit. */ readonly standard: number;
  /** Readings behind it less one; leave out where it is not from readings (a rule's division). */
  readonly degreesOfFreedom?: number;
}

/** The uncertain inputs of a computation, by name; the others are taken as exact. */
export type Uncertainties<In extends object> = {
  readonly [Field in keyof In as In[Field] extends number ? Field : never]?: Uncertainty;
};

/** Share of one input in the scatter of a result. */
export interface ScatterShare {
  /** Name of the input. */ readonly input: string;
  /** From 0 to 1. */ readonly share: number;
}

/** A computed value with the scatter its inputs give it. */
export interface SpreadResult<Out extends number> {
  /** At the measured inputs. */ readonly value: Out;
  /** Combined from those of the inputs. */ readonly standardUncertainty: Out;
  /** Effective ones, by Welch and Satterthwaite. */ readonly degreesOfFreedom: number;
  /** Holds the true value with the confidence asked for. */ readonly interval: Interval<Out>;
  /** Share of each input in the variance, largest first; they sum to 1, or are all 0 without scatter. */
  readonly shares: readonly ScatterShare[];
}

/**
 * Carries measured scatter through any computation, first order: each input is moved by its uncertainty up
 * and down, half the change counts, and changes add as squares, or with their correlation. The interval takes
 * Student's factor at the effective degrees of freedom. Holds where the result is nearly straight over
 * x +/- u; where it is not, `monteCarlo` does without that.
 * Source: GUM 5.1.2 and 5.2.2 with the central differences of 5.1.3 note 2, and G.4.1.
 *
 * @param compute any formula or function of one record of inputs
 * @param confidence of the interval, 95 % unless said
 * @param correlations between inputs, none unless said
 * @throws Refusal when an uncertainty is negative or not finite, or when x +/- u leaves the range of
 * the computation
 */
export function propagate<In extends object, Out extends number>(
  compute: (inputs: In) => Out,
  inputs: In,
  uncertainties: Uncertainties<In>,
  confidence: Ratio = ratio(0.95),
  correlations: readonly Correlation[] = [],
): SpreadResult<Out> {
  const value = compute(inputs);
  const known = knownInputs("propagate", uncertainties);
  const names = known.map(({ input }) => input);
  const changes = known.map(({ input, standard }) => changeOf(compute, inputs, input, standard));
  const freedoms = known.map(({ degreesOfFreedom }) => degreesOfFreedom);
  const matrix = correlationMatrix(names, correlations).map((row) => row.map(ratio));
  const combined = combinedUncertainty({ changes: changes.map(ratio), freedoms, correlations: matrix });
  const { standard, degreesOfFreedom } = combined;
  const reach = studentFactor({ confidence, degreesOfFreedom }) * standard;
  return {
    value,
    standardUncertainty: relabel<Out>(standard),
    degreesOfFreedom,
    interval: { low: relabel<Out>(value - reach), high: relabel<Out>(value + reach) },
    shares: sortedShares(names, varianceShares(changes, matrix)),
  };
}

/** One uncertain input. */
export interface KnownInput {
  /** Name of the input. */ readonly input: string;
  /** Standard uncertainty, in the input's own SI unit. */ readonly standard: number;
  /** Readings behind it less one, or as good as endless. */ readonly degreesOfFreedom: number;
}

/**
 * The uncertain inputs in a list.
 *
 * @param caller named in errors
 * @throws Refusal when an uncertainty is negative or not finite
 */
export function knownInputs<In extends object>(
  caller: string,
  uncertainties: Uncertainties<In>,
): readonly KnownInput[] {
  const entries: readonly [string, Uncertainty][] = Object.entries(uncertainties);
  return entries.map(([input, { standard, degreesOfFreedom = manyFreedoms }]) => {
    if (!(standard >= 0 && Number.isFinite(standard))) {
      throw new Refusal(`${caller}: uncertainty of ${input} must be a number from 0 up, got ${standard}`);
    }
    return { input, standard, degreesOfFreedom };
  });
}

/** Shares by name, the largest first. */
export function sortedShares(names: readonly string[], shares: readonly number[]): readonly ScatterShare[] {
  return names.map((input, i) => ({ input, share: shares[i] ?? 0 })).sort((a, b) => b.share - a.share);
}

/** What one standard uncertainty of an input does to the result. */
function changeOf<In extends object>(
  compute: (inputs: In) => number,
  inputs: In,
  input: string,
  standard: number,
): number {
  const result = (by: number): number => compute(moved(inputs, [[input, by]]));
  return standard === 0 ? 0 : (result(standard) - result(-standard)) / 2;
}

/**
 * The same inputs, some of them moved.
 *
 * @throws TypeError for an input that is no number
 */
export function moved<In extends object>(
  inputs: In,
  offsets: readonly (readonly [input: string, by: number])[],
): In {
  const copy = { ...inputs };
  for (const [input, by] of offsets) {
    const value: unknown = withoutUnits(Reflect.get(inputs, input));
    if (typeof value !== "number")
      throw new TypeError(`uncertainty: input ${input} must be a number, got ${value}`);
    Reflect.set(copy, input, value + by);
  }
  return copy;
}

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
  /** Combined standard uncertainty of the result. */ readonly standard: Ratio;
  /** Effective ones. */ readonly degreesOfFreedom: number;
};

/** Beyond so many, Student's factor is the normal one to five digits. */
export const manyFreedoms = 10_000;

/**
 * Combined standard uncertainty: u^2 = sum r_ij c_i c_j, with the effective degrees of freedom of
 * Welch and Satterthwaite for independent inputs, u^4 / sum (c_i^4 / nu_i) truncated; for correlated inputs,
 * for which there is no rule, the least of those that count.
 *
 * @throws Refusal for lists of unlike length or fewer than one degree of freedom
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
function varianceShares(
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

/** How far two inputs err together, from -1 to 1. */
export interface Correlation {
  /** Names of the two inputs. */ readonly between: readonly [string, string];
  /** From -1 to 1. */ readonly coefficient: number;
}

/**
 * The correlations as a matrix over the named inputs: 1 on the diagonal, 0 where nothing was said.
 *
 * @throws Refusal for a name that is not among the inputs, or a coefficient beyond -1 to 1
 */
export function correlationMatrix(
  names: readonly string[],
  correlations: readonly Correlation[],
): readonly (readonly number[])[] {
  const matrix: number[][] = names.map((_, i) => names.map((_, j) => (i === j ? 1 : 0)));
  for (const { between, coefficient } of correlations) {
    const [one, other] = between;
    const [i, j] = [names.indexOf(one), names.indexOf(other)];
    if (i < 0 || j < 0 || i === j) {
      throw new Refusal(
        `correlation: expected two different inputs among ${names.join(", ")}, got ${between.join(" and ")}`,
      );
    }
    if (!(Math.abs(coefficient) <= 1)) {
      throw new Refusal(`correlation: ${between.join(" and ")} must be from -1 to 1, got ${coefficient}`);
    }
    at(matrix, i)[j] = coefficient;
    at(matrix, j)[i] = coefficient;
  }
  return matrix;
}

/**
 * Lower triangle L with L L^T = the matrix, by Cholesky's method; turns independent draws into correlated ones.
 *
 * @throws Refusal when the correlations contradict each other
 */
export function choleskyTriangle(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const rows: number[][] = [];
  for (const [i, entries] of matrix.entries()) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? row : (rows[j] ?? []);
      const rest = (entries[j] ?? 0) - row.reduce((sum, one, k) => sum + one * (other[k] ?? 0), 0);
      row.push(j === i ? diagonal(rest) : ratioOrZero(rest, other[j] ?? 0));
    }
    rows.push(row);
  }
  return rows;
}

/** Fully correlated inputs leave a rounding of zero. */
const rounding = 1e-12;

/** @throws RangeError when the square is negative: the correlations contradict each other */
function diagonal(square: number): number {
  if (square < -rounding) throw contradiction();
  return square < rounding ? 0 : Math.sqrt(square);
}

/** @throws RangeError when nothing can be divided by zero: the correlations contradict each other */
function ratioOrZero(rest: number, by: number): number {
  if (by !== 0) return rest / by;
  if (Math.abs(rest) > rounding) throw contradiction();
  return 0;
}

function contradiction(): Refusal {
  return new Refusal("correlation: the coefficients contradict each other");
}
