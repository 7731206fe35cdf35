import { mean, sampleStandardDeviation } from "simple-statistics";
import { type Formula, formula } from "../formula.js";
import { listOf, Ratio, ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { studentFactor } from "./distributions.js";

/** Readings of one thing. */
export interface MeanInputs {
  /** The readings, all in one unit. */ readonly values: readonly Ratio[];
  /** Share of cases in which the interval holds the true mean. */ readonly confidence: Ratio;
}

/** A mean and how well it is known. */
export type MeanResult = {
  /** Mean of the readings. */ readonly mean: Ratio;
  /** Sample standard deviation of one reading. */ readonly deviation: Ratio;
  /** Standard uncertainty of the mean. */ readonly standardError: Ratio;
  /** The mean is known to plus or minus this. */ readonly halfWidth: Ratio;
};

/**
 * Mean of repeated readings with Student's interval: m = sum x / n, s^2 = sum (x - m)^2 / (n - 1),
 * u = s / sqrt(n), half width t u. In whatever unit the readings have.
 *
 * @throws Refusal for fewer than two readings
 * @example meanWithInterval(meanWithInterval.read({ values: [4, 6, 8], confidence: 0.95 })) // mean 6, deviation 2, standardError 1.155, halfWidth 4.968
 */
export const meanWithInterval: Formula<MeanInputs, MeanResult> = formula<MeanInputs, MeanResult>({
  id: "mean.interval",
  title: "Mean of repeated readings with its interval",
  equation: String.raw`\bar{x} \pm t\,\frac{s}{\sqrt{n}},\quad s^2 = \frac{\sum (x_i - \bar{x})^2}{n - 1}`,
  inputs: {
    values: { symbol: "x_i", kind: listOf(Ratio), meaning: "readings, all in one unit" },
    confidence: { symbol: String.raw`\gamma`, kind: Ratio, meaning: "confidence", above: 0, below: 1 },
  },
  result: {
    mean: { symbol: String.raw`\bar{x}`, kind: Ratio, meaning: "mean" },
    deviation: { symbol: "s", kind: Ratio, meaning: "standard deviation of one reading" },
    standardError: { symbol: "u", kind: Ratio, meaning: "standard uncertainty of the mean" },
    halfWidth: { symbol: "U", kind: Ratio, meaning: "half width of the interval" },
  },
  source: [cite("gum", "4.2.1 to 4.2.3, 4.4.3"), cite("statistical-tables", "Student's t")],
  validity: "For readings taken apart from each other; two readings give a very wide interval.",
  refuse: ({ values }) => (values.length < 2 ? [`at least 2 readings, got ${values.length}`] : []),
  compute: ({ values, confidence }) => {
    const deviation = sampleStandardDeviation([...values]);
    const standardError = deviation / Math.sqrt(values.length);
    const factor = studentFactor({ confidence, degreesOfFreedom: values.length - 1 });
    return { mean: mean([...values]), deviation, standardError, halfWidth: factor * standardError };
  },
});

/** A range with both ends, in the quantity's own kind. */
export interface Interval<Q extends number> {
  /** The lower end. */ readonly low: Q;
  /** The upper end. */ readonly high: Q;
}

/** A measured mean of any quantity. */
export interface MeasuredMean<Q extends number> {
  /** Mean of the readings. */ readonly mean: Q;
  /** Of the mean. */ readonly standardUncertainty: Q;
  /** Readings less one. */ readonly degreesOfFreedom: number;
  /** Holds the true mean with the confidence asked for. */ readonly interval: Interval<Q>;
}

/**
 * Mean of readings of one quantity with its interval at the given confidence (95 % unless said).
 *
 * @throws Refusal for fewer than two readings
 * @example measuredMean([mm(6.4), mm(6.5), mm(6.3)]).interval
 */
export function measuredMean<Q extends number>(
  readings: readonly Q[],
  confidence: Ratio = ratio(0.95),
): MeasuredMean<Q> {
  const values = readings.map((reading) => ratio(reading));
  const { mean: middle, standardError, halfWidth } = meanWithInterval({ values, confidence });
  return {
    mean: relabel<Q>(middle),
    standardUncertainty: relabel<Q>(standardError),
    degreesOfFreedom: readings.length - 1,
    interval: { low: relabel<Q>(middle - halfWidth), high: relabel<Q>(middle + halfWidth) },
  };
}

/** A plain number under the label of what it was worked out from: a mean is of the kind of its readings. */
export function relabel<Q extends number>(value: number): Q {
  return value as Q;
}
