/** Strengths, where they are known from, and what their scatter leaves open about a joint. */
import type { WorkedLine } from "../../formula.js";
import { keptByContent } from "../../kept/index.js";
import {
  characteristicStrength,
  type DrawnSpread,
  monteCarlo,
  type Uncertainty,
} from "../../measure/index.js";
import { Force, Ratio, ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import type { RatioInterval } from "../ratio-interval.js";

/** A strength, with its scatter where the builder's own tests tell it. */
export interface KnownStrength {
  /** The load it holds. */
  readonly strength: Force;
  /** The worked lines behind it; none for a maker's word. */
  readonly because: readonly WorkedLine[];
  /** How well tests tell it; absent for a formula or a maker's word, whose scatter nobody measured. */
  readonly uncertainty?: Uncertainty;
  /** Which tests: "shear tests of rivet 3/16 short". */
  readonly tests?: string;
}

/** Strength of one fastener in its panel, one way, and where it comes from. */
export interface FastenerStrength extends KnownStrength {
  /** Where it comes from. */
  readonly from: "tests" | "formula";
  /**
   * What the figure means: what 95 of 100 hold, the mean or least load at which it gives, or a code's allowable, whose
   * strength is the safety factor times it, so that no margin is taken twice.
   */
  readonly figure: "characteristic" | "ultimate" | "allowable";
}

/** Whether a strength was found, or the test that is still to be made. */
export function isKnown<Strength extends KnownStrength>(
  strength: Strength | MissingMeasurement,
): strength is Strength {
  return "strength" in strength;
}

/** Fewer tests give no strength. */
const leastTests = 3;

/**
 * What 95 of 100 hold by the builder's own tests, with the standard uncertainty of that bound.
 *
 * @param tests in words, for the shares of a scatter
 * @returns undefined for fewer than three tests
 */
export function testedStrength(loads: readonly Force[], tests: string): KnownStrength | undefined {
  return loads.length < leastTests ? undefined : keptStrength({ loads, tests });
}

/** Groups of tests kept: more than a builder makes. */
const mostGroups = 60;

const keptStrength = keptByContent(mostGroups, strengthByTests);

function strengthByTests({
  loads,
  tests,
}: {
  readonly loads: readonly Force[];
  readonly tests: string;
}): KnownStrength {
  const line = characteristicStrength.worked({ loads });
  const { strength, scatter, factor, tests: count } = line.value;
  // Of mean less factor times deviation, both from n readings.
  const standard = strength * scatter * Math.sqrt(1 / count + factor ** 2 / (2 * (count - 1)));
  return { strength, because: [line], uncertainty: { standard, degreesOfFreedom: count - 1 }, tests };
}

/**
 * What the scatter of the builder's own tests leaves open about the use of a joint.
 *
 * @param load on the joint
 * @param share what one fastener's strength is multiplied by to get what the joint allows
 * @returns undefined for a strength from a formula
 */
export function useInterval(load: Force, known: KnownStrength, share: number): RatioInterval | undefined {
  const { strength, uncertainty, tests } = known;
  const inverse = inverseInterval({
    strength,
    because: [],
    ...(uncertainty ? { uncertainty } : {}),
    ...(tests ? { tests } : {}),
  });
  const scale = load / (strength * share);
  return inverse && { ...inverse, low: scale * inverse.low, high: scale * inverse.high };
}

/** What scatter leaves open about one over a strength, as a share of it. */
const inverseInterval: (known: KnownStrength) => RatioInterval | undefined = keptByContent(
  mostGroups,
  (known) => strengthInterval({ each: known }, ({ each }) => known.strength / each),
);

/**
 * What the scatter of several strengths leaves open about the use of a joint, with the share of each. Drawn, and by
 * the logarithm, as the bound itself was found: a strength never falls to nothing.
 *
 * @param known strengths by name; those from a formula or a maker stay as they are
 * @param use of the joint for given strengths: load over what is allowed
 * @returns undefined where no tests count
 */
export function strengthInterval<Name extends string>(
  known: Readonly<Record<Name, KnownStrength>>,
  use: (strengths: Readonly<Record<Name, Force>>) => number,
): RatioInterval | undefined {
  const parts = Object.entries<KnownStrength>(known);
  const scatter = parts.flatMap(([name, { strength, uncertainty }]): [string, Uncertainty][] =>
    uncertainty ? [[name, { ...uncertainty, standard: uncertainty.standard / strength }]] : [],
  );
  if (scatter.length === 0) return undefined;
  const moved = (logs: Readonly<Record<string, Ratio>>): Ratio => {
    const each = parts.map(([name, { strength }]) => [name, Force.si(strength * Math.exp(logs[name] ?? 0))]);
    return Ratio.si(use(Object.fromEntries(each) as Record<Name, Force>));
  };
  const still = Object.fromEntries(parts.map(([name]) => [name, ratio(0)]));
  return inWords(monteCarlo(moved, still, Object.fromEntries(scatter), { draws }), known);
}

/** An end of the interval is then sure to about 4 % of the uncertainty; nobody rivets finer. */
const draws = 5000;

/** Nothing to say where the tested strengths do not set the limit. */
function inWords(
  { interval, shares }: DrawnSpread<Ratio>,
  known: Readonly<Record<string, KnownStrength>>,
): RatioInterval | undefined {
  if (interval.low === interval.high) return undefined;
  return {
    ...interval,
    shares: shares.map(({ input, share }) => ({ input: `your ${known[input]?.tests ?? input}`, share })),
  };
}
