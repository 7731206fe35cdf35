import { type Formula, formula } from "../formula.js";
import { Count, Force, listOf, Ratio, ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { toleranceFactor } from "./tolerance-factor.js";

/** Like pieces tested until they gave way. */
export interface StrengthTests {
  readonly loads: readonly Force[];
}

/** The strength that can be counted on. */
export type CharacteristicStrength = {
  /** 95 of 100 pieces hold more, at 75 % confidence. */
  readonly strength: Force;
  readonly median: Force;
  /** Standard deviation of the logarithms, at least 0.05: about the scatter as a share. */
  readonly scatter: Ratio;
  readonly factor: Ratio;
  readonly tests: number;
};

/** EN 14358 takes no less, however well a few tests agree. */
const leastScatter = 0.05;
const share = ratio(0.95);
const confidence = ratio(0.75);

/**
 * Lower 5 % strength at 75 % confidence from tests, their logarithms being normal: F_k = exp(y - k_s s_y).
 *
 * @throws RangeError for fewer than three tests or a load that is not positive
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
  compute: ({ loads }) => {
    const logs = loads.map((load) => Math.log(load));
    const tests = logs.length;
    const mean = logs.reduce((sum, one) => sum + one, 0) / tests;
    const own = Math.sqrt(logs.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (tests - 1));
    const scatter = Math.max(leastScatter, own);
    const factor = toleranceFactor({ tests, share, confidence });
    return { strength: Math.exp(mean - factor * scatter), median: Math.exp(mean), scatter, factor, tests };
  },
});
