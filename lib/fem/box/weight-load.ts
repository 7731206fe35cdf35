import { nodeAreas } from "../element/index.js";
import { elementNodes, elementPlaces } from "../mesh/index.js";
import type { BoxSpot } from "./box-problem.js";
import { type BoxStructure, boxFreedoms } from "./box-structure.js";

/**
 * Forces of a box's own mass in a field of acceleration: its weight, or what it is stopped with.
 *
 * @param structure of the box; the mass is that of its sheets
 * @param pull acceleration that pulls at a place of the box, m/s2
 * @param share what the mass of the sheets is multiplied by, for what is spread over them
 * @returns one value a freedom
 */
export function weightLoad(
  { faces, nodes }: BoxStructure,
  pull: (spot: BoxSpot) => BoxSpot,
  share: number = 1,
): Float64Array {
  const load = new Float64Array(boxFreedoms * nodes.length);
  for (const { mesh, sheets, numbers } of faces) {
    sheets.forEach(({ mass }, element) => {
      const { x, y } = elementPlaces(mesh, element);
      const own = elementNodes(mesh, element);
      nodeAreas(x, y).forEach((area, i) => {
        const node = numbers[own[i]!]!;
        pull(nodes[node]!).forEach((each, axis) => {
          load[boxFreedoms * node + axis]! += share * mass[0] * area * each;
        });
      });
    });
  }
  return load;
}

/** Mass of the sheets of a box, kg. */
export function sheetMass({ faces }: BoxStructure): number {
  return faces.reduce(
    (sum, { mesh, sheets }) =>
      sum +
      sheets.reduce((part, { mass }, element) => {
        const { x, y } = elementPlaces(mesh, element);
        return part + mass[0] * nodeAreas(x, y).reduce((area, each) => area + each, 0);
      }, 0),
    0,
  );
}
