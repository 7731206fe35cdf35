/**
 * Shear through the thickness, interpolated from six places for each direction (MITC9: K. J. Bathe, F. Brezzi,
 * M. Fortin, Mixed-interpolated elements for Reissner-Mindlin plates, Int. J. Numer. Methods Eng. 28, 1989), so that
 * thin sheets do not lock.
 */

import { places } from "./integrals.js";
import {
  lineThree,
  nearHalf,
  nodesPerElement,
  type Shapes,
  type Stretch,
  shapesAt,
  stretchAt,
} from "./shape.js";
import type { Sheet } from "./sheet.js";

/** Columns of the shear strains: w, bx, by of each node. */
const shearColumns: number = 3 * nodesPerElement;

/** Where shear along xi is taken from, and where along eta: two places across, three along. */
const tied = [-nearHalf, nearHalf].flatMap((near) => lineThree.map(({ at }) => ({ near, at })));
const tiedXi = tied.map(({ near, at }) => shapesAt(near, at));
const tiedEta = tied.map(({ near, at }) => shapesAt(at, near));

/** How much each tied place counts at the nine places of integration. */
const weightsXi = places.map(({ xi, eta }) => tied.map((own) => weightOf(own, xi, eta)));
const weightsEta = places.map(({ xi, eta }) => tied.map((own) => weightOf(own, eta, xi)));

/** A straight line between the two near places, a parabola through the three along. */
function weightOf(own: { readonly near: number; readonly at: number }, near: number, along: number): number {
  return ((1 + (near * Math.sign(own.near)) / nearHalf) / 2) * parabola(own.at, along);
}

function parabola(own: number, at: number): number {
  const scaled = at / lineThree[2]!.at;
  if (own === 0) return 1 - scaled * scaled;
  return (scaled * (scaled + Math.sign(own))) / 2;
}

/**
 * Room that every element uses anew: strains along xi and eta at the tied places, and at one place of integration.
 */
const scratch = {
  tiedXi: tied.map(() => new Float64Array(shearColumns)),
  tiedEta: tied.map(() => new Float64Array(shearColumns)),
  xi: new Float64Array(shearColumns),
  eta: new Float64Array(shearColumns),
};

/**
 * Integral of the shear energy: 27 rows, w, bx, by a node.
 *
 * @param at stretches of the element at the nine places
 */
export function shearStiffness(
  x: Float64Array,
  y: Float64Array,
  at: readonly Stretch[],
  shear: Sheet["shear"],
): Float64Array {
  const result = new Float64Array(shearColumns * shearColumns);
  for (let k = 0; k < tied.length; k++) {
    const { xXi, yXi } = stretchAt(tiedXi[k]!, x, y);
    shearRow(tiedXi[k]!.value, tiedXi[k]!.alongXi, xXi, yXi, scratch.tiedXi[k]!);
    const { xEta, yEta } = stretchAt(tiedEta[k]!, x, y);
    shearRow(tiedEta[k]!.value, tiedEta[k]!.alongEta, xEta, yEta, scratch.tiedEta[k]!);
  }
  for (let place = 0; place < places.length; place++) {
    interpolate(scratch.tiedXi, weightsXi[place]!, scratch.xi);
    interpolate(scratch.tiedEta, weightsEta[place]!, scratch.eta);
    addEnergy(result, at[place]!, places[place]!.weight, shear);
  }
  for (let row = 0; row < shearColumns; row++) {
    for (let column = 0; column < row; column++)
      result[column * shearColumns + row] = result[row * shearColumns + column]!;
  }
  return result;
}

/** Adds the lower half of what one place of integration gives. */
function addEnergy(
  result: Float64Array,
  { xXi, yXi, xEta, yEta, area }: Stretch,
  weight: number,
  [xx, xy, yy]: Sheet["shear"],
): void {
  const { xi, eta } = scratch;
  const share = weight / area;
  // Stiffness against shear along xi and eta of the square.
  const ii = share * (xx * yEta * yEta - 2 * xy * yEta * xEta + yy * xEta * xEta);
  const ij = share * (-xx * yEta * yXi + xy * (yEta * xXi + yXi * xEta) - yy * xEta * xXi);
  const jj = share * (xx * yXi * yXi - 2 * xy * yXi * xXi + yy * xXi * xXi);
  for (let row = 0; row < shearColumns; row++) {
    const force = ii * xi[row]! + ij * eta[row]!;
    const other = ij * xi[row]! + jj * eta[row]!;
    const start = row * shearColumns;
    for (let column = 0; column <= row; column++)
      result[start + column]! += force * xi[column]! + other * eta[column]!;
  }
}

/** Slope of w along a line of the square, plus the turn of the fibre along it. */
function shearRow(
  value: Shapes["value"],
  slope: Float64Array,
  lineX: number,
  lineY: number,
  row: Float64Array,
): void {
  for (let node = 0; node < nodesPerElement; node++) {
    row[3 * node] = slope[node]!;
    row[3 * node + 1] = value[node]! * lineX;
    row[3 * node + 2] = value[node]! * lineY;
  }
}

function interpolate(rows: readonly Float64Array[], weights: readonly number[], result: Float64Array): void {
  result.fill(0);
  for (let k = 0; k < rows.length; k++) {
    const row = rows[k]!;
    const weight = weights[k]!;
    for (let i = 0; i < shearColumns; i++) result[i]! += weight * row[i]!;
  }
}
