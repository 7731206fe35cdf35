/** A panel to be solved elsewhere: plain data in, plain data out, so that it can be sent to another thread. */
import type { Fineness } from "../mesh/index.js";
import type { PanelProblem } from "./panel-problem.js";
import { trustedDeflection } from "./twice.js";

/** One panel of a sweep. */
export interface PanelTask {
  readonly problem: PanelProblem;
  readonly fineness: Fineness;
}

/** What it comes to. */
export interface PanelAnswer {
  /** Largest deflection as a size, m. */
  readonly sag: number;
  /** How far the mesh may have it wrong, as a share. */
  readonly meshError: number;
}

/**
 * Solves one panel of a sweep.
 *
 * @throws RangeError as `trustedDeflection` does
 */
export function solvedTask({ problem, fineness }: PanelTask): PanelAnswer {
  const { value, meshError } = trustedDeflection(problem, fineness);
  return { sag: Math.abs(value), meshError };
}
