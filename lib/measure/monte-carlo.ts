import { at } from "../algebra/lists.js";
import { type RandomStream, seededRandom } from "../algebra/random.js";
import { type Ratio, ratio } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { type Interval, relabel } from "./mean.js";
import {
  type Correlation,
  choleskyTriangle,
  correlationMatrix,
  type KnownInput,
  knownInputs,
  manyFreedoms,
  moved,
  type ScatterShare,
  sortedShares,
  type Uncertainties,
} from "./propagate.js";

/** How a spread is drawn. */
export interface DrawOptions {
  /** Draws, 20 000 unless said; a 95 % end is then sure to about 2 % of the uncertainty. */
  readonly draws?: number;
  /** The same seed gives the same draws. 1 unless said. */ readonly seed?: number;
  /** Of the interval, 95 % unless said. */ readonly confidence?: Ratio;
  /** Between inputs, none unless said. */ readonly correlations?: readonly Correlation[];
}

/** What many draws of a computation gave. */
export interface DrawnSpread<Out extends number> {
  /** At the measured inputs. */ readonly value: Out;
  /** Mean of the draws; off the value where the computation is curved. */ readonly mean: Out;
  /** Standard deviation of the draws. */ readonly standardUncertainty: Out;
  /** Holds the middle share of the draws. */ readonly interval: Interval<Out>;
  /** Share of each input in the variance, largest first; what is missing to 1 is curvature and interplay. */
  readonly shares: readonly ScatterShare[];
  /** Draws that count. */ readonly draws: number;
  /** Draws left out, since they fell outside the range of the computation. */
  readonly left: number;
}

/** More draws than this share outside the range, and what is left says nothing. */
const mostLeft = 0.01;

/**
 * Carries measured scatter through any computation by drawing it: inputs scatter normally, or as Student's t
 * where they come from few readings, together where they are correlated. Needs no straightness.
 * Source: JCGM 101, 5 and 6.4; the generator is seeded and the same everywhere.
 *
 * @param compute any formula or function of one record of inputs
 * @throws Refusal for a wrong uncertainty, contradicting correlations, fewer than 1000 draws, or when more
 * than one draw in a hundred falls outside the range of the computation
 */
export function monteCarlo<In extends object, Out extends number>(
  compute: (inputs: In) => Out,
  inputs: In,
  uncertainties: Uncertainties<In>,
  { draws = 20_000, seed = 1, confidence = ratio(0.95), correlations = [] }: DrawOptions = {},
): DrawnSpread<Out> {
  if (!(Number.isInteger(draws) && draws >= 1000)) {
    throw new Refusal(`monte carlo: draws must be a whole number of at least 1000, got ${draws}`);
  }
  const known = knownInputs("monte carlo", uncertainties);
  const names = known.map(({ input }) => input);
  const triangle = choleskyTriangle(correlationMatrix(names, correlations));
  const drawn = drawAll(compute, inputs, known, triangle, draws, seededRandom(seed));
  if (drawn.left > mostLeft * draws) {
    throw new Refusal(
      `monte carlo: ${drawn.left} of ${draws} draws fall outside the range of the computation: measure better`,
    );
  }
  return { value: compute(inputs), ...summary<Out>(names, drawn, confidence), left: drawn.left };
}

interface Drawn {
  /** What each draw gave. */ readonly results: Float64Array;
  /** Offsets of the inputs, one list an input, as long as the results. */
  readonly offsets: readonly Float64Array[];
  /** Draws outside the range of the computation. */ readonly left: number;
}

function drawAll<In extends object>(
  compute: (inputs: In) => number,
  inputs: In,
  known: readonly KnownInput[],
  triangle: readonly (readonly number[])[],
  draws: number,
  random: RandomStream,
): Drawn {
  const results = new Float64Array(draws);
  const drawn = known.map(() => new Float64Array(draws));
  const normals = known.map(() => 0);
  let kept = 0;
  for (let draw = 0; draw < draws; draw++) {
    for (let i = 0; i < normals.length; i++) normals[i] = random.normal();
    const offsets = known.map((one, i) => offsetOf(one, at(triangle, i), normals, random));
    const result = within(() =>
      compute(
        moved(
          inputs,
          known.map(({ input }, i) => [input, at(offsets, i)]),
        ),
      ),
    );
    for (const [i, list] of drawn.entries()) list[kept] = at(offsets, i);
    if (result !== undefined) results[kept++] = result;
  }
  const whole = (list: Float64Array): Float64Array => list.subarray(0, kept);
  return { results: whole(results), offsets: drawn.map(whole), left: draws - kept };
}

