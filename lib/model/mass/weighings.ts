/** What the builder's weighings of offcuts leave open, and what that does to anything reckoned from the masses. */
import { measuredMean, sheetDensity, studentFactor } from "../../measure/index.js";
import { Mass, ratio } from "../../quantity/index.js";
import type { RatioInterval } from "../ratio-interval.js";
import type { ReviewInput } from "../review-input.js";

/** A material whose density was weighed at least twice. */
export interface WeighedSpread {
  /** The name of the sheet or facing. */
  readonly material: string;
  /** Half of the 95 % interval of its density, as a share of it. */
  readonly relative: number;
}

/** Every material that was weighed at least twice. */
export function weighedSpreads({ measurements: { weights } }: ReviewInput): readonly WeighedSpread[] {
  const materials = [...new Set(weights.map(({ material }) => material))];
  return materials.flatMap((material) => {
    const densities = weights
      .filter((row) => row.material === material)
      .map((row) => sheetDensity(row).density);
    if (densities.length < 2) return [];
    const { mean, standardUncertainty, degreesOfFreedom } = measuredMean(densities);
    const factor = studentFactor({ confidence: ratio(0.95), degreesOfFreedom });
    return [{ material, relative: (factor * standardUncertainty) / mean }];
  });
}

/**
 * The 95 % interval that the weighings give a ratio: each density moved to the end of its own interval, the rest left.
 *
 * @param ratioOf the ratio, from an input with other weighings
 * @returns undefined where nothing was weighed twice, or the weighings change nothing
 */
export function weighedInterval(
  input: ReviewInput,
  ratioOf: (input: ReviewInput) => number,
): RatioInterval | undefined {
  const ratioNow = ratioOf(input);
  const changes = weighedSpreads(input).map(({ material, relative }) => ({
    input: `density of ${material}`,
    change: ratioOf(heavier(input, material, 1 + relative)) - ratioNow,
  }));
  const half = Math.hypot(...changes.map(({ change }) => change));
  if (half === 0) return undefined;
  const shares = changes.map(({ change, ...of }) => ({ ...of, share: (change / half) ** 2 }));
  return {
    low: ratioNow - half,
    high: ratioNow + half,
    shares: shares.filter(({ share }) => share > 0).sort((a, b) => b.share - a.share),
  };
}

/** The same job with every offcut of a material weighed heavier by a factor. */
function heavier(input: ReviewInput, material: string, factor: number): ReviewInput {
  const weights = input.measurements.weights.map((row) =>
    row.material === material ? { ...row, mass: Mass.si(row.mass * factor) } : row,
  );
  return { ...input, measurements: { ...input.measurements, weights } };
}
