/** An element's whole stiffness and mass, in its own freedoms u, v, w, bx, by a node. */
import { planeStiffness, productMatrix, shearStiffness } from "./plate-element.js";
import { nodesPerElement } from "./shape.js";
import { isCoupled, type Sheet } from "./sheet.js";

/** Freedoms of a node on the plane of its element. */
export const freedomsPerNode = 5;
/** Rows of an element's matrix. */
export const elementRows: number = freedomsPerNode * nodesPerElement;

/** Places of u, v; of bx, by; and of w, bx, by in the element's rows. */
const inPlane = rowsOf([0, 1]);
const turning = rowsOf([3, 4]);
const shearing = rowsOf([2, 3, 4]);

function rowsOf(kinds: readonly number[]): Int32Array {
  return Int32Array.from(
    Array.from({ length: nodesPerElement }, (_, node) =>
      kinds.map((kind) => freedomsPerNode * node + kind),
    ).flat(),
  );
}

/**
 * Stiffness of an element.
 *
 * @param x of its nine nodes, m
 * @param y the same
 * @param sheet what it is made of
 */
export function elementStiffness(x: Float64Array, y: Float64Array, sheet: Sheet): Float64Array {
  const matrix = new Float64Array(elementRows ** 2);
  add(matrix, planeStiffness(x, y, sheet.membrane), inPlane, inPlane);
  add(matrix, planeStiffness(x, y, sheet.bending), turning, turning);
  add(matrix, shearStiffness(x, y, sheet.shear), shearing, shearing);
  if (isCoupled(sheet)) {
    const both = planeStiffness(x, y, sheet.coupling);
    add(matrix, both, inPlane, turning);
    add(matrix, both, turning, inPlane);
  }
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
        matrix[(freedomsPerNode * a + from) * elementRows + freedomsPerNode * b + to]! +=
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

function add(matrix: Float64Array, part: Float64Array, rows: Int32Array, columns: Int32Array): void {
  for (let i = 0; i < rows.length; i++) {
    for (let j = 0; j < columns.length; j++)
      matrix[rows[i]! * elementRows + columns[j]!]! += part[i * columns.length + j]!;
  }
}
