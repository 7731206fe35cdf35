import { freedomsPerNode } from "../element/index.js";
import type { Fineness } from "../mesh/index.js";
import { displacementsUnder, type Factors, factorPieces, LooseFreedom } from "../solve/index.js";
import { panelForces } from "./panel-load.js";
import type { PanelLoad, PanelProblem } from "./panel-problem.js";
import { type PanelStructure, panelStructure, rimWidth } from "./panel-structure.js";

/** A panel factored: ready for loads, frequencies and buckling. */
export interface FactoredPanel {
  readonly structure: PanelStructure;
  readonly factors: Factors;
}

/** A panel bent by one load case. */
export interface DeflectedPanel extends FactoredPanel {
  /** u, v, w, bx, by of each node; m and rad. */
  readonly displacement: Float64Array;
}

/** With the rows along the rims this gives some 5000 unknowns. */
export const usualFineness: Fineness = 100;

/**
 * Meshes and factors a panel.
 *
 * @param rim width of the row of elements along the rims, m; a share of the thickness when left out, 0 for none
 * @throws RangeError when it is loose, naming where and how it moves
 */
export function factoredPanel(
  problem: PanelProblem,
  fineness: Fineness = usualFineness,
  rim: number = rimWidth(problem.sheet),
): FactoredPanel {
  const structure = panelStructure(problem, fineness, rim);
  const { elements, springs, held } = structure;
  try {
    return { structure, factors: factorPieces([...elements, ...springs], held) };
  } catch (error) {
    if (error instanceof LooseFreedom) throw new RangeError(looseWords(structure, error.freedom));
    throw error;
  }
}

const ways = ["slides along x", "slides along y", "lifts off", "tips along x", "tips along y"];

function looseWords({ problem, mesh }: PanelStructure, freedom: number): string {
  const node = Math.floor(freedom / freedomsPerNode);
  const [x, y] = [mesh.x[node]!, mesh.y[node]!].map((at) => `${(1000 * at).toFixed(0)} mm`);
  return `${problem.name} is loose: at ${x}, ${y} it ${ways[freedom % freedomsPerNode]} without resistance; hold it better`;
}

/**
 * Bends a factored panel.
 *
 * @param panel factored
 * @param loads of this load case; those of the problem when left out
 */
export function bent(panel: FactoredPanel, loads?: readonly PanelLoad[]): DeflectedPanel {
  const forces = panelForces(panel.structure, loads ?? panel.structure.problem.loads);
  return { ...panel, displacement: displacementsUnder(panel.factors, forces) };
}
