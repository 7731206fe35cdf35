/** Nodes and sides of a mesh by place. */
import type { QuadMesh, Side, Spot } from "../mesh/index.js";

/** Share of a line's length within which a node lies on it. */
const close = 1e-6;

/** Nodes on a straight line. */
export function nodesOnLine(mesh: QuadMesh, from: Spot, to: Spot): readonly number[] {
  const nodes: number[] = [];
  for (let node = 0; node < mesh.x.length; node++) if (isOnLine(mesh, node, from, to)) nodes.push(node);
  return nodes;
}

/** Sides of the rim on a straight line. */
export function sidesOnLine(mesh: QuadMesh, from: Spot, to: Spot): readonly Side[] {
  return mesh.rim.filter((side) => side.every((node) => isOnLine(mesh, node, from, to)));
}

function isOnLine({ x, y }: QuadMesh, node: number, from: Spot, to: Spot): boolean {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const ax = x[node]! - from[0];
  const ay = y[node]! - from[1];
  // All times the line's length, so that no root is taken.
  const squared = dx * dx + dy * dy;
  const along = ax * dx + ay * dy;
  const aside = Math.abs(ax * dy - ay * dx);
  return aside < close * squared && along > -close * squared && along < (1 + close) * squared;
}

/** The node nearest to a place. */
export function nodeNear({ x, y }: QuadMesh, [atX, atY]: Spot): number {
  let nearest = 0;
  let least = Infinity;
  for (let node = 0; node < x.length; node++) {
    const away = (x[node]! - atX) ** 2 + (y[node]! - atY) ** 2;
    if (away < least) [nearest, least] = [node, away];
  }
  return nearest;
}
