/** Strain energy of a plate as a matrix over the terms of its series. */
import type { OrthotropicStiffness } from "../../material/index.js";
import type { StripProducts } from "./strip-products.js";

/** One term of the series. */
export interface SeriesTerm {
  /** Index of the shape along x. */
  readonly i: number;
  /** Index of the shape along y. */
  readonly j: number;
  /** m */
  readonly factor: number;
}

/** Integrals over one band of a plate. */
export interface BandProducts {
  readonly x: StripProducts;
  readonly y: StripProducts;
  readonly factor: number;
}

/**
 * Twice the strain energy that each pair of terms shares, lower half, row by row in one list:
 * Dx wxx2 + 2 D1 wxx wyy + Dy wyy2 + 4 Dxy wxy2 over all bands.
 *
 * @param stiffness N m
 * @param terms in rising order of i, then j
 * @param bands integrals over the material
 */
export function stiffnessMatrix(
  stiffness: OrthotropicStiffness,
  terms: readonly SeriesTerm[],
  bands: readonly BandProducts[],
): Float64Array {
  const size = terms.length;
  const matrix = new Float64Array(size * size);
  const parts = bands.flatMap((band) => energyParts(stiffness, band));
  const groups = groupedByShape(terms);
  groups.forEach((rows, i) => {
    groups.slice(0, i + 1).forEach((columns, k) => {
      const { block, count } = energyBlock(parts, i, k);
      for (const row of rows) {
        for (const column of columns) {
          matrix[row.place * size + column.place] = block[row.j * count + column.j] as number;
        }
      }
    });
  });
  return matrix;
}

/** An energy that is a product of one number for the shapes along x and one for those along y. */
interface EnergyPart {
  readonly x: Float64Array;
  readonly countX: number;
  readonly y: Float64Array;
  readonly countY: number;
}

function energyParts(
  { alongX, alongY, coupling, twist }: OrthotropicStiffness,
  { x, y, factor }: BandProducts,
): EnergyPart[] {
  const part = (xs: Float64Array, ys: Float64Array, stiffness: number): EnergyPart => ({
    x: xs,
    countX: x.count,
    y: ys.map((one) => one * stiffness * factor),
    countY: y.count,
  });
  return [
    part(x.curvatures, y.values, alongX),
    part(x.values, y.curvatures, alongY),
    part(x.mixed, transposed(y.mixed, y.count), coupling),
    part(transposed(x.mixed, x.count), y.mixed, coupling),
    part(x.slopes, y.slopes, 4 * twist),
  ];
}

function transposed(matrix: Float64Array, count: number): Float64Array {
  return matrix.map((_, place) => matrix[(place % count) * count + Math.floor(place / count)] as number);
}

interface PlacedTerm {
  readonly j: number;
  /** Row of the matrix. */
  readonly place: number;
}

/** The terms of each shape along x. */
function groupedByShape(terms: readonly SeriesTerm[]): PlacedTerm[][] {
  const groups: PlacedTerm[][] = [];
  terms.forEach(({ i, j }, place) => {
    groups[i] ??= [];
    groups[i].push({ j, place });
  });
  return groups;
}

/** Energies of shapes i and k along x with every pair of shapes along y. */
function energyBlock(
  parts: readonly EnergyPart[],
  i: number,
  k: number,
): { readonly block: Float64Array; readonly count: number } {
  const count = parts[0]?.countY ?? 0;
  const block = new Float64Array(count * count);
  for (const { x, countX, y } of parts) {
    const weight = x[i * countX + k] as number;
    for (let place = 0; place < block.length; place++) {
      block[place] = (block[place] as number) + weight * (y[place] as number);
    }
  }
  return { block, count };
}
