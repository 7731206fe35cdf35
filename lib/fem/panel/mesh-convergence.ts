/**
 * A panel solved on two meshes, whose difference is the estimated mesh error; also as plain data for another thread.
 */
import { keptByContent } from "../../kept/index.js";
import { Ratio } from "../../quantity/index.js";
import type { ElementTarget } from "../mesh/index.js";
import type { PanelProblem } from "./panel-problem.js";
import { largestDeflection, type PlacedValue } from "./panel-results.js";
import { bent, type DeflectedPanel, type FactoredPanel, factoredPanel } from "./solve-panel.js";

/**
 * The estimated mesh error: its change from a coarser mesh, as a share; nothing of nothing.
 *
 * @param value on the finer mesh
 * @param coarser the same on the coarser one
 */
export function meshChange(value: number, coarser: number): Ratio {
  return Ratio.si(value === 0 ? 0 : Math.abs(1 - coarser / value));
}

/** The largest deflection, and the estimated mesh error. */
export interface TrustedDeflection extends PlacedValue {
  /** Change from the coarse mesh, as a share: at least what is still missing. */
  readonly meshError: number;
  /** The panel on the finer mesh. */
  readonly panel: DeflectedPanel;
  /** The panel on the coarser mesh. */
  readonly coarse: DeflectedPanel;
}

/** The coarse mesh is asked for so many times fewer elements. */
const coarsening = 3;

/**
 * The panel on the coarse mesh that tells how far a mesh may be wrong. Openings keep even a coarse mesh fine, so it
 * goes without the row along the rims too: else both meshes would be nearly one, and agree for no reason.
 *
 * @param problem the panel
 * @param element target of the mesh that is judged
 */
export function coarsePanel(problem: PanelProblem, elementTarget: ElementTarget): FactoredPanel {
  return underLoads(keptCoarse({ problem: unloaded(problem), elementTarget }), problem);
}

/** What sags is asked next how it answers to its moduli or to another load, on the same mesh. */
const keptCoarse: (task: PanelTask) => FactoredPanel = keptByContent(2, ({ problem, elementTarget }) =>
  factoredPanel(problem, elementTarget / coarsening, 0),
);

/** The last panel, for its next load. */
const keptFine: (task: PanelTask) => FactoredPanel = keptByContent(1, ({ problem, elementTarget }) =>
  factoredPanel(problem, elementTarget),
);

/** Without the loads that no mesh follows: whatever spreads them, the panel is factored once. */
function unloaded(problem: PanelProblem): PanelProblem {
  const loads = problem.loads.filter(({ kind }) => kind === "patch" || kind === "point");
  return { ...problem, loads };
}

/** A kept panel with the loads of a problem that is like it in all else. */
function underLoads({ structure, factors }: FactoredPanel, { loads }: PanelProblem): FactoredPanel {
  return { structure: { ...structure, problem: { ...structure.problem, loads } }, factors };
}

/**
 * The largest deflection on two meshes.
 *
 * @param problem the panel
 * @param element target of the finer mesh
 */
export function trustedDeflection(problem: PanelProblem, elementTarget: ElementTarget): TrustedDeflection {
  const panel = bent(underLoads(keptFine({ problem: unloaded(problem), elementTarget }), problem));
  const { value, at } = largestDeflection(panel);
  const coarse = bent(coarsePanel(problem, elementTarget));
  return { value, at, meshError: meshChange(value, largestDeflection(coarse).value), panel, coarse };
}

/** One panel of a sweep. */
export interface PanelTask {
  /** The panel and all that acts on it. */
  readonly problem: PanelProblem;
  /** About how many elements the finer mesh has. */
  readonly elementTarget: ElementTarget;
}

/** What it comes to. */
export interface PanelAnswer {
  /** Largest deflection as a size, m. */
  readonly sag: number;
  /** The estimated mesh error, as a share. */
  readonly meshError: number;
}

/**
 * Solves one panel of a sweep.
 *
 * @throws Refusal as `trustedDeflection` does
 */
export function solvedTask({ problem, elementTarget }: PanelTask): PanelAnswer {
  const { value, meshError } = trustedDeflection(problem, elementTarget);
  return { sag: Math.abs(value), meshError };
}
