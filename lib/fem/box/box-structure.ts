/** A box as pieces: the elements of its faces, joined where they meet, with seams that give and beams. */
import { at as entry, under } from "../../algebra/lists.js";
import { Refusal } from "../../refusal.js";
import {
  beamMatrix,
  dofsPerNode,
  type ElementMatrix,
  elementRows,
  elementStiffness,
  type Sheet,
  sharedMatrices,
  spaceDofs,
} from "../element/index.js";
import {
  elementCount,
  elementMiddle,
  elementNodes,
  elementPlaces,
  faceMesh,
  type MeshBox,
  type QuadMesh,
} from "../mesh/index.js";
import { rimWidth, sheetAt } from "../panel/index.js";
import type { Piece } from "../solve/index.js";
import { boxCorners, boxLines, cornersOnFace } from "./box-lines.js";
import {
  type BoxBeam,
  type BoxFace,
  type BoxProblem,
  type BoxSpot,
  extents,
  type FaceName,
  type Frame,
  faceNames,
  frames,
  onFace,
} from "./box-problem.js";
import { type BoxStructure, distance, type MeshedFace, sidesAlong } from "./meshed-box.js";

import { laidSeam, seamSprings } from "./seam.js";

/**
 * Meshes a box. A face offers no resistance to turns about the line across it; along the seams its neighbour does.
 *
 * @param problem the box
 * @param size of elements far from seams and corners, m
 * @param patches rectangles of the bottom whose sides must be mesh lines, of the top too
 * @throws Refusal that names the face and the cutout when an outline cannot be meshed, the faces of a seam that
 * do not touch, the beam that lies on no material
 */
export function boxStructure(
  problem: BoxProblem,
  size: number,
  patches: readonly MeshBox[] = [],
): BoxStructure {
  const lines = boxLines(problem, size, patches);
  const corners = boxCorners(problem, patches);
  const meshes = faceNames.flatMap((name) => {
    const face = problem.faces[name];
    return face ? [{ name, mesh: meshOf(problem, name, face, lines, size, corners) }] : [];
  });
  const { nodes, numbers } = boxNodes(problem, meshes);
  const matrices = { 1: sharedMatrices(signedStiffness(1)), [-1]: sharedMatrices(signedStiffness(-1)) };
  const faces = meshes.map((mesh, i) =>
    meshedFace(problem, mesh, entry(numbers, i), matrices[frames[mesh.name].sense]),
  );
  const plain = { problem, nodes, faces };
  const links = [
    ...(problem.seams ?? []).flatMap((seam) => seamSprings(nodes, laidSeam(plain, seam))),
    ...(problem.beams ?? []).flatMap((beam) => beamPieces(plain, beam)),
  ];
  return { ...plain, links };
}

function meshOf(
  problem: BoxProblem,
  name: FaceName,
  face: BoxFace,
  lines: readonly (readonly number[])[],
  size: number,
  corners: readonly BoxSpot[],
): QuadMesh {
  const [along, across] = frames[name].axes;
  const { cutouts, freely = false } = face;
  const outline = { length: extents(problem)[along], width: extents(problem)[across], cutouts, freely };
  return faceMesh(
    `${problem.name}, ${name}`,
    outline,
    {
      boxes: face.regions,
      corners: cornersOnFace(problem, name, corners),
      rim: rimWidth(face.sheet),
    },
    [entry(lines, along), entry(lines, across)],
    () => size,
  );
}

function meshedFace(
  problem: BoxProblem,
  { name, mesh }: FaceMesh,
  numbers: Int32Array,
  matrix: ElementMatrix,
): MeshedFace {
  const face = problem.faces[name]!;
  const sheets = Array.from({ length: elementCount(mesh) }, (_, i) => sheetAt(face, elementMiddle(mesh, i)));
  const elements = sheets.map((sheet, i) => {
    const { x, y } = elementPlaces(mesh, i);
    return facePiece(problem, { name, mesh }, i, numbers, matrix(x, y, sheet));
  });
  return { name, mesh, sheets, numbers, elements };
}

function facePiece(
  problem: BoxProblem,
  { name, mesh }: FaceMesh,
  element: number,
  numbers: Int32Array,
  matrix: Float64Array,
): Piece {
  const places = placesOf(frames[name]);
  const nodes = elementNodes(mesh, element);
  const dofs = new Int32Array(elementRows);
  for (let i = 0; i < elementRows; i++) {
    const node = entry(numbers, entry(nodes, Math.floor(i / dofsPerNode)));
    dofs[i] = spaceDofs * node + entry(places, i % dofsPerNode);
  }
  return { dofs, matrix, middle: onFace(problem, name, elementMiddle(mesh, element)) };
}

/** An element's stiffness with the signs of the box's degrees of freedom. */
function signedStiffness(sense: Frame["sense"]): ElementMatrix {
  const signs = signsOf(sense);
  return (x, y, sheet) => {
    const matrix = elementStiffness(x, y, sheet);
    for (let i = 0; i < elementRows; i++) {
      for (let j = 0; j < elementRows; j++)
        matrix[i * elementRows + j]! *= entry(signs, i % dofsPerNode) * entry(signs, j % dofsPerNode);
    }
    return matrix;
  };
}

/**
 * The work that one movement of a box would do on another through changes of its faces' sheets: a^T dK b. How far a
 * place moves changes by minus that, with a load of 1 at the place for the one and the load itself for the other.
 *
 * @param structure the box, each face of one sheet
 * @param changes of the sheets, by face
 * @param a degrees of freedom of the box
 * @param b the same
 */
