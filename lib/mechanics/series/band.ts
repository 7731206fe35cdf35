/** Parts of a plate over which an integral is a product of an integral along x and one along y. */
import { gaussPoints, type WeightedPoint } from "./legendre.js";
import type { Rectangle, RoundedRectangle } from "./rounded-rectangle.js";
import type { StripFunctions } from "./strip-functions.js";

/** Places along x and along y with their weights, and how much of this band counts: 1 adds, -1 takes away. */
export interface Band {
  readonly x: readonly WeightedPoint[];
  readonly y: readonly WeightedPoint[];
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
export function rectangleBand({ along, across }: PlateStrips, rectangle: Rectangle, factor: number): Band {
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
export function openingBands(strips: PlateStrips, opening: RoundedRectangle, factor: number): Band[] {
  const { left, bottom, width, height, cornerRadius: r } = opening;
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
function rimPoints({ along, across }: PlateStrips, opening: RoundedRectangle): WeightedPoint[] {
  const { left, bottom, width, height, cornerRadius: r } = opening;
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
