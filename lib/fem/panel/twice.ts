import type { Fineness } from "../mesh/index.js";
import { meshChange } from "../mesh-error.js";
import type { PanelProblem } from "./panel-problem.js";
import { largestDeflection, type PlacedValue } from "./panel-results.js";
import { bent, type DeflectedPanel, type FactoredPanel, factoredPanel } from "./solve-panel.js";

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
