import { monteCarlo } from "../../measure/index.js";
import { type Force, type Ratio, ratio } from "../../quantity/index.js";
import type { RatioInterval } from "../finding.js";
import type { FastenerStrength } from "./fastener-strength.js";

/**
 * What the scatter of the builder's own tests leaves open about the use of a joint.
 *
 * @param load on the joint
 * @param share what one fastener's strength is multiplied by to get what the joint allows
 * @returns undefined for a strength from a formula, or from tests that scatter too much to tell
 */
export function useInterval(
  load: Force,
  { strength, uncertainty }: FastenerStrength,
  share: number,
): RatioInterval | undefined {
  if (!uncertainty) return undefined;
  const use = ({ each }: { readonly each: Force }): Ratio => {
    if (each <= 0) throw new RangeError("a strength must be positive");
    return ratio(load / (each * share));
  };
  try {
    const { interval, shares } = monteCarlo(use, { each: strength }, { each: uncertainty });
    return {
      ...interval,
      shares: shares.map(({ share: part }) => ({ input: "your pull tests", share: part })),
    };
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
