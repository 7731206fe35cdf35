import { type Formula, formula } from "../formula.js";
import { Count, Force, listOf } from "../quantity/index.js";
import { cite } from "../source.js";
import { measuredMean } from "./mean.js";

/** Fasteners of one sort pulled until they gave way. */
export interface PullInputs {
  readonly loads: readonly Force[];
}

/** What the tests allow to be said. */
export type PullEstimate = {
  readonly lowest: Force;
  readonly mean: Force;
  /** Standard deviation of one test. */
  readonly deviation: Force;
  readonly tests: number;
};

/**
 * Strength of one fastener from pull tests: the lowest load is what to count on, the mean tells how far
 * that is from the usual.
 *
 * @throws RangeError for fewer than two tests or a load that is not positive
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
