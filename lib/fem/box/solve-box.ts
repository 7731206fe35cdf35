/** A box held, factored and moved under forces. */
import { add, at } from "../../algebra/lists.js";
import { Refusal } from "../../refusal.js";
import { nodeAreas, spaceDofs } from "../element/index.js";
import { elementCount, elementMiddle, elementNodes, elementPlaces, type MeshBox } from "../mesh/index.js";
import {
  displacementsUnder,
  type Factors,
  factorPieces,
  type Piece,
  UnconstrainedDof,
} from "../solve/index.js";
import type { BoxSpot, FaceName } from "./box-problem.js";
import {
  type BoxStructure,
  type LineSide,
  piecesOf,
  sidesAlong,
  unconstrainedMessage,
} from "./meshed-box.js";

/** Degrees of freedom held at the nodes for which `where` is true: 0 to 2 along x, y, z, 3 to 5 turns about them. */
export interface BoxHold {
  /** Whether a node at this place is held. */
  readonly where: (spot: BoxSpot) => boolean;
  /** The degrees of freedom held there. */
  readonly dofs: readonly number[];
}

/** A force on the nodes of a box, and which part of it each takes. */
export interface NodeShares {
  /** Numbers of the nodes in the box. */
  readonly nodes: readonly number[];
  /** They add up to 1. */
  readonly shares: readonly number[];
}

/** A force of a load case: along x, y, z, N. */
export interface BoxForce {
  /** The nodes it acts on. */
  readonly on: NodeShares;
  /** The whole force along x, y, z, N. */
  readonly force: BoxSpot;
}

/** A box held and factored. */
export interface FactoredBox {
  /** The box. */
  readonly structure: BoxStructure;
  /** Its factors with what holds it. */
  readonly factors: Factors;
}

/** A box under one load case. */
export interface MovedBox extends FactoredBox {
  /** The forces of the load case. */
  readonly forces: readonly BoxForce[];
  /** Along x, y, z and turns about them, six values a node. */
  readonly displacement: Float64Array;
}

/**
 * Holds and factors a box.
 *
 * @param structure the box
 * @param holds its supports
 * @param springs further pieces: latches, hinges, elastic feet
 * @throws Refusal when a part is loose, naming where and how
 */
export function factoredBox(
  structure: BoxStructure,
  holds: readonly BoxHold[],
  springs: readonly Piece[] = [],
): FactoredBox {
  const pieces = [...piecesOf(structure), ...springs];
  const held = new Uint8Array(spaceDofs * structure.nodes.length).fill(1);
  for (const { dofs } of pieces) for (const dof of dofs) held[dof] = 0;
  structure.nodes.forEach((spot, node) => {
    for (const { where, dofs } of holds)
      if (where(spot)) for (const dof of dofs) held[spaceDofs * node + dof] = 1;
  });
  try {
    return { structure, factors: factorPieces(pieces, held) };
  } catch (error) {
    if (error instanceof UnconstrainedDof) throw new Refusal(unconstrainedMessage(structure, error.dof));
    throw error;
  }
}

/** Moves a factored box under forces. */
export function moved(box: FactoredBox, forces: readonly BoxForce[]): MovedBox {
  const load = new Float64Array(spaceDofs * box.structure.nodes.length);
  for (const { on, force } of forces)
    on.nodes.forEach((node, i) => {
      for (const axis of [0, 1, 2] as const)
        add(load, spaceDofs * node + axis, at(on.shares, i) * force[axis]);
    });
  return { ...box, forces, displacement: displacementsUnder(box.factors, load) };
}

/**
 * A force spread evenly over a rectangle of a face.
 *
 * @throws Refusal when nothing is there
 */
export function overPatch({ problem, faces }: BoxStructure, name: FaceName, over: MeshBox): NodeShares {
  const face = faces.find((one) => one.name === name);
  const shares = new Map<number, number>();
  for (let element = 0; face && element < elementCount(face.mesh); element++) {
    const { x: u, y: v } = elementMiddle(face.mesh, element);
    const { left, bottom, width, height } = over;
    if (u < left || u > left + width || v < bottom || v > bottom + height) continue;
    const { x, y } = elementPlaces(face.mesh, element);
    const nodes = elementNodes(face.mesh, element);
    nodeAreas(x, y).forEach((area, i) => {
      const node = at(face.numbers, at(nodes, i));
      shares.set(node, (shares.get(node) ?? 0) + area);
    });
  }
  if (shares.size === 0) throw new Refusal(`${problem.name}: a load on ${name} lies on no material`);
  return evened(shares);
}

/**
 * A force spread evenly along a straight seam or rim, from one place to another.
 *
 * @throws Refusal when there are no nodes
 */
export function alongLine({ problem, nodes, faces }: BoxStructure, from: BoxSpot, to: BoxSpot): NodeShares {
  const sides = new Map<number, LineSide>();
  // Where a seam gives, the first face takes it.
  for (const face of faces)
    for (const side of sidesAlong(nodes, face, from, to)) {
      const place = Math.round(1e8 * side.along);
      if (!sides.has(place)) sides.set(place, side);
    }
  if (sides.size === 0) throw new Refusal(`${problem.name}: a line load meets no rim or seam`);
  const shares = new Map<number, number>();
  for (const { nodes: own, length } of sides.values())
    [1 / 6, 2 / 3, 1 / 6].forEach((share, k) => {
      shares.set(at(own, k), (shares.get(at(own, k)) ?? 0) + share * length);
    });
  return evened(shares);
}

function evened(shares: ReadonlyMap<number, number>): NodeShares {
  const total = [...shares.values()].reduce((sum, share) => sum + share, 0);
  return { nodes: [...shares.keys()], shares: [...shares.values()].map((share) => share / total) };
}

/** Mass of a box's sheets at each of its nodes, kg. */
export function nodeMasses({ faces, nodes }: BoxStructure): Float64Array {
  const masses = new Float64Array(nodes.length);
  for (const { mesh, sheets, numbers } of faces) {
    sheets.forEach(({ mass }, element) => {
      const { x, y } = elementPlaces(mesh, element);
      const own = elementNodes(mesh, element);
      nodeAreas(x, y).forEach((area, i) => {
        add(masses, at(numbers, at(own, i)), mass[0] * area);
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
 * @returns one value a degree of freedom
 */
export function weightLoad(
  { nodes }: BoxStructure,
  masses: Float64Array,
  pull: (spot: BoxSpot) => BoxSpot,
): Float64Array {
  const load = new Float64Array(spaceDofs * nodes.length);
  nodes.forEach((spot, node) => {
    const [x, y, z] = pull(spot);
    const from = spaceDofs * node;
    load[from] = at(masses, node) * x;
    load[from + 1] = at(masses, node) * y;
    load[from + 2] = at(masses, node) * z;
  });
  return load;
}
