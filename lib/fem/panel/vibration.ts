import { elementMass, freedomsPerNode, isCoupled, membraneStiffness } from "../element/index.js";
import { elementMiddle, elementPlaces } from "../mesh/index.js";
import { factorPieces, lowestModes, type Mode, type Piece } from "../solve/index.js";
import { locate } from "./locate.js";
import { elementFreedoms, type PanelStructure, piecesOf } from "./panel-structure.js";
import { across, heldFlat } from "./panel-supports.js";
import type { FactoredPanel } from "./solve-panel.js";

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
      freedoms: elementFreedoms(mesh, element),
      matrix: elementMass(x, y, sheet),
      middle: [...elementMiddle(mesh, element), 0],
    };
  });
}

function mountedPieces({ problem, mesh }: PanelStructure): Piece[] {
  return problem.masses.map(({ at, mass }) => {
    const { nodes, weights } = locate(mesh, at);
    return {
      freedoms: Int32Array.from(nodes, (node) => freedomsPerNode * node + across.w),
      matrix: Float64Array.from([...weights].flatMap((a) => [...weights].map((b) => mass * a * b))),
      middle: [...at, 0],
    };
  });
}
