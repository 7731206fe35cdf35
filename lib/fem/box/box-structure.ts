/** A box as pieces: the elements of its faces, joined where they meet. */
import { elementRows, elementStiffness, freedomsPerNode, type Sheet } from "../element/index.js";
import {
  type Cutout,
  type CutRectangle,
  divided,
  elementCount,
  elementMiddle,
  elementNodes,
  elementPlaces,
  faceMesh,
  gradedAlong,
  type MeshBox,
  type QuadMesh,
} from "../mesh/index.js";
import { sheetAt } from "../panel/index.js";
import type { Piece } from "../solve/index.js";
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
}

/**
 * Meshes a box. A face offers no resistance to turns about the line across it; along the seams its neighbour does.
 *
 * @param problem the box
 * @param size of elements far from seams and corners, m
 * @param patches rectangles of the bottom and top whose sides must be mesh lines
 * @throws RangeError that names the face and the cutout when an outline cannot be meshed
 */
export function boxStructure(
  problem: BoxProblem,
  size: number,
  patches: readonly MeshBox[] = [],
): BoxStructure {
  const lines = ([0, 1, 2] as const).map((axis) => axisLines(problem, axis, size, patches));
  const nodes: BoxSpot[] = [];
  const known = new Map<string, number>();
  const numberOf = (spot: BoxSpot): number => {
    const key = spot.map((at) => Math.round(at * 1e8)).join(" ");
    const number = known.get(key) ?? nodes.push(spot) - 1;
    known.set(key, number);
    return number;
  };
  const faces = faceNames.flatMap((name) => {
    const face = problem.faces[name];
    return face ? [meshedFace(problem, name, face, lines, size, numberOf)] : [];
  });
  return { problem, nodes, faces };
}

function meshedFace(
  problem: BoxProblem,
  name: FaceName,
  face: BoxFace,
  lines: readonly (readonly number[])[],
  size: number,
  numberOf: (spot: BoxSpot) => number,
): MeshedFace {
  const [along, across] = frames[name].axes;
  const outline = { length: extents(problem)[along], width: extents(problem)[across], cutouts: face.cutouts };
  const mesh = faceMesh(
    `${problem.name}, ${name}`,
    outline,
    face.regions,
    [lines[along]!, lines[across]!],
    () => size,
  );
  const numbers = Int32Array.from(mesh.x, (u, node) => numberOf(onFace(problem, name, [u, mesh.y[node]!])));
  const sheets = Array.from({ length: elementCount(mesh) }, (_, i) => sheetAt(face, elementMiddle(mesh, i)));
  const elements = sheets.map((sheet, i) => facePiece(problem, name, mesh, i, numbers, sheet));
  return { name, mesh, sheets, numbers, elements };
}

/** Where lines run across an axis: at the sides of cutouts, strips and patches, and between, in pairs. */
function axisLines(
  problem: BoxProblem,
  axis: 0 | 1 | 2,
  size: number,
  patches: readonly MeshBox[],
): readonly number[] {
  const extent = extents(problem)[axis];
  const musts = faceNames.flatMap((name) => {
    const direction = frames[name].axes.indexOf(axis);
    const face = problem.faces[name];
    if (!face || direction === 2) return [];
    const straight = face.cutouts.every(isSharp) ? face.cutouts.filter(isSharp) : [];
    const boxes = [...straight, ...face.regions, ...(axis === 2 ? [] : patches)];
    return boxes.flatMap((box) =>
      direction === 0 ? [box.left, box.left + box.width] : [box.bottom, box.bottom + box.height],
    );
  });
  const fixed = [0, extent, ...musts.filter((at) => at > 0 && at < extent)].sort((a, b) => a - b);
  const apart = fixed.filter((at, i) => i === 0 || at - fixed[i - 1]! > 1e-7 * extent);
  const graded = gradedAlong(apart, size);
  const coarse = apart.flatMap((at, i) => {
    const next = apart[i + 1];
    return next === undefined ? [at] : divided(at, next, (place) => 2 * graded(place)).slice(0, -1);
  });
  return coarse.flatMap((at, i) => (i === 0 ? [at] : [(coarse[i - 1]! + at) / 2, at]));
}

/** Only a face whose cutouts are all sharp rectangles is meshed by lines. */
function isSharp(cutout: Cutout): cutout is CutRectangle {
  return cutout.kind === "rectangle" && cutout.radius === 0;
}

function facePiece(
  problem: BoxProblem,
  name: FaceName,
  mesh: QuadMesh,
  element: number,
  numbers: Int32Array,
  sheet: Sheet,
): Piece {
  const { x, y } = elementPlaces(mesh, element);
  const { places, signs } = inBox(frames[name]);
  const matrix = elementStiffness(x, y, sheet);
  for (let i = 0; i < elementRows; i++) {
    for (let j = 0; j < elementRows; j++)
      matrix[i * elementRows + j]! *= signs[i % freedomsPerNode]! * signs[j % freedomsPerNode]!;
  }
  const nodes = Array.from(elementNodes(mesh, element), (node) => numbers[node]!);
  return {
    freedoms: Int32Array.from(nodes.flatMap((node) => places.map((place) => boxFreedoms * node + place))),
    matrix,
    middle: onFace(problem, name, elementMiddle(mesh, element)),
  };
}

/** Where u, v, w, bx, by of a face lie among a node's freedoms in the box, and with which sign. */
function inBox({ axes, sense }: Frame): {
  readonly places: readonly number[];
  readonly signs: readonly number[];
} {
  const [a, b, c] = axes;
  return { places: [a, b, c, 3 + b, 3 + a], signs: [1, 1, sense, 1, -1] };
}

/** About so many elements give some 20 000 unknowns. */
const usualElements = 900;

/** The usual size of a box's elements, m: so that a closed box of these sizes has some 20 000 unknowns. */
export function usualBoxSize(problem: BoxProblem): number {
  const [length, width, height] = extents(problem);
  return Math.sqrt((2 * (length * width + length * height + width * height)) / usualElements);
}
