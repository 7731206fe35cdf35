/** A panel solved on two meshes, whose difference is the estimated mesh error; also as plain data for another thread. */
import { Ratio } from "../../quantity/index.js";
import type { Fineness } from "../mesh/index.js";
import type { PanelProblem } from "./panel-problem.js";
import { largestDeflection, type PlacedValue } from "./panel-results.js";
import { bent, type DeflectedPanel, type FactoredPanel, factoredPanel } from "./solve-panel.js";

/**
 * How far the mesh may have a value wrong: its change from a rougher mesh, as a share; nothing of nothing.
 *
 * @param value on the finer mesh
 * @param rougher the same on the rougher one
 */
export function meshChange(value: number, rougher: number): Ratio {
  return Ratio.si(value === 0 ? 0 : Math.abs(1 - rougher / value));
}

/** The largest deflection, and how far the mesh may have it wrong. */
export interface TrustedDeflection extends PlacedValue {
  /** Change from the rough mesh, as a share: at least what is still missing. */
  readonly meshError: number;
  /** The panel on the finer mesh. */
  readonly panel: DeflectedPanel;
}

/** The rough mesh is asked for so many times fewer elements. */
const coarsening = 3;

/**
 * The panel on the rough mesh that tells how far a mesh may be wrong. Openings keep even a rough mesh fine, so it goes
 * without the row along the rims too: else both meshes would be nearly one, and agree for no reason.
 *
 * @param problem the panel
 * @param fineness of the mesh that is judged
 */
export function roughPanel(problem: PanelProblem, fineness: Fineness): FactoredPanel {
  return factoredPanel(problem, fineness / coarsening, 0);
}

/**
 * The largest deflection on two meshes.
 *
 * @param problem the panel
 * @param fineness of the finer mesh
 */
export function trustedDeflection(problem: PanelProblem, fineness: Fineness): TrustedDeflection {
  const panel = bent(factoredPanel(problem, fineness));
  const { value, at } = largestDeflection(panel);
  const rough = largestDeflection(bent(roughPanel(problem, fineness))).value;
  return { value, at, meshError: meshChange(value, rough), panel };
}

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
