import { type Force, type Length, ratio } from "../quantity/index.js";
import type { LinePoints } from "./line-fit.js";

/** One load on one strip; a row of bend-tests.csv. */
export interface BendReading {
  /** Rows of one strip share its name. */
  readonly strip: string;
  readonly span: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly load: Force;
  /** In the middle, from any fixed mark; a start that is not zero does no harm. */
  readonly sag: Length;
  /** Line of the file. */
  readonly line?: number;
}

/** The readings of a strip as points: sag is read, load is set. */
export function sagOverLoad(readings: readonly BendReading[]): LinePoints {
  return { x: readings.map(({ load }) => ratio(load)), y: readings.map(({ sag }) => ratio(sag)) };
}
