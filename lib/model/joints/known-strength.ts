/** Strengths and where they are known from. */

import type { WorkedLine } from "../../formula.js";
import { characteristicStrength, type Uncertainty } from "../../measure/index.js";
import type { Force } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";

/** A strength, with its scatter where the builder's own tests tell it. */
export interface KnownStrength {
  readonly strength: Force;
  readonly because: readonly WorkedLine[];
  /** How well tests tell it; absent for a formula or a maker's word, whose scatter nobody measured. */
  readonly uncertainty?: Uncertainty;
  /** Which tests: "shear tests of rivet 3/16 short". */
  readonly tests?: string;
}

/** Strength of one fastener in its panel, one way, and where it comes from. */
export interface FastenerStrength extends KnownStrength {
  readonly from: "tests" | "formula";
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
  if (loads.length < leastTests) return undefined;
  const line = characteristicStrength.worked({ loads });
  const { strength, scatter, factor, tests: count } = line.value;
  // Of mean less factor times deviation, both from n readings.
  const standard = strength * scatter * Math.sqrt(1 / count + factor ** 2 / (2 * (count - 1)));
  return { strength, because: [line], uncertainty: { standard, degreesOfFreedom: count - 1 }, tests };
}
