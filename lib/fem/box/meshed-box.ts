/** A box, meshed: what its faces are made of, sides of its elements along a straight line, what is loose in it. */
import { at as entry } from "../../algebra/lists.js";
import { vector3 } from "../../algebra/matrix3.js";
import { nodesPerElement, type Sheet, spaceDofs } from "../element/index.js";
import type { QuadMesh } from "../mesh/index.js";
import type { Piece } from "../solve/index.js";
import type { BoxProblem, BoxSpot, FaceName } from "./box-problem.js";

/** One face, meshed. */
export interface MeshedFace {
  /** Which face. */
  readonly name: FaceName;
  /** Its mesh, in the face's own axes. */
  readonly mesh: QuadMesh;
  /** Make-up of each element. */
  readonly sheets: readonly Sheet[];
  /** Number in the box of each node of the face. */
  readonly numbers: Int32Array;
  /** One piece an element. */
  readonly elements: readonly Piece[];
}

/** A box ready to be held and factored. */
export interface BoxStructure {
  /** The box as it was described. */
  readonly problem: BoxProblem;
  /** Places of all nodes. */
  readonly nodes: readonly BoxSpot[];
  /** The faces that are not open. */
  readonly faces: readonly MeshedFace[];
  /** Springs of seams that give, and beams. */
  readonly links: readonly Piece[];
}

/** Everything that resists in a box: its faces, seams and beams. */
export function piecesOf({ faces, links }: BoxStructure): readonly Piece[] {
  return [...faces.flatMap(({ elements }) => elements), ...links];
}

/** A side that lies on the line, with its nodes in the order of the line. */
export interface LineSide {
  /** The nodes of the side, in the order of the line. */
  readonly nodes: readonly [first: number, middle: number, last: number];
  /** Where its middle lies from the line's beginning, and how long it is, m. */
  readonly along: number;
  /** Length of the side, m. */
  readonly length: number;
}

/** Ends and middle of each side of an element, by their places among its nodes. */
const sides = [
  [0, 4, 1],
  [1, 5, 2],
  [2, 6, 3],
  [3, 7, 0],
] as const;

/**
 * Sides of a face on a line, in order along it.
 *
 * @param nodes places of all nodes of the box
 * @param face whose elements are looked at
 * @param from one end of the line
 * @param to its other end
 */
export function sidesAlong(
  nodes: readonly BoxSpot[],
  { mesh: { elements }, numbers }: Pick<MeshedFace, "mesh" | "numbers">,
  from: BoxSpot,
  to: BoxSpot,
): readonly LineSide[] {
  const alongOf = alongLineOf(from, to);
  const found = new Map<number, LineSide>();
  for (let start = 0; start < elements.length; start += nodesPerElement) {
    for (const side of sides) {
      const [a, middle, b] = vector3((k) => entry(numbers, entry(elements, start + side[k])));
      const [low, at, high] = [a, middle, b].map((node) => alongOf(entry(nodes, node)));
      if (low === undefined || at === undefined || high === undefined) continue;
      const ordered = low < high ? ([a, middle, b] as const) : ([b, middle, a] as const);
      found.set(middle, { nodes: ordered, along: at, length: Math.abs(high - low) });
    }
  }
  return [...found.values()].sort((one, other) => one.along - other.along);
}

/** How far along a line a place lies, m; undefined beside it. */
function alongLineOf(from: BoxSpot, to: BoxSpot): (spot: BoxSpot) => number | undefined {
  const length = distance(from, to);
  const near = 1e-7 * length;
  const direction = to.map((at, axis) => (at - entry(from, axis)) / length);
  return (spot) => {
    const along = spot.reduce((sum, at, axis) => sum + (at - entry(from, axis)) * entry(direction, axis), 0);
    const aside = Math.hypot(
      ...spot.map((at, axis) => at - entry(from, axis) - along * entry(direction, axis)),
    );
    return aside < near && along > -near && along < length + near ? along : undefined;
  };
}

/** How far apart two places are, m. */
export function distance(a: BoxSpot, b: BoxSpot): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1], a[2] - b[2]);
}

/** How a body moves, by degree of freedom. */
export const waysToMove: readonly string[] = [
  "slides along x",
  "slides along y",
  "moves along z",
  "turns about x",
  "turns about y",
  "turns about z",
];

/** Names the face, the place and the way of a degree of freedom that nothing resists. */
export function unconstrainedMessage({ problem, nodes, faces }: BoxStructure, dof: number): string {
  const node = Math.floor(dof / spaceDofs);
  const spot = entry(nodes, node)
    .map((at) => (1000 * at).toFixed(0))
    .join(", ");
  const face = faces.find(({ numbers }) => numbers.includes(node))?.name ?? "a spring";
  return `${problem.name} is loose: ${face} at ${spot} mm ${waysToMove[dof % spaceDofs]} without resistance; hold it better`;
}
