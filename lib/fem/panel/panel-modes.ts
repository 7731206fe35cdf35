/** The frequencies at which a panel swings, and the load at which it buckles when pressed in its own plane. */

import { add, at as entry } from "../../algebra/lists.js";
import type { Point2 } from "../../shape/index.js";
import {
  dofsPerNode,
  elementMass,
  isCoupled,
  membraneStiffness,
  type Sheet,
  shapesAt,
  slopeMatrix,
  squareNine,
} from "../element/index.js";
import { elementMiddle, elementNodes, elementPlaces } from "../mesh/index.js";
import { displacementsUnder, factorPieces, lowestModes, type Mode, type Piece } from "../solve/index.js";
import { locate } from "./locate.js";
import { elementDofs, inSpace, type PanelStructure, piecesOf } from "./panel-structure.js";
import { across, heldFlat, sideShares, sidesOnLine } from "./panel-supports.js";
import type { FactoredPanel } from "./solve-panel.js";
import { elementStrainsAt } from "./strain-field.js";

/**
 * The lowest natural frequencies at which the panel bends, with what is mounted on it.
 *
 * @param panel factored
 * @param count how many
 * @returns Hz, lowest first
 */
export function naturalFrequencies({ structure, factors }: FactoredPanel, count: number): readonly number[] {
  return hertz(lowestModes(factors, [...massPieces(structure), ...mountedPieces(structure)], count));
}

/**
 * The lowest natural frequencies at which a panel sways in its own plane, held there by its clamped edges or, without
 * any, just kept from drifting: a frame of narrow bars may sway before it bends.
 *
 * @param panel its structure
 * @param count how many
 * @returns Hz, lowest first; none when bending stretches the panel, whose frequencies then hold both
 */
export function swayFrequencies({ structure }: FactoredPanel, count: number): readonly number[] {
  const { problem, mesh, sheets } = structure;
  if (sheets.some(isCoupled)) return [];
  const pieces = piecesOf(mesh, sheets, [across.u, across.v], membraneStiffness);
  return hertz(lowestModes(factorPieces(pieces, heldFlat(problem, mesh)), massPieces(structure), count));
}

function hertz(modes: readonly Mode[]): readonly number[] {
  return modes.map(({ value }) => Math.sqrt(value) / (2 * Math.PI));
}

function massPieces({ mesh, sheets }: PanelStructure): Piece[] {
  return sheets.map((sheet, element) => {
    const { x, y } = elementPlaces(mesh, element);
    return {
      dofs: elementDofs(mesh, element),
      matrix: elementMass(x, y, sheet),
      middle: inSpace(elementMiddle(mesh, element)),
    };
  });
}

function mountedPieces({ problem, mesh }: PanelStructure): Piece[] {
  return problem.masses.map(({ at, mass }) => {
    const { nodes, weights } = locate(mesh, at);
    return {
      dofs: Int32Array.from(nodes, (node) => dofsPerNode * node + across.w),
      matrix: Float64Array.from([...weights].flatMap((a) => [...weights].map((b) => mass * a * b))),
      middle: inSpace(at),
    };
  });
}

/** A load in the plane of the panel, spread along a line of its rim. */
export interface EdgePush {
  /** One end of the line. */
  readonly from: Point2;
  /** The other end of the line. */
  readonly to: Point2;
  /** Force on each metre along x and y, N/m. */
  readonly x: number;
  /** Force on each metre along y, N/m. */
  readonly y: number;
}

/**
 * How many times the given pushes the panel bears before it buckles.
 *
 * @param panel factored
 * @param pushes in balance
 * @returns the lowest factor; Infinity when nothing is in compression
 */
export function bucklingFactor({ structure, factors }: FactoredPanel, pushes: readonly EdgePush[]): number {
  const displacement = flatDisplacement(structure, pushes);
  const pieces = structure.sheets.map((sheet, element) =>
    slopePiece(structure, sheet, element, displacement),
  );
  return lowestModes(factors, pieces, 1)[0]?.value ?? Infinity;
}

function flatDisplacement(structure: PanelStructure, pushes: readonly EdgePush[]): Float64Array {
  const { problem, mesh, sheets } = structure;
  const held = heldFlat(problem, mesh);
  const forces = new Float64Array(held.length);
  for (const { from, to, x, y } of pushes) {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    for (const [node, share] of sideShares(mesh, sidesOnLine(mesh, from, to))) {
      add(forces, dofsPerNode * node + across.u, share * length * x);
      add(forces, dofsPerNode * node + across.v, share * length * y);
    }
  }
  return displacementsUnder(
    factorPieces(piecesOf(mesh, sheets, [across.u, across.v], membraneStiffness), held),
    forces,
  );
}

const places = squareNine.map(({ xi, eta }) => shapesAt(xi, eta));

/** Minus what the in-plane forces add to the stiffness. */
function slopePiece(
  { mesh }: PanelStructure,
  sheet: Sheet,
  element: number,
  displacement: Float64Array,
): Piece {
  const { x, y } = elementPlaces(mesh, element);
  const forces = places.map((shapes) => {
    const strains = elementStrainsAt(mesh, element, shapes, displacement)(0, 1);
    const row = (i: 0 | 1 | 2): number =>
      strains.reduce((sum, strain, j) => sum + entry(sheet.membrane[i], j) * strain, 0);
    return [row(0), row(1), row(2)] as const;
  });
  return {
    dofs: Int32Array.from(elementNodes(mesh, element), (node) => dofsPerNode * node + across.w),
    matrix: slopeMatrix(x, y, forces).map((value) => -value),
    middle: inSpace(elementMiddle(mesh, element)),
  };
}
