/**
 * What a moved box shows: movements, energy, sag of its faces, and how far they and their openings go out of square.
 */

import { add, at as entry } from "../../algebra/lists.js";
import { inverse } from "../../algebra/matrix3.js";
import { Refusal } from "../../refusal.js";
import { boundsOf, reachOf } from "../../shape/index.js";
import { spaceDofs } from "../element/index.js";
import type { Cutout, QuadMesh } from "../mesh/index.js";
import { timesPieces } from "../solve/index.js";
import { type BoxProblem, type BoxSpot, extents, type FaceName, frames } from "./box-problem.js";
import { type BoxStructure, piecesOf } from "./meshed-box.js";
import type { BoxForce, MovedBox } from "./solve-box.js";

/** How a place has moved, m. */
export function movementAt({ structure: { nodes }, displacement }: MovedBox, spot: BoxSpot): BoxSpot {
  const away = (node: BoxSpot): number => Math.hypot(...node.map((at, axis) => at - entry(spot, axis)));
  const nearest = nodes.reduce((best, node, i) => (away(node) < away(entry(nodes, best)) ? i : best), 0);
  const [x = 0, y = 0, z = 0] = displacement.subarray(spaceDofs * nearest, spaceDofs * nearest + 3);
  return [x, y, z];
}

/** The farthest any place has moved, m. */
export function farthestMovement({ structure: { nodes }, displacement }: MovedBox): number {
  return nodes.reduce((most, _, node) => {
    const from = spaceDofs * node;
    return Math.max(
      most,
      Math.hypot(entry(displacement, from), entry(displacement, from + 1), entry(displacement, from + 2)),
    );
  }, 0);
}

/** How far a force has moved in its own direction, averaged over where it acts, m: its work over its size. */
export function wayOfForce({ displacement }: MovedBox, { on, force }: BoxForce): number {
  const work = on.nodes.reduce(
    (sum, node, i) =>
      sum +
      force.reduce(
        (part, each, axis) =>
          part + entry(on.shares, i) * each * entry(displacement, spaceDofs * node + axis),
        0,
      ),
    0,
  );
  return work / Math.hypot(...force);
}

/** Energy that a box stores in its sheets, seams and beams, N m; springs added when it was factored are left out. */
export function storedEnergy({ structure, displacement }: MovedBox): number {
  return half(displacement, timesPieces(piecesOf(structure), displacement));
}

function half(a: Float64Array, b: Float64Array): number {
  return a.reduce((sum, value, i) => sum + value * entry(b, i), 0) / 2;
}

/** With what the supports push back in all, along x, y, z, N. */
export function heldUp({ structure, displacement, forces, factors }: MovedBox): BoxSpot {
  const carried = timesPieces(piecesOf(structure), displacement);
  for (const { on, force } of forces)
    on.nodes.forEach((node, i) => {
      for (const axis of [0, 1, 2] as const)
        add(carried, spaceDofs * node + axis, -entry(on.shares, i) * force[axis]);
    });
  const sum = (axis: number): number =>
    carried.reduce(
      (total, value, dof) => total + (factors.held[dof] && dof % spaceDofs === axis ? value : 0),
      0,
    );
  return [sum(0), sum(1), sum(2)];
}

/**
 * The largest deflection of a face across its own plane, measured from a plane (or saddle) through its four corners.
 *
 * @param name of the face
 * @returns m, as a size
 * @throws RangeError when the face is open
 */
export function sagBetweenCorners(
  { structure, displacement }: Pick<MovedBox, "structure" | "displacement">,
  name: FaceName,
): number {
  const face = structure.faces.find((one) => one.name === name);
  if (!face) throw new RangeError(`${structure.problem.name}: there is no face ${name}`);
  const { axes } = frames[name];
  const across = (node: number): number =>
    entry(displacement, spaceDofs * entry(face.numbers, node) + axes[2]);
  const { x, y } = face.mesh;
  const [length, width] = [Math.max(...x), Math.max(...y)];
  const corners = [0, 1].map((high) =>
    [0, 1].map((far) => across(nearest(face.mesh, far * length, high * width))),
  );
  let most = 0;
  for (let node = 0; node < x.length; node++) {
    const [a, b] = [entry(x, node) / length, entry(y, node) / width];
    const chord = corners.reduce(
      (sum, row, high) =>
        sum + row.reduce((part, value, far) => part + value * (far ? a : 1 - a), 0) * (high ? b : 1 - b),
      0,
    );
    most = Math.max(most, Math.abs(across(node) - chord));
  }
  return most;
}

function nearest({ x, y }: QuadMesh, atX: number, atY: number): number {
  let best = 0;
  for (let node = 0; node < x.length; node++)
    if (
      Math.hypot(entry(x, node) - atX, entry(y, node) - atY) <
      Math.hypot(entry(x, best) - atX, entry(y, best) - atY)
    )
      best = node;
  return best;
}

/** An opening that has gone out of square. */
export interface OutOfSquare {
  /** Change of its right angles, rad. */
  readonly shear: number;
  /** Difference of its diagonals, m. */
  readonly diagonals: number;
}

