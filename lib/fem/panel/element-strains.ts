import { freedomsPerNode, nodesPerElement, type Shapes, slopesOf, stretchAt } from "../element/index.js";
import { elementNodes, elementPlaces, type QuadMesh } from "../mesh/index.js";

/** Strains ex, ey, gxy of the pair of freedoms that move along x and along y: 0 and 1, or 3 and 4 for turning. */
export type PairStrains = (first: number, second: number) => [number, number, number];

/**
 * Strains at one place of an element.
 *
 * @param shapes of the place
 * @param displacement of the whole mesh
 */
export function elementStrainsAt(
  mesh: QuadMesh,
  element: number,
  shapes: Shapes,
  displacement: Float64Array,
): PairStrains {
  const { x, y } = elementPlaces(mesh, element);
  const nodes = elementNodes(mesh, element);
  const { alongX, alongY } = slopesOf(shapes, stretchAt(shapes, x, y));
  const slope = (along: Float64Array, freedom: number): number => {
    let sum = 0;
    for (let i = 0; i < nodesPerElement; i++)
      sum += along[i]! * displacement[freedomsPerNode * nodes[i]! + freedom]!;
    return sum;
  };
  return (first, second) => [
    slope(alongX, first),
    slope(alongY, second),
    slope(alongY, first) + slope(alongX, second),
  ];
}
