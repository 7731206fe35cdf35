/** A panel factored and bent, and how its deflection answers to its make-up. */

import { add, at as entry } from "../../algebra/lists.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import {
  bendingStiffness,
  dofsPerNode,
  elementStiffness,
  isCoupled,
  nodeAreas,
  type Sheet,
} from "../element/index.js";
import {
  type ElementTarget,
  elementCount,
  elementMiddle,
  elementNodes,
  elementPlaces,
  type MeshBox,
} from "../mesh/index.js";
import {
  displacementsUnder,
  type Factors,
  factorPieces,
  timesPieces,
  UnconstrainedDof,
} from "../solve/index.js";
import { locate } from "./locate.js";
import type { PanelLoad, PanelProblem } from "./panel-problem.js";
import { type PanelStructure, panelStructure, piecesOf, rimWidth } from "./panel-structure.js";
import { across, sideShares, sidesOnLine } from "./panel-supports.js";

/** A panel factored: ready for loads, frequencies and buckling. */
export interface FactoredPanel {
  /** The panel as pieces. */
  readonly structure: PanelStructure;
  /** Its factors with what holds it. */
  readonly factors: Factors;
}

/** A panel bent by one load case. */
export interface DeflectedPanel extends FactoredPanel {
  /** u, v, w, bx, by of each node; m and rad. */
  readonly displacement: Float64Array;
}

/** With the rows along the rims this gives some 5000 unknowns. */
export const usualElementTarget: ElementTarget = 100;

/**
 * Meshes and factors a panel.
 *
 * @param rim width of the row of elements along the rims, m; a share of the thickness when left out, 0 for none
 * @throws Refusal when it is loose, naming where and how it moves
 */
export function factoredPanel(
  problem: PanelProblem,
  elementTarget: ElementTarget = usualElementTarget,
  rim: number = rimWidth(problem.sheet),
): FactoredPanel {
  const structure = panelStructure(problem, elementTarget, rim);
  const { elements, springs, held } = structure;
  try {
    return { structure, factors: factorPieces([...elements, ...springs], held) };
  } catch (error) {
    if (error instanceof UnconstrainedDof) throw new Refusal(unconstrainedMessage(structure, error.dof));
    throw error;
  }
}

const ways = ["slides along x", "slides along y", "lifts off", "tips along x", "tips along y"];

