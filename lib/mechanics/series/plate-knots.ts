/** Where the bending of a plate may change abruptly: along the sides of its openings, or else of its load. */
import type { PlateSides } from "./opening-layout.js";
import type { Rectangle } from "./rounded-rectangle.js";

/** Knots along both sides, rising, m. */
export interface PlateKnots {
  readonly x: readonly number[];
  readonly y: readonly number[];
}

/** More would make the equations slow to solve. */
const mostKnots = 8;
/** Nearest distance of two knots as a share of the side. */
const nearest = 0.004;

/**
 * Chooses the knots, those of the larger openings first. A load's own are for plates without openings:
 * they settle the moment under it, but take shapes away from where openings need them.
 *
 * @param sides of the plate
 * @param openings rectangles around them
 * @param load what the load covers, when it does not cover all
 */
export function plateKnots(sides: PlateSides, openings: readonly Rectangle[], load?: Rectangle): PlateKnots {
  const bySize = openings.toSorted((one, other) => other.width * other.height - one.width * one.height);
  const ordered = load && openings.length === 0 ? [load] : bySize;
  return {
    x: knotsAlong(
      sides.length,
      ordered.flatMap(({ left, width }) => [left, left + width]),
    ),
    y: knotsAlong(
      sides.width,
      ordered.flatMap(({ bottom, height }) => [bottom, bottom + height]),
    ),
  };
}

/** Openings smaller than this share of the plate's shorter side matter little. */
const smallOpening = 0.1;

/**
 * How many openings of some size found no room for their knots, so that the series bends smoothly across
 * them and comes out too stiff.
 *
 * @param sides of the plate
 * @param openings rectangles around them
 */
export function openingsNotFollowed(sides: PlateSides, openings: readonly Rectangle[]): number {
  const { x, y } = plateKnots(sides, openings);
  const at = (place: number, side: number, knots: readonly number[]): boolean =>
    [0, side, ...knots].some((knot) => Math.abs(place - knot) <= nearest * side);
  return openings.filter(({ left, bottom, width, height }) => {
    const sizeable = Math.max(width, height) > smallOpening * Math.min(sides.length, sides.width);
    const followed =
      [left, left + width].every((place) => at(place, sides.length, x)) &&
      [bottom, bottom + height].every((place) => at(place, sides.width, y));
    return sizeable && !followed;
  }).length;
}

function knotsAlong(side: number, places: readonly number[]): number[] {
  const chosen: number[] = [];
  for (const place of places) {
    const room = [0, side, ...chosen].every((other) => Math.abs(place - other) > nearest * side);
    if (room && chosen.length < mostKnots) chosen.push(place);
  }
  return chosen.toSorted((one, other) => one - other);
}