/**
 * How far an opening has gone out of square: the straight-line movement that fits all of its rim best.
 *
 * @param structure of the box
 * @param displacement of all its degrees of freedom
 * @param name of the face the opening is in
 * @param cutout the opening
 * @throws Refusal when the face has no such rim
 */
export function outOfSquare(
  structure: BoxStructure,
  displacement: Float64Array,
  name: FaceName,
  cutout: Cutout,
): OutOfSquare {
  const shear = sumOfShares(shearShares(rimOf(structure, name, cutout), name), displacement);
  const { width, height } = boundsOf(cutout.shape);
  return { shear, diagonals: (2 * Math.abs(shear) * width * height) / Math.hypot(width, height) };
}

/** Degrees of freedom of a box, and how much of each counts. */
export interface DofShares {
  /** Numbers in the box. */
  readonly dofs: readonly number[];
  /** One a degree of freedom. */
  readonly shares: readonly number[];
}

/**
 * How far a whole face has gone out of square, by the movement that fits its four sides best, rad, as shares of the
 * movements of its nodes.
 *
 * @throws RangeError when the face is open
 */
export function faceShear({ problem, faces }: BoxStructure, name: FaceName): DofShares {
  const face = faces.find((one) => one.name === name);
  if (!face) throw new RangeError(`${problem.name}: there is no face ${name}`);
  const { mesh, numbers } = face;
  const [length, width] = [Math.max(...mesh.x), Math.max(...mesh.y)];
  const onSide = (at: number, extent: number): boolean => at < 1e-9 || at > extent - 1e-9;
  const sides = Array.from(
    numbers,
    (node, i): RimNode => ({ x: entry(mesh.x, i), y: entry(mesh.y, i), node }),
  );
  return shearShares(
    sides.filter(({ x, y }) => onSide(x, length) || onSide(y, width)),
    name,
  );
}

/** What shares of movements come to. */
export function sumOfShares({ dofs, shares }: DofShares, displacement: Float64Array): number {
  return dofs.reduce((sum, dof, i) => sum + entry(shares, i) * entry(displacement, dof), 0);
}

/** The slope along its second axis of what moves along the first, and the other way round. */
function shearShares(nodes: readonly RimNode[], name: FaceName): DofShares {
  const [along, across] = frames[name].axes;
  const slopes = slopeShares(nodes);
  return {
    dofs: nodes.flatMap(({ node }) => [spaceDofs * node + along, spaceDofs * node + across]),
    shares: slopes.flatMap(([alongX, alongY]) => [alongY, alongX]),
  };
}

/** A node on the rim of an opening, in the face's own axes. */
export interface RimNode {
  /** Along the face's first axis, m. */
  readonly x: number;
  /** Along the face's second axis, m. */
  readonly y: number;
  /** Its number in the box. */
  readonly node: number;
}

/**
 * Nodes around an opening.
 *
 * @throws Refusal that names the face and the cutout when there is no rim around it
 */
export function rimOf({ problem, faces }: BoxStructure, name: FaceName, cutout: Cutout): readonly RimNode[] {
  const face = faces.find((one) => one.name === name);
  const { left, bottom, width, height } = boundsOf(cutout.shape);
  const near = 1e-6 * (width + height);
  const within = (at: number, from: number, length: number): boolean =>
    at > from - near && at < from + length + near;
  const nodes = new Set(face?.mesh.rim.flat());
  const rim = [...nodes].flatMap((node): RimNode[] => {
    const { mesh, numbers } = face!;
    const [x, y] = [entry(mesh.x, node), entry(mesh.y, node)];
    return within(x, left, width) && within(y, bottom, height) ? [{ x, y, node: entry(numbers, node) }] : [];
  });
  if (rim.length < 4) throw new Refusal(`${problem.name}: ${name} has no rim around ${cutout.name}`);
  return rim;
}

/** Whether a cutout of a face reaches the edge of the box from one place to another. */
export function reachesEdge(
  problem: BoxProblem,
  name: FaceName,
  cutout: Cutout,
  from: BoxSpot,
  to: BoxSpot,
): boolean {
  const { axes } = frames[name];
  return ([0, 1] as const).some((k) => {
    const at = from[axes[k]];
    if (Math.abs(to[axes[k]] - at) > 1e-9) return false;
    const extent = extents(problem)[axes[k]];
    const { left, right, bottom, top } = reachOf(cutout.shape);
    const [low, high] = k === 0 ? [left, right] : [bottom, top];
    return at > extent / 2 ? high > at - 1e-9 : low < at + 1e-9;
  });
}

/** What the value at each place adds to the slopes along x and y of the plane that fits all values best. */
function slopeShares(places: readonly RimNode[]): readonly (readonly [number, number])[] {
  const sum = (term: (place: RimNode) => number): number =>
    places.reduce((total, place) => total + term(place), 0);
  const [sx, sy, sxy] = [sum(({ x }) => x), sum(({ y }) => y), sum(({ x, y }) => x * y)];
  const rows = inverse([
    [places.length, sx, sy],
    [sx, sum(({ x }) => x * x), sxy],
    [sy, sxy, sum(({ y }) => y * y)],
  ]);
  const share = (i: 1 | 2, { x, y }: RimNode): number => rows[i][0] + rows[i][1] * x + rows[i][2] * y;
  return places.map((place) => [share(1, place), share(2, place)]);
}