/** Correlated normal draws, widened to Student's t where few readings stand behind the input. */
function offsetOf(
  { standard, degreesOfFreedom }: KnownInput,
  row: readonly number[],
  normals: readonly number[],
  random: RandomStream,
): number {
  let offset = 0;
  for (let k = 0; k < row.length; k++) offset += (row[k] ?? 0) * (normals[k] ?? 0);
  if (degreesOfFreedom < manyFreedoms) {
    offset /= Math.sqrt(random.chiSquare(degreesOfFreedom) / degreesOfFreedom);
  }
  return offset * standard;
}

/**
 * A draw outside a formula's range has no result.
 *
 * @throws whatever is no refusal of the computation
 */
function within(compute: () => number): number | undefined {
  try {
    return compute();
  } catch (error) {
    if (error instanceof Refusal) return undefined;
    throw error;
  }
}

function summary<Out extends number>(
  names: readonly string[],
  { results, offsets }: Drawn,
  confidence: number,
): Pick<DrawnSpread<Out>, "mean" | "standardUncertainty" | "interval" | "shares" | "draws"> {
  const draws = results.length;
  const mean = results.reduce((sum, one) => sum + one, 0) / draws;
  const variance = results.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (draws - 1);
  const sorted = Float64Array.from(results).sort();
  const quantile = (share: number): number => sorted[Math.round(share * (draws - 1))] ?? mean;
  return {
    mean: relabel<Out>(mean),
    standardUncertainty: relabel<Out>(Math.sqrt(variance)),
    interval: {
      low: relabel<Out>(quantile((1 - confidence) / 2)),
      high: relabel<Out>(quantile((1 + confidence) / 2)),
    },
    shares: sortedShares(names, explainedShares(offsets, results, mean, variance)),
    draws,
  };
}

/**
 * Share of the variance that a plane through the draws gives to each input: slope times covariance with the
 * result. What is missing to 1 is curvature and interplay.
 *
 * @param offsets draws of each input less its middle
 * @param mean of the results
 * @param variance of the results
 */
function explainedShares(
  offsets: readonly Float64Array[],
  results: Float64Array,
  mean: number,
  variance: number,
): readonly number[] {
  if (variance === 0) return offsets.map(() => 0);
  const sizes = offsets.map((list) => Math.sqrt(inner(list, list)));
  const alike = offsets.map((a, i) =>
    offsets.map((b, j) => (i === j ? 1 : inner(a, b) / ((sizes[i] || 1) * (sizes[j] || 1)))),
  );
  const about = results.map((one) => one - mean);
  const towards = offsets.map((list, i) => inner(list, about) / (sizes[i] || 1));
  const slopes = solvedBy(choleskyTriangle(alike), towards);
  return slopes.map((slope, i) => (slope * (towards[i] ?? 0)) / (variance * (results.length - 1)));
}

function inner(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
}

/** Solves L L^T x = right; an input without a share of its own gets none. */
function solvedBy(triangle: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const halfway: number[] = [];
  for (const [i, row] of triangle.entries()) {
    const rest = (right[i] ?? 0) - halfway.reduce((sum, one, k) => sum + one * (row[k] ?? 0), 0);
    halfway.push(row[i] ? rest / (row[i] ?? 1) : 0);
  }
  const solution = halfway.map(() => 0);
  for (let i = triangle.length - 1; i >= 0; i--) {
    const pivot = triangle[i]?.[i] ?? 0;
    const rest = solution.reduce((sum, one, k) => (k > i ? sum + one * (triangle[k]?.[i] ?? 0) : sum), 0);
    solution[i] = pivot ? ((halfway[i] ?? 0) - rest) / pivot : 0;
  }
  return solution;
}
