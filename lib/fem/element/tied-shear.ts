/**
 * Shear through the thickness, interpolated from six places for each direction (MITC9: K. J. Bathe, F. Brezzi,
 * M. Fortin, Mixed-interpolated elements for Reissner-Mindlin plates, Int. J. Numer. Methods Eng. 28, 1989), so that
 * thin sheets do not lock.
 */
import { lineThree, nearHalf } from "./gauss.js";
import { places } from "./integrals.js";
import { nodesPerElement, type Shapes, type Stretch, shapesAt, stretchAt } from "./shape.js";
import type { Sheet } from "./sheet.js";

/** Columns of the shear strains: w, bx, by of each node. */
export const shearColumns: number = 3 * nodesPerElement;

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
 * Integral of the shear energy: 27 rows, w, bx, by a node.
 *
 * @param at stretches of the element at the nine places
 */
export function shearStiffness(
  x: Float64Array,
  y: Float64Array,
  at: readonly Stretch[],
  [xx, xy, yy]: Sheet["shear"],
): Float64Array {
  const size = shearColumns;
  const result = new Float64Array(size * size);
  const rowsXi = tiedXi.map((shapes) => {
    const { xXi, yXi } = stretchAt(shapes, x, y);
    return shearRow(shapes.value, shapes.alongXi, xXi, yXi);
  });
  const rowsEta = tiedEta.map((shapes) => {
    const { xEta, yEta } = stretchAt(shapes, x, y);
    return shearRow(shapes.value, shapes.alongEta, xEta, yEta);
  });
  const alongXi = new Float64Array(size);
  const alongEta = new Float64Array(size);
  places.forEach(({ weight }, place) => {
    interpolate(rowsXi, weightsXi[place]!, alongXi);
    interpolate(rowsEta, weightsEta[place]!, alongEta);
    const { xXi, yXi, xEta, yEta, area } = at[place]!;
    const share = weight / area;
    // Stiffness against shear along xi and eta of the square.
    const ii = share * (xx * yEta * yEta - 2 * xy * yEta * xEta + yy * xEta * xEta);
    const ij = share * (-xx * yEta * yXi + xy * (yEta * xXi + yXi * xEta) - yy * xEta * xXi);
    const jj = share * (xx * yXi * yXi - 2 * xy * yXi * xXi + yy * xXi * xXi);
    for (let row = 0; row < size; row++) {
      const force = ii * alongXi[row]! + ij * alongEta[row]!;
      const other = ij * alongXi[row]! + jj * alongEta[row]!;
      const start = row * size;
      for (let column = 0; column <= row; column++)
        result[start + column]! += force * alongXi[column]! + other * alongEta[column]!;
    }
  });
  for (let row = 0; row < size; row++)
    for (let column = 0; column < row; column++) result[column * size + row] = result[row * size + column]!;
  return result;
}

/** Slope of w along a line of the square, plus the turn of the fibre along it. */
function shearRow(value: Shapes["value"], slope: Float64Array, lineX: number, lineY: number): Float64Array {
  const row = new Float64Array(shearColumns);
  for (let node = 0; node < nodesPerElement; node++) {
    row[3 * node] = slope[node]!;
    row[3 * node + 1] = value[node]! * lineX;
    row[3 * node + 2] = value[node]! * lineY;
  }
  return row;
}

function interpolate(rows: readonly Float64Array[], weights: readonly number[], result: Float64Array): void {
  result.fill(0);
  for (let k = 0; k < rows.length; k++) {
    const row = rows[k]!;
    const weight = weights[k]!;
    for (let i = 0; i < shearColumns; i++) result[i]! += weight * row[i]!;
  }
}
