import { nodeAreas } from "../element/index.js";
import { elementNodes, elementPlaces } from "../mesh/index.js";
import type { BoxSpot } from "./box-problem.js";
import { type BoxStructure, boxFreedoms } from "./box-structure.js";

/** Mass of a box's sheets at each of its nodes, kg. */
export function nodeMasses({ faces, nodes }: BoxStructure): Float64Array {
  const masses = new Float64Array(nodes.length);
  for (const { mesh, sheets, numbers } of faces) {
    sheets.forEach(({ mass }, element) => {
      const { x, y } = elementPlaces(mesh, element);
      const own = elementNodes(mesh, element);
      nodeAreas(x, y).forEach((area, i) => {
        masses[numbers[own[i]!]!]! += mass[0] * area;
      });
    });
  }
  return masses;
}

/**
 * Forces of masses at the nodes of a box in a field of acceleration: their weight, or what they are stopped with.
 *
 * @param structure of the box
 * @param masses at its nodes, kg
 * @param pull acceleration that pulls at a place of the box, m/s2
 * @returns one value a freedom
 */
export function weightLoad(
  { nodes }: BoxStructure,
  masses: Float64Array,
  pull: (spot: BoxSpot) => BoxSpot,
): Float64Array {
  const load = new Float64Array(boxFreedoms * nodes.length);
  nodes.forEach((spot, node) => {
    const [x, y, z] = pull(spot);
    const from = boxFreedoms * node;
    load[from] = masses[node]! * x;
    load[from + 1] = masses[node]! * y;
    load[from + 2] = masses[node]! * z;
  });
  return load;
}
