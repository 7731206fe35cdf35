/** How a panel is held: nodes and sides by place, what cannot move, edges that turn against a stiffness. */

import { add, at as entry } from "../../algebra/lists.js";
import { Refusal } from "../../refusal.js";
import type { Point2 } from "../../shape/index.js";
import { dofsPerNode, lineThree, sideShapes } from "../element/index.js";
import type { QuadMesh, Side } from "../mesh/index.js";
import type { Piece } from "../solve/index.js";
import type { PanelProblem } from "./panel-problem.js";

/** Degrees of freedom of a node, in their order. */
export const across = { u: 0, v: 1, w: 2, turnX: 3, turnY: 4 } as const;

const inPlane: readonly number[] = [across.u, across.v];
const outOfPlane: readonly number[] = [across.w, across.turnX, across.turnY];

/**
 * Degrees of freedom held when the panel bends.
 *
 * @param coupled whether bending stretches it too; otherwise nothing moves in its plane
 * @throws Refusal when a held line meets no rim
 */
export function heldDofs(problem: PanelProblem, mesh: QuadMesh, coupled: boolean): Uint8Array {
  const held = new Uint8Array(dofsPerNode * mesh.x.length);
  if (coupled) holdInPlane(problem, mesh, held);
  else holdAll(mesh, held, inPlane);
  for (const { from, to, hold } of problem.heldLines) {
    const nodes = nodesOnLine(mesh, from, to);
    if (nodes.length === 0)
      throw new Refusal(
        `${problem.name}: no rim is left where it is held, from ${from.x},${from.y} to ${to.x},${to.y} m`,
      );
    for (const node of nodes) holdNode(held, node, hold.kind === "clamped" ? outOfPlane : [across.w]);
  }
  for (const { at, spring } of problem.heldPoints)
    if (spring === undefined) holdNode(held, nodeNear(mesh, at), [across.w]);
  return held;
}

/** Degrees of freedom held when the panel is only pulled and pushed in its own plane. */
export function heldFlat(problem: PanelProblem, mesh: QuadMesh): Uint8Array {
  const held = new Uint8Array(dofsPerNode * mesh.x.length);
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
  const first = nodeNear(mesh, { x: 0, y: 0 });
  let farthest = first;
  const away = (node: number): number => Math.abs(entry(mesh.x, node) - entry(mesh.x, first));
  for (let node = 0; node < mesh.x.length; node++) if (away(node) > away(farthest)) farthest = node;
  holdNode(held, first, inPlane);
  holdNode(held, farthest, [across.v]);
}

function holdAll(mesh: QuadMesh, held: Uint8Array, kinds: readonly number[]): void {
  for (let node = 0; node < mesh.x.length; node++) holdNode(held, node, kinds);
}

function holdNode(held: Uint8Array, node: number, kinds: readonly number[]): void {
  for (const kind of kinds) held[dofsPerNode * node + kind] = 1;
}

/** Share of a line's length within which a node lies on it. */
const close = 1e-6;

/** Nodes on a straight line. */
function nodesOnLine(mesh: QuadMesh, from: Point2, to: Point2): readonly number[] {
  const nodes: number[] = [];
  for (let node = 0; node < mesh.x.length; node++) if (isOnLine(mesh, node, from, to)) nodes.push(node);
  return nodes;
}

/** Sides of the rim on a straight line. */
export function sidesOnLine(mesh: QuadMesh, from: Point2, to: Point2): readonly Side[] {
  return mesh.rim.filter((side) => side.every((node) => isOnLine(mesh, node, from, to)));
}

function isOnLine({ x, y }: QuadMesh, node: number, from: Point2, to: Point2): boolean {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const ax = entry(x, node) - from.x;
  const ay = entry(y, node) - from.y;
  // All times the line's length, so that no root is taken.
  const squared = dx * dx + dy * dy;
  const along = ax * dx + ay * dy;
  const aside = Math.abs(ax * dy - ay * dx);
  return aside < close * squared && along > -close * squared && along < (1 + close) * squared;
}

/** The node nearest to a place. */
export function nodeNear({ x, y }: QuadMesh, { x: atX, y: atY }: Point2): number {
  let nearest = 0;
  let least = Infinity;
  for (let node = 0; node < x.length; node++) {
    const away = (entry(x, node) - atX) ** 2 + (entry(y, node) - atY) ** 2;
    if (away < least) [nearest, least] = [node, away];
  }
  return nearest;
}

/**
 * One piece a side: the turn about the side against a stiffness.
 *
 * @param mesh of the panel
 * @param sides straight sides of the rim
 * @param turning N m a radian on each metre
 */
export function rotationalSprings(
  mesh: QuadMesh,
  sides: readonly Side[],
  rotational: number,
): readonly Piece[] {
  return sides.map((side) => {
    const [first, , last] = side;
    const [dx, dy] = [entry(mesh.x, last) - entry(mesh.x, first), entry(mesh.y, last) - entry(mesh.y, first)];
    const length = Math.hypot(dx, dy);
    // The fibre's turn across the side: its share of bx and of by.
    const normal = [-dy / length, dx / length];
    const row = (at: number): number[] => sideShapes(at).flatMap((shape) => normal.map((n) => n * shape));
    const matrix = new Float64Array(36);
    for (const { at, weight } of lineThree) {
      const values = row(at);
      values.forEach((a, i) => {
        values.forEach((b, j) => {
          add(matrix, 6 * i + j, (rotational * weight * length * a * b) / 2);
        });
      });
    }
    return {
      dofs: Int32Array.from(side.flatMap((node) => [dofsPerNode * node + 3, dofsPerNode * node + 4])),
      matrix,
      middle: [entry(mesh.x, side[1]), entry(mesh.y, side[1]), 0],
    };
  });
}

/** How a force of 1 spread along sides is shared among their nodes: both ends a sixth, the middle two thirds. */
export function sideShares(mesh: QuadMesh, sides: readonly Side[]): ReadonlyMap<number, number> {
  const lengths = sides.map(([a, , b]) =>
    Math.hypot(entry(mesh.x, b) - entry(mesh.x, a), entry(mesh.y, b) - entry(mesh.y, a)),
  );
  const total = lengths.reduce((sum, length) => sum + length, 0);
  const shares = new Map<number, number>();
  sides.forEach((side, i) => {
    side.forEach((node, k) => {
      const share = ((k === 1 ? 2 / 3 : 1 / 6) * entry(lengths, i)) / total;
      shares.set(node, (shares.get(node) ?? 0) + share);
    });
  });
  return shares;
}
