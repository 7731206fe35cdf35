import { type BoxStructure, boxFreedoms } from "./box-structure.js";

/** How a body moves, by freedom. */
export const waysToMove: readonly string[] = [
  "slides along x",
  "slides along y",
  "moves along z",
  "turns about x",
  "turns about y",
  "turns about z",
];

/** Names the face, the place and the way of a freedom that nothing resists. */
export function looseWords({ problem, nodes, faces }: BoxStructure, freedom: number): string {
  const node = Math.floor(freedom / boxFreedoms);
  const spot = nodes[node]!.map((at) => (1000 * at).toFixed(0)).join(", ");
  const face = faces.find(({ numbers }) => numbers.includes(node))?.name ?? "a spring";
  return `${problem.name} is loose: ${face} at ${spot} mm ${waysToMove[freedom % boxFreedoms]} without resistance; hold it better`;
}
