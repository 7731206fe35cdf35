/** What lies on the bench while a sheet is sawn up. */
import { type BenchPart, type SawStep, sameArea } from "./saw-steps.js";

/** Everything on the bench after a cut. */
export interface BenchState {
  /** The cut just made. */
  readonly step: SawStep;
  /** Pieces, offcuts and parts that are cut further. */
  readonly parts: readonly BenchPart[];
}

/**
 * What lies on the bench after each cut of a sheet: the part that was cut is gone, and what stays at the
 * fence and what falls off lie in its place.
 *
 * @param steps of one sheet, as `sawSteps` gives them
 */
export function benchStates(steps: readonly SawStep[]): BenchState[] {
  let parts: readonly BenchPart[] = [];
  return steps.map((step) => {
    const { part, keeps, fallsOff } = step;
    const rest = parts.filter((one) => !sameArea(one, part));
    parts = [...rest, keeps, ...(fallsOff ? [fallsOff] : [])];
    return { step, parts };
  });
}
