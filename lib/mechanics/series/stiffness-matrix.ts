/** Strain energy of a plate as a matrix over the terms of its series. */
import type { OrthotropicStiffness } from "../../material/index.js";
import type { Box2, RoundedBox } from "../../shape/index.js";
import { gaussPoints, type WeightedPoint } from "./legendre.js";
import type { StripFunctions } from "./strip-functions.js";

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
  /** Integrals along x. */
  readonly x: StripProducts;
  /** Integrals along y. */
  readonly y: StripProducts;
  /** How much the band counts: 1 adds, -1 takes away. */
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
  /** Of each pair of shapes along x. */
  readonly x: Float64Array;
  /** How many shapes along x. */
  readonly countX: number;
  /** Of each pair of shapes along y. */
  readonly y: Float64Array;
  /** How many shapes along y. */
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
  /** Number of the shape along y. */
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

/** Integrals of products of a strip's shapes f_i f_j over part of it; row i, column j, in one list. */
export interface StripProducts {
  /** How many shapes. */
  readonly count: number;
  /** f_i f_j */
  readonly values: Float64Array;
  /** f_i' f_j' */
  readonly slopes: Float64Array;
  /** f_i'' f_j'' */
  readonly curvatures: Float64Array;
  /** f_i'' f_j */
  readonly mixed: Float64Array;
  /** f_i */
  readonly single: Float64Array;
}

/**
 * Integrates the products over the part of the strip that the points stand for.
 *
 * @param strip the shapes
 * @param points places along the strip with their weights
 */
export function stripProducts(strip: StripFunctions, points: readonly WeightedPoint[]): StripProducts {
  const { count } = strip;
  const square = (): Float64Array => new Float64Array(count * count);
  const products = {
    count,
    values: square(),
    slopes: square(),
    curvatures: square(),
    mixed: square(),
    single: new Float64Array(count),
  };
  for (const { at, weight } of points) {
    const { value, slope, curvature } = strip.at(at);
    addOuter(products.values, value, value, weight);
    addOuter(products.slopes, slope, slope, weight);
    addOuter(products.curvatures, curvature, curvature, weight);
    addOuter(products.mixed, curvature, value, weight);
    value.forEach((one, i) => {
      products.single[i] = (products.single[i] as number) + weight * one;
    });
  }
  return products;
}

function addOuter(
  sum: Float64Array,
  rows: readonly number[],
  columns: readonly number[],
  weight: number,
): void {
  let place = 0;
  for (const row of rows) {
    for (const column of columns) {
      sum[place] = (sum[place] as number) + weight * row * column;
      place++;
    }
  }
}

/** Places along x and along y with their weights, and how much of this band counts: 1 adds, -1 takes away. */
export interface Band {
  /** Places along x with their weights. */
  readonly x: readonly WeightedPoint[];
  /** Places along y with their weights. */
  readonly y: readonly WeightedPoint[];
  /** How much this band counts: 1 adds, -1 takes away. */
  readonly factor: number;
}

/** The shapes along both sides of a plate. */
export interface PlateStrips {
  /** Along x. */
  readonly along: StripFunctions;
  /** Along y. */
  readonly across: StripFunctions;
}

/** Gauss points along a piece of a round rim for each degree of the shapes. */
const rimPointsPerDegree = 2;

/**
 * A rectangle as one band, exact for products of two shapes.
 *
 * @param strips the shapes
 * @param rectangle m
 * @param factor how much it counts
 */
export function rectangleBand({ along, across }: PlateStrips, rectangle: Box2, factor: number): Band {
  const { left, bottom, width, height } = rectangle;
  return { x: along.points(left, left + width), y: across.points(bottom, bottom + height), factor };
}

/**
 * An opening as bands: its straight part in one, and one pair of upright strips for each place along
 * the rounded corners, x = r (1 - cos a), so that the round rim is integrated smoothly.
 *
 * @param strips the shapes
 * @param opening m
 * @param factor how much it counts
 */
export function openingBands(strips: PlateStrips, opening: RoundedBox, factor: number): Band[] {
  const { left, bottom, width, height, radius: r } = opening;
  const middle = { left: left + r, bottom, width: width - 2 * r, height };
  const straight = middle.width > 0 ? [rectangleBand(strips, middle, factor)] : [];
  if (r === 0) return straight;
  const rounded = rimPoints(strips, opening).map(({ at: angle, weight }) => {
    const inset = r * (1 - Math.cos(angle));
    const drop = r * (1 - Math.sin(angle));
    return {
      x: [left + inset, left + width - inset].map((at) => ({ at, weight: weight * r * Math.sin(angle) })),
      y: strips.across.points(bottom + drop, bottom + height - drop),
      factor,
    };
  });
  return [...straight, ...rounded];
}

/** Angles along a rounded corner, taken piece by piece between the knots that any of the four crosses. */
function rimPoints({ along, across }: PlateStrips, opening: RoundedBox): WeightedPoint[] {
  const { left, bottom, width, height, radius: r } = opening;
  const within = (share: number): number[] => (share > 0 && share < 1 ? [share] : []);
  const insets = (knots: readonly number[], low: number, size: number): number[] =>
    knots.flatMap((knot) => [...within((knot - low) / r), ...within((low + size - knot) / r)]);
  const crossings = [
    ...insets(along.knots, left, width).map((share) => Math.acos(1 - share)),
    ...insets(across.knots, bottom, height).map((share) => Math.asin(1 - share)),
  ];
  const cuts = [0, ...crossings.toSorted((one, other) => one - other), Math.PI / 2];
  const count = rimPointsPerDegree * Math.max(along.degree, across.degree);
  return cuts.slice(1).flatMap((cut, i) => gaussPoints(count, cuts[i] as number, cut));
}
