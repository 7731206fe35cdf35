/** Which freedoms of a panel cannot move. */
import { freedomsPerNode } from "../element/index.js";
import type { QuadMesh } from "../mesh/index.js";
import { nodeNear, nodesOnLine } from "./nodes-on.js";
import type { PanelProblem } from "./panel-problem.js";

/** Freedoms of a node, in their order. */
export const across = { u: 0, v: 1, w: 2, turnX: 3, turnY: 4 } as const;

const inPlane: readonly number[] = [across.u, across.v];
const outOfPlane: readonly number[] = [across.w, across.turnX, across.turnY];

/**
 * Freedoms held when the panel bends.
 *
 * @param coupled whether bending stretches it too; otherwise nothing moves in its plane
 * @throws RangeError when a held line meets no rim
 */
export function heldFreedoms(problem: PanelProblem, mesh: QuadMesh, coupled: boolean): Uint8Array {
  const held = new Uint8Array(freedomsPerNode * mesh.x.length);
  if (coupled) holdInPlane(problem, mesh, held);
  else holdAll(mesh, held, inPlane);
  for (const { from, to, hold } of problem.heldLines) {
    const nodes = nodesOnLine(mesh, from, to);
    if (nodes.length === 0)
      throw new RangeError(`${problem.name}: no rim is left where it is held, from ${from} to ${to} m`);
    for (const node of nodes) holdNode(held, node, hold.kind === "clamped" ? outOfPlane : [across.w]);
  }
  for (const { at, spring } of problem.heldPoints)
    if (spring === undefined) holdNode(held, nodeNear(mesh, at), [across.w]);
  return held;
}

/** Freedoms held when the panel is only pulled and pushed in its own plane. */
export function heldFlat(problem: PanelProblem, mesh: QuadMesh): Uint8Array {
  const held = new Uint8Array(freedomsPerNode * mesh.x.length);
  holdAll(mesh, held, outOfPlane);
  holdInPlane(problem, mesh, held);
  return held;
}

/** Clamped lines hold; without any, three supports that keep the panel from drifting without straining it. */
function holdInPlane({ heldLines }: PanelProblem, mesh: QuadMesh, held: Uint8Array): void {
  const clamped = heldLines.filter(({ hold }) => hold.kind === "clamped");
  if (clamped.length > 0) {
    for (const { from, to } of clamped)
      for (const node of nodesOnLine(mesh, from, to)) holdNode(held, node, inPlane);
    return;
  }
  const first = nodeNear(mesh, [0, 0]);
  let farthest = first;
  const away = (node: number): number => Math.abs(mesh.x[node]! - mesh.x[first]!);
  for (let node = 0; node < mesh.x.length; node++) if (away(node) > away(farthest)) farthest = node;
  holdNode(held, first, inPlane);
  holdNode(held, farthest, [across.v]);
}

function holdAll(mesh: QuadMesh, held: Uint8Array, kinds: readonly number[]): void {
  for (let node = 0; node < mesh.x.length; node++) holdNode(held, node, kinds);
}

function holdNode(held: Uint8Array, node: number, kinds: readonly number[]): void {
  for (const kind of kinds) held[freedomsPerNode * node + kind] = 1;
}
