/** Parts of a plate over which an integral is a product of an integral along x and one along y. */
import { gaussPoints, type WeightedPoint } from "./legendre.js";
import type { Rectangle, RoundedRectangle } from "./rounded-rectangle.js";

/** Places along x and along y with their weights, and how much of this band counts: 1 adds, -1 takes away. */
export interface Band {
  readonly x: readonly WeightedPoint[];
  readonly y: readonly WeightedPoint[];
  readonly factor: number;
}

/** Gauss points along a rounded corner for each degree of the shapes; at 0.6 large circles lose digits. */
const cornerPointsPerDegree = 0.8;

/**
 * A rectangle as one band, exact for products of two shapes.
 *
 * @param rectangle m
 * @param degree highest degree of a shape
 * @param factor how much it counts
 */
export function rectangleBand(rectangle: Rectangle, degree: number, factor: number): Band {
  const { left, bottom, width, height } = rectangle;
  return {
    x: gaussPoints(degree + 1, left, left + width),
    y: gaussPoints(degree + 1, bottom, bottom + height),
    factor,
  };
}

/**
 * An opening as bands: its straight part in one, and one pair of upright strips for each place along
 * the rounded corners, x = r (1 - cos a), so that the round rim is integrated smoothly.
 *
 * @param opening m
 * @param degree highest degree of a shape
 * @param factor how much it counts
 */
export function openingBands(opening: RoundedRectangle, degree: number, factor: number): Band[] {
  const { left, bottom, width, height, cornerRadius: r } = opening;
  const middle = { left: left + r, bottom, width: width - 2 * r, height };
  const straight = middle.width > 0 ? [rectangleBand(middle, degree, factor)] : [];
  if (r === 0) return straight;
  const points = gaussPoints(Math.ceil(cornerPointsPerDegree * degree), 0, Math.PI / 2);
  const rounded = points.map(({ at: angle, weight }) => {
    const inset = r * (1 - Math.cos(angle));
    const drop = r * (1 - Math.sin(angle));
    return {
      x: [left + inset, left + width - inset].map((at) => ({ at, weight: weight * r * Math.sin(angle) })),
      y: gaussPoints(degree + 1, bottom + drop, bottom + height - drop),
      factor,
    };
  });
  return [...straight, ...rounded];
}
