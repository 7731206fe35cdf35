import { freedomsPerNode } from "../element/index.js";
import { elementCount, elementNodes, type Spot } from "../mesh/index.js";
import { across } from "./panel-supports.js";
import type { DeflectedPanel } from "./solve-panel.js";

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
): readonly (readonly [Spot, Spot])[] {
  const above = (node: number): number => displacement[freedomsPerNode * node + across.w]! - level;
  const cut = (a: number, b: number): Spot[] => {
    const [low, high] = [above(a), above(b)];
    if (low < 0 === high < 0) return [];
    const share = low / (low - high);
    return [[mesh.x[a]! + share * (mesh.x[b]! - mesh.x[a]!), mesh.y[a]! + share * (mesh.y[b]! - mesh.y[a]!)]];
  };
  const pieces: (readonly [Spot, Spot])[] = [];
  for (let element = 0; element < elementCount(mesh); element++) {
    const nodes = elementNodes(mesh, element);
    for (const [i, j, k] of triangles) {
      const [a, b, c] = [nodes[i]!, nodes[j]!, nodes[k]!];
      const [from, to] = [...cut(a, b), ...cut(b, c), ...cut(c, a)];
      if (from && to) pieces.push([from, to]);
    }
  }
  return pieces;
}