function unconstrainedMessage({ problem, mesh }: PanelStructure, dof: number): string {
  const node = Math.floor(dof / dofsPerNode);
  const [x, y] = [entry(mesh.x, node), entry(mesh.y, node)].map((at) => `${(1000 * at).toFixed(0)} mm`);
  return `${problem.name} is loose: at ${x}, ${y} it ${ways[dof % dofsPerNode]} without resistance; hold it better`;
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

/**
 * Forces on the degrees of freedom of a panel.
 *
 * @param structure the panel
 * @param loads what presses on it
 * @throws Refusal when a load lies on no material
 */
export function panelForces(structure: PanelStructure, loads: readonly PanelLoad[]): Float64Array {
  const forces = new Float64Array(structure.held.length);
  for (const [node, force] of loads.flatMap((load) => nodeForces(structure, load)))
    add(forces, dofsPerNode * node + across.w, force);
  return forces;
}

type NodeForce = readonly [node: number, force: number];

function nodeForces(structure: PanelStructure, load: PanelLoad): readonly NodeForce[] {
  switch (load.kind) {
    case "pressure":
      return pressed(structure, () => load.pressure);
    case "weight":
      return pressed(structure, (element) => load.acceleration * entry(structure.sheets, element).mass[0]);
    case "point":
      return pointForces(structure, load.at, load.force);
    case "spread":
      return spreadForces(structure, load);
    case "line":
      return lineForces(structure, load);
    case "patch":
      return patchForces(structure, load);
  }
}

function pointForces({ mesh }: PanelStructure, at: Point2, force: number): readonly NodeForce[] {
  const { nodes, weights } = locate(mesh, at);
  return Array.from(nodes, (node, i): NodeForce => [node, force * entry(weights, i)]);
}

/** Points along each side of a rectangle that stand for the load on it. */
const spreadPoints = 12;

/** Even points, each with its share. */
function spreadForces(
  structure: PanelStructure,
  { over: { left, bottom, width, height }, force }: Extract<PanelLoad, { kind: "spread" }>,
): readonly NodeForce[] {
  const shares = Array.from({ length: spreadPoints }, (_, i) => (i + 0.5) / spreadPoints);
  return shares.flatMap((a) =>
    shares.flatMap((b) =>
      pointForces(structure, { x: left + a * width, y: bottom + b * height }, force / spreadPoints ** 2),
    ),
  );
}

/** @throws Refusal when no rim is left under the load */
function lineForces(
  { mesh, problem }: PanelStructure,
  { from, to, force }: Extract<PanelLoad, { kind: "line" }>,
): NodeForce[] {
  const sides = sidesOnLine(mesh, from, to);
  if (sides.length === 0) throw new Refusal(`${problem.name}: no rim is left under a line load`);
  return [...sideShares(mesh, sides)].map(([node, share]) => [node, share * force]);
}

/** @throws Refusal when the load lies on no material */
function patchForces(
  structure: PanelStructure,
  { over, force }: Extract<PanelLoad, { kind: "patch" }>,
): readonly NodeForce[] {
  const unit = pressed(structure, (element) =>
    isOver(over, elementMiddle(structure.mesh, element)) ? 1 : 0,
  );
  const area = unit.reduce((sum, [, share]) => sum + share, 0);
  if (!(area > 0)) throw new Refusal(`${structure.problem.name}: a patch load lies on no material`);
  return unit.map(([node, share]) => [node, (share * force) / area]);
}

function isOver({ left, bottom, width, height }: MeshBox, { x, y }: Point2): boolean {
  return x > left && x < left + width && y > bottom && y < bottom + height;
}

function pressed({ mesh }: PanelStructure, pressure: (element: number) => number): readonly NodeForce[] {
  const forces: NodeForce[] = [];
  for (let element = 0; element < elementCount(mesh); element++) {
    const here = pressure(element);
    if (here === 0) continue;
    const { x, y } = elementPlaces(mesh, element);
    const nodes = elementNodes(mesh, element);
    nodeAreas(x, y).forEach((area, i) => {
      forces.push([entry(nodes, i), area * here]);
    });
  }
  return forces;
}

/**
 * Slopes of a deflection: how much it changes when the panel's own make-up changes, dw = -l^T dK u, where u is how
 * the panel bends and l how a force of 1 at the place bends it (the adjoint method, any text on design sensitivity).
 * Exact for small changes; strips of another make-up stay as they are.
 *
 * @param panel bent
 * @param at where it is looked at
 * @param changes of the make-up, as differences of stiffness
 * @returns one slope a change, m
 */
export function deflectionSlopes(
  panel: DeflectedPanel,
  at: Point2,
  changes: readonly Sheet[],
): readonly number[] {
  const { structure, factors, displacement } = panel;
  const { problem, mesh, sheets } = structure;
  const coupled = sheets.some(isCoupled) || changes.some(isCoupled);
  const kinds = coupled ? [0, 1, 2, 3, 4] : [across.w, across.turnX, across.turnY];
  const own = sheets.map((sheet) => sheet === problem.sheet);
  const answer = displacementsUnder(factors, panelForces(structure, [{ kind: "point", at, force: 1 }]));
  return changes.map((change) => {
    const pieces = piecesOf(
      mesh,
      sheets.map(() => change),
      kinds,
      coupled ? elementStiffness : bendingStiffness,
    );
    const pull = timesPieces(
      pieces.filter((_, element) => own[element]),
      displacement,
    );
    return -pull.reduce((sum, force, dof) => sum + force * entry(answer, dof), 0);
  });
}
