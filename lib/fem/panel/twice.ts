import type { Fineness } from "../mesh/index.js";
import type { PanelProblem } from "./panel-problem.js";
import { largestDeflection, type PlacedValue } from "./panel-results.js";
import { bent, type DeflectedPanel, factoredPanel } from "./solve-panel.js";

/** The largest deflection, and how far the mesh may have it wrong. */
export interface TrustedDeflection extends PlacedValue {
  /** Change from a mesh of a third of the elements, as a share: at least what is still missing. */
  readonly meshError: number;
  /** The panel on the finer mesh. */
  readonly panel: DeflectedPanel;
}

/** The mesh that tells the mesh error has so many times fewer elements. */
export const coarsening = 3;

/**
 * The largest deflection on two meshes.
 *
 * @param problem the panel
 * @param fineness of the finer mesh
 */
export function trustedDeflection(problem: PanelProblem, fineness: Fineness): TrustedDeflection {
  const panel = bent(factoredPanel(problem, fineness));
  const { value, at } = largestDeflection(panel);
  const rough = largestDeflection(bent(factoredPanel(problem, fineness / coarsening))).value;
  return { value, at, meshError: Math.abs(1 - rough / value), panel };
}
