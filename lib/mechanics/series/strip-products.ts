import type { WeightedPoint } from "./legendre.js";
import type { StripFunctions } from "./strip-functions.js";

/** Integrals of products of a strip's shapes f_i f_j over part of it; row i, column j, in one list. */
export interface StripProducts {
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
