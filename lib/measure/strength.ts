/** What can be counted on from a few tests: the factor for so few, and the strengths it gives. */
import { mean, sampleStandardDeviation } from "simple-statistics";
import { type Formula, formula } from "../formula.js";
import { Count, Force, Length, listOf, Pressure, Ratio, ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { leastSpan } from "./bend-modulus.js";
import { crossing, normalPoint, normalShare } from "./distributions.js";
import { measuredMean } from "./mean.js";

/** A lower bound from few tests. */
export interface ToleranceInputs {
  /** How many pieces were tested. */ readonly tests: number;
  /** Share of all pieces that shall lie above the bound: 0.95. */ readonly share: Ratio;
  /** How sure that is to be: 0.75. */ readonly confidence: Ratio;
}

/**
 * How many standard deviations below the mean of n tests the bound lies that a share p of all pieces exceeds,
 * with a confidence: k = t' / sqrt(n), t' being the point of the noncentral t distribution with n - 1 degrees
 * of freedom and noncentrality z_p sqrt(n). The distribution is integrated over the scatter of s.
 *
 * @throws Refusal for fewer than 3 or more than 500 tests
 * @example toleranceFactor(toleranceFactor.read({ tests: 5, share: 0.9, confidence: 0.95 })) // 3.407
 */
export const toleranceFactor: Formula<ToleranceInputs, Ratio> = formula({
  id: "tolerance.factor",
  title: "Factor for a lower bound from few tests",
  equation: String.raw`k = \frac{t'_{\gamma}(n-1,\; z_p\sqrt{n})}{\sqrt{n}}`,
  inputs: {
    tests: { symbol: "n", kind: Count, meaning: "tests", min: 3, max: 500 },
    share: { symbol: "p", kind: Ratio, meaning: "share of pieces above the bound", min: 0.5, below: 1 },
    confidence: { symbol: String.raw`\gamma`, kind: Ratio, meaning: "confidence", min: 0.5, below: 1 },
  },
  result: { symbol: "k", kind: Ratio, meaning: "standard deviations below the mean" },
  source: [
    cite("iso-16269-6", "one-sided interval, standard deviation not known"),
    cite("en-14358", "3.2, factor k_s at p = 0.95 and 75 % confidence"),
  ],
  validity: "Tests drawn at random from one lot, scattering normally (or their logarithms do).",
  compute: ({ tests, share, confidence }) => {
    const shift = normalPoint(share) * Math.sqrt(tests);
    const below = (t: number): number => noncentralShare(t, tests - 1, shift) - confidence;
    return crossing(below, 0, 100 + 10 * shift) / Math.sqrt(tests);
  },
});

/** Steps of the integral; the integrand is smooth, and twice as many change nothing in ten digits. */
const steps = 400;

/** P(T' <= t): the normal share at t w - shift, over w = s / sigma, whose density is that of chi / sqrt(nu). */
function noncentralShare(t: number, freedom: number, shift: number): number {
  const reach = 12 / Math.sqrt(2 * freedom);
  const low = Math.max(0, 1 - reach);
  const width = (1 + reach - low) / steps;
  let sum = 0;
  let weight = 0;
  for (let i = 1; i < steps; i++) {
    const w = low + i * width;
    const density =
      Math.exp((freedom - 1) * Math.log(w) - (freedom * (w * w - 1)) / 2) * (i % 2 === 1 ? 4 : 2);
    weight += density;
    sum += density * normalShare(t * w - shift);
  }
  return sum / weight;
}

/** Like pieces tested until they gave way. */
export interface StrengthTests {
  /** At which each piece gave way. */ readonly loads: readonly Force[];
}

/** The strength that can be counted on. */
export type CharacteristicStrength = {
  /** 95 of 100 pieces hold more, at 75 % confidence. */ readonly strength: Force;
  /** Half of the pieces hold more. */ readonly median: Force;
  /** Standard deviation of the logarithms, at least 0.05: about the scatter as a share. */
  readonly scatter: Ratio;
  /** Standard deviations below the mean of the logarithms. */ readonly factor: Ratio;
  /** How many pieces were tested. */ readonly tests: number;
};

/** EN 14358 takes no less, however well a few tests agree. */
const leastScatter = 0.05;
const share = ratio(0.95);
const confidence = ratio(0.75);

/**
 * Lower 5 % strength at 75 % confidence from tests, their logarithms being normal: F_k = exp(y - k_s s_y).
 *
 * @throws Refusal for fewer than three tests or a load that is not positive
 * @example characteristicStrength(characteristicStrength.read({ loads: ["100 N", "150 N", "200 N",
 *   "260 N"] })) // strength 55.76 N, median 167.1 N, scatter 0.4095, factor 2.681, tests 4
 */
export const characteristicStrength: Formula<StrengthTests, CharacteristicStrength> = formula<
  StrengthTests,
  CharacteristicStrength
>({
  id: "strength.characteristic",
  title: "Strength to count on from tests",
  equation: String.raw`F_k = \exp(\bar{y} - k_s\,s_y),\quad y_i = \ln F_i,\quad s_y \ge 0.05`,
  inputs: { loads: { symbol: "F_i", kind: listOf(Force), meaning: "loads at which they gave way" } },
  result: {
    strength: { symbol: "F_k", kind: Force, meaning: "exceeded by 95 of 100, at 75 % confidence" },
    median: { symbol: String.raw`e^{\bar y}`, kind: Force, meaning: "half hold more" },
    scatter: { symbol: "s_y", kind: Ratio, meaning: "scatter of the logarithms" },
    factor: { symbol: "k_s", kind: Ratio, meaning: "factor for so many tests" },
    tests: { symbol: "n", kind: Count, meaning: "tests" },
  },
  source: [cite("en-14358", "3.2.2, logarithmic normal distribution")],
  validity:
    "Same piece, same sheet, same direction of pull, tests taken at random; not a safe load by itself.",
  refuse: ({ loads }) => [
    ...(loads.length >= 3 ? [] : [`at least 3 tests, got ${loads.length}: pull more`]),
    ...(loads.every((load) => load > 0) ? [] : ["every load must be positive"]),
  ],
  warn: ({ loads }) =>
    loads.length < 5
      ? [`only ${loads.length} tests: the factor is large, each further test lifts the value`]
      : [],
  compute: ({ loads }) => characteristicOf(loads),
});

/** The lower 5 % value at 75 % confidence of what was tested, in the unit of the values. */
function characteristicOf(values: readonly number[]) {
  const logs = values.map((value) => Math.log(value));
  const tests = logs.length;
  const middle = mean(logs);
  const scatter = Math.max(leastScatter, sampleStandardDeviation(logs));
  const factor = toleranceFactor({ tests, share, confidence });
  return {
    strength: Math.exp(middle - factor * scatter),
    median: Math.exp(middle),
    scatter,
    factor,
    tests,
  };
}

/** Strips of one sheet and direction, bent until they broke. */
export interface BrokenStrips {
  /** At which each strip broke. */ readonly stresses: readonly Pressure[];
}

/** The bending strength that can be counted on. */
export type CharacteristicStress = {
  /** 95 of 100 strips hold more, at 75 % confidence. */ readonly strength: Pressure;
  /** Half of the strips hold more. */ readonly median: Pressure;
  /** Standard deviation of the logarithms, at least 0.05: about the scatter as a share. */
  readonly scatter: Ratio;
  /** Standard deviations below the mean of the logarithms. */ readonly factor: Ratio;
  /** How many strips were broken. */ readonly tests: number;
};

/**
 * Lower 5 % bending strength at 75 % confidence from broken strips, as for fasteners: f_k = exp(y - k_s s_y).
 *
 * @throws Refusal for fewer than three strips or a stress that is not positive
 * @example characteristicStress(characteristicStress.read({ stresses: ["50 MPa", "55 MPa", "60 MPa"] })) // strength 41.15 MPa, median 54.85 MPa, scatter 0.09119, factor 3.152, tests 3
 */
export const characteristicStress: Formula<BrokenStrips, CharacteristicStress> = formula<
  BrokenStrips,
  CharacteristicStress
>({
  id: "strength.characteristic.stress",
  title: "Bending strength to count on from broken strips",
  equation: String.raw`f_k = \exp(\bar{y} - k_s\,s_y),\quad y_i = \ln \sigma_i,\quad s_y \ge 0.05`,
  inputs: {
    stresses: {
      symbol: String.raw`\sigma_i`,
      kind: listOf(Pressure),
      meaning: "stresses at which they broke",
    },
  },
  result: {
    strength: { symbol: "f_k", kind: Pressure, meaning: "exceeded by 95 of 100, at 75 % confidence" },
    median: { symbol: String.raw`e^{\bar y}`, kind: Pressure, meaning: "half hold more" },
    scatter: { symbol: "s_y", kind: Ratio, meaning: "scatter of the logarithms" },
    factor: { symbol: "k_s", kind: Ratio, meaning: "factor for so many strips" },
    tests: { symbol: "n", kind: Count, meaning: "strips" },
  },
  source: [cite("en-14358", "3.2.2, logarithmic normal distribution")],
  validity:
    "Strips of one sheet and direction, cut from all over it; small strips run higher than large panels.",
  refuse: ({ stresses }) => [
    ...(stresses.length >= 3 ? [] : [`at least 3 strips, got ${stresses.length}: break more`]),
    ...(stresses.every((stress) => stress > 0) ? [] : ["every stress must be positive"]),
  ],
  warn: ({ stresses }) =>
    stresses.length < 5
      ? [`only ${stresses.length} strips: the factor is large, each further strip lifts the value`]
      : [],
  compute: ({ stresses }) => characteristicOf(stresses),
});

/** A strip on two rests, loaded in the middle until it broke. */
export interface BrokenStrip {
  /** At which it broke. */ readonly load: Force;
  /** Between the rests. */ readonly span: Length;
  /** Width of the strip. */ readonly width: Length;
  /** Thickness of the strip. */ readonly thickness: Length;
}

/**
 * Stress at which a strip broke, three-point bend: f = 3 F L / (2 b h^2).
 *
 * @throws Refusal when the span is below ten thicknesses, where it shears before it breaks
 * @example stripStrength(stripStrength.read({ load: "600 N", span: "200 mm", width: "50 mm", thickness: "9 mm" })) // 44.44 MPa
 */
export const stripStrength: Formula<BrokenStrip, Pressure> = formula<BrokenStrip, Pressure>({
  id: "bend.strength",
  title: "Bending strength of a strip",
  equation: String.raw`f_m = \frac{3\,F\,L}{2\,b\,h^2}`,
  inputs: {
    load: { symbol: "F", kind: Force, meaning: "load at which it broke", above: 0 },
    span: { symbol: "L", kind: Length, meaning: "span between the rests", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width of the strip", above: 0 },
    thickness: { symbol: "h", kind: Length, meaning: "thickness of the strip", above: 0 },
  },
  result: { symbol: "f_m", kind: Pressure, meaning: "stress at the face when it broke" },
  source: [
    cite("en-310", "bending strength, three-point bending"),
    cite("strength-of-materials", "flexure formula, load in the middle"),
  ],
  validity:
    "Load at the middle, rests free to turn, broken within about a minute; span 20 thicknesses or more.",
  refuse: ({ span, thickness }) =>
    span < leastSpan(thickness)
      ? [
          `span must be at least 10 thicknesses (${Length.show(Length.si(10 * thickness))}), got ${Length.show(span)}`,
        ]
      : [],
  warn: ({ span, thickness }) =>
    span < 2 * leastSpan(thickness) ? ["span below 20 thicknesses: it may shear before it breaks"] : [],
  compute: ({ load, span, width, thickness }) => (3 * load * span) / (2 * width * thickness ** 2),
});

/** Fasteners of one sort pulled until they gave way. */
export interface PullInputs {
  /** At which each fastener gave way. */ readonly loads: readonly Force[];
}

/** What the tests allow to be said. */
export type PullEstimate = {
  /** The lowest load. */ readonly lowest: Force;
  /** Mean of the loads. */ readonly mean: Force;
  /** Standard deviation of one test. */ readonly deviation: Force;
  /** How many fasteners were pulled. */ readonly tests: number;
};

/**
 * Strength of one fastener from pull tests: the lowest load is what to count on, the mean tells how far
 * that is from the usual.
 *
 * @throws Refusal for fewer than two tests or a load that is not positive
 * @example pullEstimate(pullEstimate.read({ loads: ["100 lbf", "120 lbf"] })) // lowest 444.8 N, mean 489.3 N, deviation 62.91 N, tests 2
 */
export const pullEstimate: Formula<PullInputs, PullEstimate> = formula<PullInputs, PullEstimate>({
  id: "pull.lowest",
  title: "Strength of a fastener from pull tests",
  equation: String.raw`F = \min F_i,\quad \bar{F} = \frac{\sum F_i}{n}`,
  inputs: { loads: { symbol: "F_i", kind: listOf(Force), meaning: "loads at which they gave way" } },
  result: {
    lowest: { symbol: "F", kind: Force, meaning: "lowest load" },
    mean: { symbol: String.raw`\bar{F}`, kind: Force, meaning: "mean load" },
    deviation: { symbol: "s", kind: Force, meaning: "standard deviation of one test" },
    tests: { symbol: "n", kind: Count, meaning: "tests" },
  },
  source: [cite("gum", "4.2.1, 4.2.2"), cite("common-practice", "count on the lowest of a few tests")],
  validity: "Same fastener, same sheet, same direction of pull; the lowest of few is no guaranteed strength.",
  refuse: ({ loads }) => [
    ...(loads.length >= 2 ? [] : [`at least 2 tests, got ${loads.length}`]),
    ...(loads.every((load) => load > 0) ? [] : ["every load must be positive"]),
  ],
  warn: ({ loads }) => (loads.length < 5 ? [`only ${loads.length} tests: pull five or more`] : []),
  compute: ({ loads }) => {
    const { mean, standardUncertainty } = measuredMean(loads);
    const tests = loads.length;
    return { lowest: Math.min(...loads), mean, deviation: standardUncertainty * Math.sqrt(tests), tests };
  },
});
