/** What the series formulas answer about a panel without openings. */
import type { FormulaSymbols } from "../../formula.js";
import { edgeMoments, largestDeflection, type PlateSeries, plateAt } from "../series/index.js";
import {
  edgeMomentSymbols,
  largestOf,
  largestSymbols,
  type PlateEdgeMoments,
  type PlateLargest,
  type PlateResponse,
  responseOf,
  responseSymbols,
} from "./plate-results.js";

/** Deflection and moments in the middle (or under the middle of the patch), where it sags most, and its edges. */
export type PlateAnswer = PlateResponse & PlateLargest & PlateEdgeMoments;

/**
 * Symbols of the answer.
 *
 * @param place what the first deflection is: "in the middle", "under the load"
 */
export function answerSymbols(place: string): FormulaSymbols<PlateAnswer> {
  const deflection = { ...responseSymbols.deflection, meaning: `deflection ${place}` };
  return { ...responseSymbols, deflection, ...largestSymbols, ...edgeMomentSymbols };
}

/**
 * Reads the answer from the solved plate.
 *
 * @param series the solved plate
 * @param x place of the first deflection and moments, m
 * @param y the same along y, m
 */
export function answerAt(
  series: PlateSeries,
  x: number,
  y: number,
): { readonly [Field in keyof PlateAnswer]: number } {
  const { clamped, free } = edgeMoments(series);
  return {
    ...responseOf(plateAt(series, x, y)),
    ...largestOf(largestDeflection(series)),
    clampedMoment: clamped,
    freeMoment: free,
  };
}

/** Share of a side below which a patch is too small for the series to settle the moment under it. */
const smallestPatch = 0.1;

/**
 * Says when a patch is too small for the moment under it.
 *
 * @param size plate and patch, m
 */
export function smallPatchWarning(size: {
  readonly length: number;
  readonly width: number;
  readonly patchLength: number;
  readonly patchWidth: number;
}): string[] {
  const share = Math.min(size.patchLength / size.length, size.patchWidth / size.width);
  return share < smallestPatch
    ? ["the load is so concentrated that the moment under it is not settled here; the deflection holds"]
    : [];
}
