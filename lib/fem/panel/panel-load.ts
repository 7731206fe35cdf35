import { freedomsPerNode, nodeAreas } from "../element/index.js";
import { elementCount, elementMiddle, elementNodes, elementPlaces, type MeshBox } from "../mesh/index.js";
import { locate } from "./locate.js";
import { sidesOnLine } from "./nodes-on.js";
import type { PanelLoad } from "./panel-problem.js";
import type { PanelStructure } from "./panel-structure.js";
import { across } from "./panel-supports.js";
import { sideShares } from "./turning-springs.js";

/**
 * Forces on the freedoms of a panel.
 *
 * @param structure the panel
 * @param loads what presses on it
 * @throws RangeError when a load lies on no material
 */
export function panelForces(structure: PanelStructure, loads: readonly PanelLoad[]): Float64Array {
  const forces = new Float64Array(structure.held.length);
  for (const [node, force] of loads.flatMap((load) => nodeForces(structure, load)))
    forces[freedomsPerNode * node + across.w]! += force;
  return forces;
}

type NodeForce = readonly [node: number, force: number];

function nodeForces(structure: PanelStructure, load: PanelLoad): readonly NodeForce[] {
  switch (load.kind) {
    case "pressure":
      return pressed(structure, () => load.pressure);
    case "weight":
      return pressed(structure, (element) => load.acceleration * structure.sheets[element]!.mass[0]);
    case "point": {
      const { nodes, weights } = locate(structure.mesh, load.at);
      return Array.from(nodes, (node, i): NodeForce => [node, load.force * weights[i]!]);
    }
    case "line":
      return lineForces(structure, load);
    case "patch":
      return patchForces(structure, load);
  }
}

function lineForces(
  { mesh, problem }: PanelStructure,
  { from, to, force }: Extract<PanelLoad, { kind: "line" }>,
): NodeForce[] {
  const sides = sidesOnLine(mesh, from, to);
  if (sides.length === 0) throw new RangeError(`${problem.name}: no rim is left under a line load`);
  return [...sideShares(mesh, sides)].map(([node, share]) => [node, share * force]);
}

function patchForces(
  structure: PanelStructure,
  { over, force }: Extract<PanelLoad, { kind: "patch" }>,
): readonly NodeForce[] {
  const unit = pressed(structure, (element) =>
    isOver(over, elementMiddle(structure.mesh, element)) ? 1 : 0,
  );
  const area = unit.reduce((sum, [, share]) => sum + share, 0);
  if (!(area > 0)) throw new RangeError(`${structure.problem.name}: a patch load lies on no material`);
  return unit.map(([node, share]) => [node, (share * force) / area]);
}

function isOver({ left, bottom, width, height }: MeshBox, [x, y]: readonly [number, number]): boolean {
  return x > left && x < left + width && y > bottom && y < bottom + height;
}

function pressed({ mesh }: PanelStructure, pressure: (element: number) => number): readonly NodeForce[] {
  const forces: NodeForce[] = [];
  for (let element = 0; element < elementCount(mesh); element++) {
    const here = pressure(element);
    if (here === 0) continue;
    const { x, y } = elementPlaces(mesh, element);
    const nodes = elementNodes(mesh, element);
    nodeAreas(x, y).forEach((area, i) => {
      forces.push([nodes[i]!, area * here]);
    });
  }
  return forces;
}
