/**
 * The element: a flat nine-node shell of Reissner and Mindlin, with tied shear (M. L. Bucalem, K. J. Bathe,
 * Higher-order MITC general shell elements, Int. J. Numer. Methods Eng. 36, 1993). Membrane and bending take the
 * nine-node shape functions as they are.
 *
 * Degrees of freedom of a node on its own plane: u, v, w, and bx, by, the stretch along x and y per height above the
 * plane.
 */
import { productMatrix, slopeProducts, stretches } from "./integrals.js";
import { nodesPerElement } from "./shape.js";
import { isCoupled, type Sheet } from "./sheet.js";
import { shearStiffness } from "./tied-shear.js";

/** Degrees of freedom of a node on the plane of its element. */
export const dofsPerNode = 5;
/** Rows of an element's matrix. */
export const elementRows: number = dofsPerNode * nodesPerElement;

/** Degrees of freedom of a node of a sheet that only bends: w, bx, by. */
const bendingPerNode = 3;

/**
 * Stiffness of an element.
 *
 * @param x of its nine nodes, m
 * @param y the same
 * @param sheet what it is made of
 */
export function elementStiffness(x: Float64Array, y: Float64Array, sheet: Sheet): Float64Array {
  const matrix = new Float64Array(elementRows ** 2);
  const at = stretches(x, y);
  const products = slopeProducts(at);
  addPlane(matrix, products, sheet.membrane, { perNode: dofsPerNode, row: 0, column: 0 });
  addPlane(matrix, products, sheet.bending, { perNode: dofsPerNode, row: 3, column: 3 });
  if (isCoupled(sheet)) {
    addPlane(matrix, products, sheet.coupling, { perNode: dofsPerNode, row: 0, column: 3 });
    addPlane(matrix, products, sheet.coupling, { perNode: dofsPerNode, row: 3, column: 0 });
  }
  addShear(matrix, shearStiffness(x, y, at, sheet.shear), dofsPerNode, 2);
  return matrix;
}

/** Stiffness of an element that only bends: w, bx, by a node. */
export function bendingStiffness(x: Float64Array, y: Float64Array, { bending, shear }: Sheet): Float64Array {
  const at = stretches(x, y);
  const matrix = shearStiffness(x, y, at, shear);
  addPlane(matrix, slopeProducts(at), bending, { perNode: bendingPerNode, row: 1, column: 1 });
  return matrix;
}

/** Stiffness of an element that only stretches in its plane: u, v a node. */
export function membraneStiffness(x: Float64Array, y: Float64Array, { membrane }: Sheet): Float64Array {
  const matrix = new Float64Array((2 * nodesPerElement) ** 2);
  addPlane(matrix, slopeProducts(stretches(x, y)), membrane, { perNode: 2, row: 0, column: 0 });
  return matrix;
}

/** Mass of an element, with the inertia of its thickness. */
export function elementMass(x: Float64Array, y: Float64Array, { mass }: Sheet): Float64Array {
  const [plain, first, second] = mass;
  const matrix = new Float64Array(elementRows ** 2);
  const products = productMatrix(x, y);
  const spread = (weight: number, from: number, to: number): void => {
    for (let a = 0; a < nodesPerElement; a++) {
      for (let b = 0; b < nodesPerElement; b++)
        matrix[(dofsPerNode * a + from) * elementRows + dofsPerNode * b + to]! +=
          weight * products[a * nodesPerElement + b]!;
    }
  };
  for (const kind of [0, 1, 2]) spread(plain, kind, kind);
  for (const [stretch, turn] of [
    [0, 3],
    [1, 4],
  ] as const) {
    spread(second, turn, turn);
    spread(first, stretch, turn);
    spread(first, turn, stretch);
  }
  return matrix;
}

/**
 * Where a part goes in the element's matrix: how many degrees of freedom a node has there, and the part's first ones.
 */
interface Into {
  /** How many degrees of freedom a node has there. */
  readonly perNode: number;
  /** The first of the part's degrees of freedom among the rows of a node. */
  readonly row: number;
  /** The first of them among the columns of a node. */
  readonly column: number;
}

/** Adds the integral of B^T Q B for a strain of two displacements: stretch, bending or both. */
function addPlane(
  matrix: Float64Array,
  products: Float64Array,
  [[xx, xy, xs], [, yy, ys], [, , ss]]: Sheet["bending"],
  { perNode, row, column }: Into,
): void {
  const size = perNode * nodesPerElement;
  for (let a = 0; a < nodesPerElement; a++) {
    for (let b = 0; b < nodesPerElement; b++) {
      const pair = 4 * (nodesPerElement * a + b);
      const pxx = products[pair]!;
      const pxy = products[pair + 1]!;
      const pyx = products[pair + 2]!;
      const pyy = products[pair + 3]!;
      const at = (perNode * a + row) * size + perNode * b + column;
      matrix[at]! += xx * pxx + xs * (pxy + pyx) + ss * pyy;
      matrix[at + 1]! += xy * pxy + xs * pxx + ys * pyy + ss * pyx;
      matrix[at + size]! += xy * pyx + xs * pxx + ys * pyy + ss * pxy;
      matrix[at + size + 1]! += yy * pyy + ys * (pxy + pyx) + ss * pxx;
    }
  }
}

/** Adds the stiffness of w, bx, by, the first of which is a node's degree of freedom `first`. */
function addShear(matrix: Float64Array, part: Float64Array, perNode: number, first: number): void {
  const size = perNode * nodesPerElement;
  const own = bendingPerNode * nodesPerElement;
  for (let i = 0; i < own; i++) {
    const row = (perNode * Math.floor(i / bendingPerNode) + first + (i % bendingPerNode)) * size;
    for (let b = 0; b < nodesPerElement; b++) {
      const at = row + perNode * b + first;
      const from = i * own + bendingPerNode * b;
      for (let k = 0; k < bendingPerNode; k++) matrix[at + k]! += part[from + k]!;
    }
  }
}

/** A matrix of an element from the places of its nodes and its make-up. */
export type ElementMatrix = (x: Float64Array, y: Float64Array, sheet: Sheet) => Float64Array;

/** Places nearer to each other than this are the same, m. */
const samePlace = 1e-12;

/**
 * Elements of the same shape and make-up share one matrix, which nobody may change: on a grid few differ.
 *
 * @param matrix works one out
 */
export function sharedMatrices(matrix: ElementMatrix): ElementMatrix {
  const known = new Map<string, Map<string, Float64Array>>();
  const makeUps = new Map<Sheet, string>();
  return (x, y, sheet) => {
    const makeUp = makeUps.get(sheet) ?? JSON.stringify(sheet);
    makeUps.set(sheet, makeUp);
    const own = known.get(makeUp) ?? new Map<string, Float64Array>();
    known.set(makeUp, own);
    const shape = shapeOf(x, y);
    const shared = own.get(shape) ?? matrix(x, y, sheet);
    own.set(shape, shared);
    return shared;
  };
}

/** Where the corners and middles lie from the first corner. */
function shapeOf(x: Float64Array, y: Float64Array): string {
  let key = "";
  for (let node = 1; node < x.length; node++)
    key += `${Math.round((x[node]! - x[0]!) / samePlace)} ${Math.round((y[node]! - y[0]!) / samePlace)} `;
  return key;
}
