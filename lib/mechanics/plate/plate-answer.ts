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
