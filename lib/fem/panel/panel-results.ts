/** What a bent panel shows: deflections, moments, strains, reactions. */

import { at as entry } from "../../algebra/lists.js";
import type { Point2 } from "../../shape/index.js";
import { dofsPerNode, type Sheet, shapesAt } from "../element/index.js";
import { elementCount, elementNodes, type QuadMesh } from "../mesh/index.js";
import { timesPieces } from "../solve/index.js";
import { locate } from "./locate.js";
import type { PanelLoad } from "./panel-problem.js";
import { across } from "./panel-supports.js";
import { type DeflectedPanel, panelForces } from "./solve-panel.js";
import {
  type BentMesh,
  fittedHere,
  momentsOf,
  type Strains,
  strainFields,
  strainSamples,
  strainsAt,
} from "./strain-field.js";

/** A value and where. */
export interface PlacedValue {
  /** The value, in its own unit. */
  readonly value: number;
  /** The place. */
  readonly at: Point2;
}

/** The largest deflection either way, m: at a node, or near it inside the elements that meet there. */
export function largestDeflection({ structure: { mesh }, displacement }: DeflectedPanel): PlacedValue {
  const { x, y } = mesh;
  let highest = 0;
  const size = (node: number): number => Math.abs(entry(displacement, dofsPerNode * node + across.w));
  for (let node = 0; node < x.length; node++) if (size(node) > size(highest)) highest = node;
  let most: PlacedValue = { value: 0, at: { x: entry(x, highest), y: entry(y, highest) } };
  for (let element = 0; element < elementCount(mesh); element++) {
    const nodes = elementNodes(mesh, element);
    if (!nodes.includes(highest)) continue;
    for (const weights of peakWeights) {
      const sum = (of: (node: number) => number): number =>
        weights.reduce((total, weight, i) => total + weight * of(entry(nodes, i)), 0);
      const value = sum((node) => entry(displacement, dofsPerNode * node + across.w));
      if (Math.abs(value) > Math.abs(most.value))
        most = { value, at: { x: sum((node) => entry(x, node)), y: sum((node) => entry(y, node)) } };
    }
  }
  return most;
}

/** Steps from side to side of an element where a peak is looked for. */
const peakSteps = 16;
const peakWeights = Array.from({ length: (peakSteps + 1) ** 2 }, (_, i) => {
  const along = (step: number): number => (2 * step) / peakSteps - 1;
  return shapesAt(along(i % (peakSteps + 1)), along(Math.floor(i / (peakSteps + 1)))).value;
});

/** Deflection at a place, m. Throws Refusal in an opening. */
export function deflectionAt({ structure: { mesh }, displacement }: DeflectedPanel, place: Point2): number {
  const { nodes, weights } = locate(mesh, place);
  return weights.reduce(
    (sum, weight, i) => sum + weight * entry(displacement, dofsPerNode * entry(nodes, i) + across.w),
    0,
  );
}

/** Strains and the make-up at a place. */
export interface LocalStrains {
  /** Strains of the reference plane. */
  readonly strains: Strains;
  /** The make-up there. */
  readonly sheet: Sheet;
}

/** Strains at a place, from the elements around it. Throws Refusal in an opening. */
export function strainsNear(panel: BentMesh, place: Point2): LocalStrains {
  const { mesh, sheets } = panel.structure;
  const { element, nodes } = locate(mesh, place);
  const sheet = entry(sheets, element);
  const own = new Set(nodes);
  const around = sheets.flatMap((other, i) =>
    other === sheet && elementNodes(mesh, i).some((node) => own.has(node)) ? [i] : [],
  );
  const samples = around.flatMap((i) => strainSamples(panel, i, place));
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = fittedHere(samples, reachOf(mesh, nodes));
  return { strains: [a, b, c, d, e, f], sheet };
}

/** Distance at which samples fade, in diagonals of an element: as near as the parabola stays well held. */
const fading = 0.7;

function reachOf({ x, y }: QuadMesh, [a = 0, , c = 0]: Int32Array): number {
  return fading * Math.hypot(entry(x, c) - entry(x, a), entry(y, c) - entry(y, a));
}

/**
 * The largest moment either way in the panel's own make-up, N.
 *
 * @param which 0 for Mx, 1 for My, 2 for Mxy
 * @param leaveOut places to leave out, such as those near a sharp corner where moments have no limit
 */
export function largestMoment(
  panel: DeflectedPanel,
  which: 0 | 1 | 2,
  leaveOut: (place: Point2) => boolean = () => false,
): PlacedValue {
  const { mesh, problem } = panel.structure;
  const field = strainFields(panel).find(({ sheet }) => sheet === problem.sheet);
  let most: PlacedValue = { value: 0, at: { x: 0, y: 0 } };
  for (let node = 0; field && node < mesh.x.length; node++) {
    const at = { x: entry(mesh.x, node), y: entry(mesh.y, node) };
    if (!field.covers[node] || leaveOut(at)) continue;
    const value = momentsOf(field.sheet, strainsAt(field, node))[which];
    if (Math.abs(value) > Math.abs(most.value)) most = { value, at };
  }
  return most;
}

/** Forces with which the supports push back, one value a degree of freedom, zero where nothing is held. */
export function reactions(
  { structure, displacement }: DeflectedPanel,
  loads: readonly PanelLoad[] = structure.problem.loads,
): Float64Array {
  const forces = timesPieces([...structure.elements, ...structure.springs], displacement);
  const loaded = panelForces(structure, loads);
  return forces.map((force, dof) => (structure.held[dof] ? force - entry(loaded, dof) : 0));
}

/** Nine nodes as eight triangles: each quarter of the element cut once. */
const triangles: readonly (readonly [number, number, number])[] = [
  [0, 4, 8],
  [4, 1, 8],
  [1, 5, 8],
  [5, 2, 8],
  [2, 6, 8],
  [6, 3, 8],
  [3, 7, 8],
  [7, 0, 8],
];

/**
 * Where a panel has sagged by so much: short pieces of the contour line, in no order.
 *
 * @param panel bent
 * @param level deflection, m
 */
export function contourPieces(
  { structure: { mesh }, displacement }: DeflectedPanel,
  level: number,
): readonly (readonly [Point2, Point2])[] {
  const above = (node: number): number => entry(displacement, dofsPerNode * node + across.w) - level;
  const cut = (a: number, b: number): Point2[] => {
    const [low, high] = [above(a), above(b)];
    if (low < 0 === high < 0) return [];
    const share = low / (low - high);
    return [
      {
        x: entry(mesh.x, a) + share * (entry(mesh.x, b) - entry(mesh.x, a)),
        y: entry(mesh.y, a) + share * (entry(mesh.y, b) - entry(mesh.y, a)),
      },
    ];
  };
  const pieces: (readonly [Point2, Point2])[] = [];
  for (let element = 0; element < elementCount(mesh); element++) {
    const nodes = elementNodes(mesh, element);
    for (const [i, j, k] of triangles) {
      const [a, b, c] = [entry(nodes, i), entry(nodes, j), entry(nodes, k)];
      const [from, to] = [...cut(a, b), ...cut(b, c), ...cut(c, a)];
      if (from && to) pieces.push([from, to]);
    }
  }
  return pieces;
}
