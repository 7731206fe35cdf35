/** Area, first and second moments of plane figures, added up and moved to their centroid. */
import type { Point2 } from "../shape/index.js";

/** Figures as section properties have them, without their labels. */
export interface CentroidMoments {
  /** m2 */
  readonly area: number;
  /** Centre, to the right, m. */
  readonly centroidX: number;
  /** Centre, up, m. */
  readonly centroidY: number;
  /** Second moment about the centre's line along x, m4. */
  readonly secondX: number;
  /** Second moment about the centre's line along y, m4. */
  readonly secondY: number;
  /** Product moment about the centre, m4. */
  readonly product: number;
  /** Largest second moment about a line through the centre, m4. */
  readonly largest: number;
  /** Smallest second moment about a line through the centre, m4. */
  readonly smallest: number;
}

/** Integrals of 1, x, y, y^2, x^2 and x y. */
export interface AreaMoments {
  /** m2 */
  readonly area: number;
  /** Integral of x, m3. */
  readonly x: number;
  /** Integral of y, m3. */
  readonly y: number;
  /** Integral of y squared, m4. */
  readonly yy: number;
  /** Integral of x squared, m4. */
  readonly xx: number;
  /** Integral of x times y, m4. */
  readonly xy: number;
}

/** Adds areas, each with a sign. */
export function addMoments(parts: readonly AreaMoments[]): AreaMoments {
  const sum = (pick: (part: AreaMoments) => number): number =>
    parts.reduce((total, part) => total + pick(part), 0);
  return {
    area: sum(({ area }) => area),
    x: sum(({ x }) => x),
    y: sum(({ y }) => y),
    yy: sum(({ yy }) => yy),
    xx: sum(({ xx }) => xx),
    xy: sum(({ xy }) => xy),
  };
}

/** Moves the integrals to the centroid. */
export function aboutCentroid({ area, x, y, yy, xx, xy }: AreaMoments): CentroidMoments {
  const [secondX, secondY, product] = [yy - y ** 2 / area, xx - x ** 2 / area, xy - (x * y) / area];
  const middle = (secondX + secondY) / 2;
  const reach = Math.hypot((secondX - secondY) / 2, product);
  const own = { secondX, secondY, product, largest: middle + reach, smallest: middle - reach };
  return { area, centroidX: x / area, centroidY: y / area, ...own };
}

/** A figure counted so many times; minus once for a hollow. */
export function scaledMoments({ area, x, y, yy, xx, xy }: AreaMoments, by: number): AreaMoments {
  return { area: by * area, x: by * x, y: by * y, yy: by * yy, xx: by * xx, xy: by * xy };
}

/** Of the inside of a closed line of straight sides, by Green's theorem. */
export function outlineMoments(points: readonly Point2[]): AreaMoments {
  const [first] = points;
  if (!first) return scaledMoments({ area: 0, x: 0, y: 0, yy: 0, xx: 0, xy: 0 }, 1);
  return addMoments(
    points.map((a, i) => {
      const b = points[(i + 1) % points.length] ?? first;
      const cross = a.x * b.y - b.x * a.y;
      return {
        area: cross / 2,
        x: ((a.x + b.x) * cross) / 6,
        y: ((a.y + b.y) * cross) / 6,
        yy: ((a.y ** 2 + a.y * b.y + b.y ** 2) * cross) / 12,
        xx: ((a.x ** 2 + a.x * b.x + b.x ** 2) * cross) / 12,
        xy: ((a.x * b.y + 2 * a.x * a.y + 2 * b.x * b.y + b.x * a.y) * cross) / 24,
      };
    }),
  );
}