export function workOfChange(
  { faces }: BoxStructure,
  changes: Readonly<Partial<Record<FaceName, Sheet>>>,
  a: Float64Array,
  b: Float64Array,
): number {
  const matrices = { 1: sharedMatrices(signedStiffness(1)), [-1]: sharedMatrices(signedStiffness(-1)) };
  let work = 0;
  for (const { name, mesh, elements } of faces) {
    const change = changes[name];
    if (!change) continue;
    elements.forEach(({ dofs }, element) => {
      const { x, y } = elementPlaces(mesh, element);
      work += workThrough(matrices[frames[name].sense](x, y, change), dofs, a, b);
    });
  }
  return work;
}

function workThrough(matrix: Float64Array, dofs: Int32Array, a: Float64Array, b: Float64Array): number {
  let work = 0;
  for (let i = 0; i < dofs.length; i++) {
    let pull = 0;
    for (let j = 0; j < dofs.length; j++) pull += matrix[i * dofs.length + j]! * b[dofs[j]!]!;
    work += a[dofs[i]!]! * pull;
  }
  return work;
}

/** Where u, v, w, bx, by of a face lie among a node's degrees of freedom in the box. */
function placesOf({ axes: [a, b, c] }: Frame): readonly number[] {
  return [a, b, c, 3 + b, 3 + a];
}

/** With which sign they count there. */
function signsOf(sense: Frame["sense"]): readonly number[] {
  return [1, 1, sense, 1, -1];
}

/** With the rows along seams and the rings around corners, about so many give some 20 000 unknowns. */
const usualElements = 280;

/** The usual size of a box's elements, m: so that a closed box of these sizes has some 20 000 unknowns. */
export function usualBoxSize(problem: BoxProblem): number {
  const [length, width, height] = extents(problem);
  return Math.sqrt((2 * (length * width + length * height + width * height)) / usualElements);
}

/** A face with its mesh, not yet numbered. */
interface FaceMesh {
  /** Which face. */
  readonly name: FaceName;
  /** Its mesh, in the face's own axes. */
  readonly mesh: QuadMesh;
}

/** Nodes of a box, and the number of each face's nodes among them, face by face. */
interface BoxNodes {
  /** Places of all nodes of the box. */
  readonly nodes: readonly BoxSpot[];
  /** For each face, the number in the box of each of its nodes. */
  readonly numbers: readonly Int32Array[];
}

/** Numbers the nodes of all faces. */
function boxNodes(problem: BoxProblem, faces: readonly FaceMesh[]): BoxNodes {
  const spots = faces.map(({ name, mesh }) =>
    Array.from(mesh.x, (u, node) => onFace(problem, name, { x: u, y: entry(mesh.y, node) })),
  );
  const meeting = facesBySpot(faces, spots);
  const nodes: BoxSpot[] = [];
  const known = new Map<string, number>();
  const numbers = faces.map(({ name }, i) =>
    Int32Array.from(entry(spots, i), (spot) => {
      const key = keyOf(spot);
      const [first] = joinedTo(problem, name, under(meeting, key));
      const own = `${key} ${first}`;
      const number = known.get(own) ?? nodes.push(spot) - 1;
      known.set(own, number);
      return number;
    }),
  );
  return { nodes, numbers };
}

/** A place to a hundredth of a micrometre. */
function keyOf(spot: BoxSpot): string {
  return spot.map((at) => Math.round(at * 1e8)).join(" ");
}

function facesBySpot(
  faces: readonly FaceMesh[],
  spots: readonly (readonly BoxSpot[])[],
): ReadonlyMap<string, readonly FaceName[]> {
  const meeting = new Map<string, FaceName[]>();
  faces.forEach(({ name }, i) => {
    for (const spot of entry(spots, i)) {
      const key = keyOf(spot);
      const others = meeting.get(key);
      if (others) others.push(name);
      else meeting.set(key, [name]);
    }
  });
  return meeting;
}

/** The faces at a place that hang together with one by rigid edges, in the order given. */
function joinedTo({ seams = [] }: BoxProblem, name: FaceName, meeting: readonly FaceName[]): FaceName[] {
  const gives = (a: FaceName, b: FaceName): boolean =>
    seams.some(({ faces }) => faces.includes(a) && faces.includes(b));
  const joined = new Set([name]);
  for (const one of joined)
    for (const other of meeting) if (other !== one && !gives(one, other)) joined.add(other);
  return meeting.filter((other) => joined.has(other));
}

/**
 * The pieces of a beam, one a side of the face's elements.
 *
 * @throws Refusal that names the beam when it runs along no axis, or where there is no material
 */
function beamPieces(
  { problem, nodes, faces }: Pick<BoxStructure, "problem" | "nodes" | "faces">,
  beam: BoxBeam,
): readonly Piece[] {
  const { name, on, from, to, section } = beam;
  const words = `${problem.name}, ${name}`;
  const runs = ([0, 1, 2] as const).filter((axis) => Math.abs(to[axis] - from[axis]) > 1e-9);
  const [axis] = runs;
  if (axis === undefined || runs.length > 1) throw new Refusal(`${words}: a beam must run along an axis`);
  const face = faces.find((one) => one.name === on);
  if (!face) throw new Refusal(`${words}: its face ${on} is open`);
  const sides = sidesAlong(nodes, face, from, to);
  const covered = sides.reduce((sum, { length }) => sum + length, 0);
  const missing = distance(from, to) - covered;
  if (missing > 1e-6 * covered)
    throw new Refusal(`${words}: ${(1000 * missing).toFixed(0)} mm of it touch no material of ${on}`);
  return sides.map(({ nodes: own, length }) => ({
    dofs: Int32Array.from(
      own.flatMap((node) => Array.from({ length: spaceDofs }, (_, kind) => spaceDofs * node + kind)),
    ),
    matrix: beamMatrix(axis, length, section),
    middle: entry(nodes, own[1]),
  }));
}
