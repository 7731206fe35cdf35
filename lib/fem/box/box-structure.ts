/** A box as pieces: the elements of its faces, joined where they meet, with seams that give and beams. */
import {
  type ElementMatrix,
  elementRows,
  elementStiffness,
  freedomsPerNode,
  type Sheet,
  sharedMatrices,
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
import { beamPieces } from "./box-beams.js";
import { boxCorners, cornersOnFace } from "./box-corners.js";
import { boxLines } from "./box-lines.js";
import { boxNodes, type FaceMesh } from "./box-nodes.js";
import {
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
import { laidSeam, seamSprings } from "./seam-springs.js";

/** Freedoms of a node of a box: along x, y, z and the turns about them. */
export const boxFreedoms = 6;

/** One face, meshed. */
export interface MeshedFace {
  readonly name: FaceName;
  readonly mesh: QuadMesh;
  /** Make-up of each element. */
  readonly sheets: readonly Sheet[];
  /** Number in the box of each node of the face. */
  readonly numbers: Int32Array;
  readonly elements: readonly Piece[];
}

/** A box ready to be held and factored. */
export interface BoxStructure {
  readonly problem: BoxProblem;
  /** Places of all nodes. */
  readonly nodes: readonly BoxSpot[];
  readonly faces: readonly MeshedFace[];
  /** Springs of seams that give, and beams. */
  readonly links: readonly Piece[];
}

/** Everything that resists in a box: its faces, seams and beams. */
export function piecesOf({ faces, links }: BoxStructure): readonly Piece[] {
  return [...faces.flatMap(({ elements }) => elements), ...links];
}

/**
 * Meshes a box. A face offers no resistance to turns about the line across it; along the seams its neighbour does.
 *
 * @param problem the box
 * @param size of elements far from seams and corners, m
 * @param patches rectangles of the bottom whose sides must be mesh lines, of the top too
 * @throws RangeError that names the face and the cutout when an outline cannot be meshed, the faces of a seam that
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
    meshedFace(problem, mesh, numbers[i]!, matrices[frames[mesh.name].sense]),
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
  const outline = { length: extents(problem)[along], width: extents(problem)[across], cutouts: face.cutouts };
  return faceMesh(
    `${problem.name}, ${name}`,
    outline,
    {
      boxes: face.regions,
      corners: cornersOnFace(problem, name, corners),
      rim: rimWidth(face.sheet),
    },
    [lines[along]!, lines[across]!],
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
  const freedoms = new Int32Array(elementRows);
  for (let i = 0; i < elementRows; i++) {
    const node = numbers[nodes[Math.floor(i / freedomsPerNode)]!]!;
    freedoms[i] = boxFreedoms * node + places[i % freedomsPerNode]!;
  }
  return { freedoms, matrix, middle: onFace(problem, name, elementMiddle(mesh, element)) };
}

/** An element's stiffness with the signs of the box's freedoms. */
function signedStiffness(sense: Frame["sense"]): ElementMatrix {
  const signs = signsOf(sense);
  return (x, y, sheet) => {
    const matrix = elementStiffness(x, y, sheet);
    for (let i = 0; i < elementRows; i++) {
      for (let j = 0; j < elementRows; j++)
        matrix[i * elementRows + j]! *= signs[i % freedomsPerNode]! * signs[j % freedomsPerNode]!;
    }
    return matrix;
  };
}

/** Where u, v, w, bx, by of a face lie among a node's freedoms in the box. */
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
