/**
 * The element: a flat nine-node shell of Reissner and Mindlin. Shear through the thickness is interpolated from
 * six places for each direction (MITC9: K. J. Bathe, F. Brezzi, M. Fortin, Mixed-interpolated elements for
 * Reissner-Mindlin plates, Int. J. Numer. Methods Eng. 28, 1989; M. L. Bucalem, K. J. Bathe, Higher-order MITC
 * general shell elements, the same 36, 1993), so that thin sheets do not lock. Membrane and bending take the
 * nine-node shape functions as they are.
 *
 * Freedoms of a node on its own plane: u, v, w, and bx, by, the stretch along x and y per height above the plane.
 */
import { lineThree, nearHalf, squareNine } from "./gauss.js";
import {
  nodesPerElement,
  type Shapes,
  type Slopes,
  type Stretch,
  shapesAt,
  slopesOf,
  stretchAt,
} from "./shape.js";
import type { Sheet } from "./sheet.js";

/** Columns of the shear strains: w, bx, by of each node. */
export const shearColumns: number = 3 * nodesPerElement;

/** The nine integration places with their shape functions, the same for every element. */
const places = squareNine.map(({ xi, eta, weight }) => ({ shapes: shapesAt(xi, eta), weight, xi, eta }));

/** Where shear along xi is taken from, and where along eta: two places across, three along. */
const tied = [-nearHalf, nearHalf].flatMap((near) => lineThree.map(({ at }) => ({ near, at })));
const tiedXi = tied.map(({ near, at }) => shapesAt(near, at));
const tiedEta = tied.map(({ near, at }) => shapesAt(at, near));

/** Integral of B^T Q B for a strain of two displacements (stretch, bending or both): 18 rows, two a node. */
export function planeStiffness(x: Float64Array, y: Float64Array, matrix: Sheet["bending"]): Float64Array {
  const size = 2 * nodesPerElement;
  const [[xx, xy, xs], [, yy, ys], [, , ss]] = matrix;
  const result = new Float64Array(size * size);
  for (const { shapes, weight } of places) {
    const stretch = stretchAt(shapes, x, y);
    const { alongX, alongY } = slopesOf(shapes, stretch);
    const area = stretch.area * weight;
    for (let a = 0; a < nodesPerElement; a++) {
      const [ax, ay] = [alongX[a]! * area, alongY[a]! * area];
      // Rows of Q B for node a, by symmetry of Q.
      const [px, py, ps] = [xx * ax + xs * ay, xy * ax + ys * ay, xs * ax + ss * ay];
      const [qx, qy, qs] = [xy * ay + xs * ax, yy * ay + ys * ax, ys * ay + ss * ax];
      const row = 2 * a * size;
      for (let b = 0; b < nodesPerElement; b++) {
        const [bx, by] = [alongX[b]!, alongY[b]!];
        const at = row + 2 * b;
        result[at]! += px * bx + ps * by;
        result[at + 1]! += py * by + ps * bx;
        result[at + size]! += qx * bx + qs * by;
        result[at + size + 1]! += qy * by + qs * bx;
      }
    }
  }
  return result;
}

/** Integral of the shear energy: 27 rows, w, bx, by a node. */
export function shearStiffness(x: Float64Array, y: Float64Array, shear: Sheet["shear"]): Float64Array {
  const size = shearColumns;
  const [xx, xy, yy] = shear;
  const result = new Float64Array(size * size);
  const ties = shearTies(x, y);
  for (const { xi, eta, shapes, weight } of places) {
    const stretch = stretchAt(shapes, x, y);
    const area = stretch.area * weight;
    const [gx, gy] = shearStrains(ties, stretch, xi, eta);
    for (let i = 0; i < size; i++) {
      const fx = area * (xx * gx[i]! + xy * gy[i]!);
      const fy = area * (xy * gx[i]! + yy * gy[i]!);
      for (let j = 0; j < size; j++) result[i * size + j]! += fx * gx[j]! + fy * gy[j]!;
    }
  }
  return result;
}

/** Shear along xi and eta at the places it is interpolated from: six rows of 27 each. */
export interface ShearTies {
  readonly xi: readonly Float64Array[];
  readonly eta: readonly Float64Array[];
}

