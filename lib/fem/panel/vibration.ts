import { elementMass, freedomsPerNode } from "../element/index.js";
import { elementMiddle, elementPlaces } from "../mesh/index.js";
import { lowestModes, type Piece } from "../solve/index.js";
import { locate } from "./locate.js";
import { elementFreedoms, type PanelStructure } from "./panel-structure.js";
import { across } from "./panel-supports.js";
import type { FactoredPanel } from "./solve-panel.js";

/**
 * The lowest natural frequencies, with what is mounted on the panel.
 *
 * @param panel factored
 * @param count how many
 * @returns Hz, lowest first
 */
export function naturalFrequencies({ structure, factors }: FactoredPanel, count: number): readonly number[] {
  const modes = lowestModes(factors, [...massPieces(structure), ...mountedPieces(structure)], count);
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