/** The shear of an element at its tied places. */
export function shearTies(x: Float64Array, y: Float64Array): ShearTies {
  return {
    xi: tiedXi.map((shapes) => {
      const { xXi, yXi } = stretchAt(shapes, x, y);
      return shearRow(shapes, shapes.alongXi, xXi, yXi);
    }),
    eta: tiedEta.map((shapes) => {
      const { xEta, yEta } = stretchAt(shapes, x, y);
      return shearRow(shapes, shapes.alongEta, xEta, yEta);
    }),
  };
}

/** Slope of w along a line of the square, plus the turn of the fibre along it. */
function shearRow({ value }: Shapes, slope: Float64Array, lineX: number, lineY: number): Float64Array {
  const row = new Float64Array(shearColumns);
  for (let node = 0; node < nodesPerElement; node++) {
    row[3 * node] = slope[node]!;
    row[3 * node + 1] = value[node]! * lineX;
    row[3 * node + 2] = value[node]! * lineY;
  }
  return row;
}

/** Shear strains on x and y of the panel at a place of the square. */
export function shearStrains(
  ties: ShearTies,
  stretch: Stretch,
  xi: number,
  eta: number,
): readonly [Float64Array, Float64Array] {
  const alongXi = interpolated(ties.xi, xi, eta);
  const alongEta = interpolated(ties.eta, eta, xi);
  const { xXi, yXi, xEta, yEta, area } = stretch;
  return [
    alongXi.map((value, i) => (yEta * value - yXi * alongEta[i]!) / area),
    alongXi.map((value, i) => (xXi * alongEta[i]! - xEta * value) / area),
  ];
}

/** A straight line between the two near places, a parabola through the three along. */
function interpolated(rows: readonly Float64Array[], near: number, along: number): Float64Array {
  const result = new Float64Array(shearColumns);
  rows.forEach((row, k) => {
    const { near: own, at } = tied[k]!;
    const weight = ((1 + (near * Math.sign(own)) / nearHalf) / 2) * parabola(at, along);
    for (let i = 0; i < shearColumns; i++) result[i]! += weight * row[i]!;
  });
  return result;
}

function parabola(own: number, at: number): number {
  const far = lineThree[2]!.at;
  const scaled = at / far;
  if (own === 0) return 1 - scaled * scaled;
  return (scaled * (scaled + Math.sign(own))) / 2;
}

/** Integral of a product of shape functions with a weight: 9 rows. */
export function productMatrix(x: Float64Array, y: Float64Array): Float64Array {
  return integrated(x, y, ({ value }, _, a, b) => value[a]! * value[b]!);
}

/** Integral of w' N w': what in-plane forces Nx, Ny, Nxy (N/m, at the nine places) add to the stiffness of w. */
export function slopeMatrix(
  x: Float64Array,
  y: Float64Array,
  forces: readonly (readonly [number, number, number])[],
): Float64Array {
  return integrated(x, y, (_, { alongX, alongY }, a, b, place) => {
    const [nx, ny, nxy] = forces[place]!;
    const [ax, ay, bx, by] = [alongX[a]!, alongY[a]!, alongX[b]!, alongY[b]!];
    return nx * ax * bx + ny * ay * by + nxy * (ax * by + ay * bx);
  });
}

function integrated(
  x: Float64Array,
  y: Float64Array,
  value: (shapes: Shapes, slopes: Slopes, a: number, b: number, place: number) => number,
): Float64Array {
  const result = new Float64Array(nodesPerElement ** 2);
  places.forEach(({ shapes, weight }, place) => {
    const stretch = stretchAt(shapes, x, y);
    const slopes = slopesOf(shapes, stretch);
    for (let a = 0; a < nodesPerElement; a++) {
      for (let b = 0; b < nodesPerElement; b++)
        result[a * nodesPerElement + b]! += value(shapes, slopes, a, b, place) * stretch.area * weight;
    }
  });
  return result;
}

/** Integral of each shape function: how a pressure of 1 is shared among the nodes. */
export function nodeAreas(x: Float64Array, y: Float64Array): Float64Array {
  const result = new Float64Array(nodesPerElement);
  for (const { shapes, weight } of places) {
    const { area } = stretchAt(shapes, x, y);
    for (let node = 0; node < nodesPerElement; node++) result[node]! += shapes.value[node]! * area * weight;
  }
  return result;
}
