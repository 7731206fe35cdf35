/** Finds where on a plate something is largest. */
import type { PlateSides } from "./opening-layout.js";
import { isInside, type RoundedRectangle } from "./rounded-rectangle.js";

/** A plate as a search sees it. */
export interface SearchField extends PlateSides {
  /** Where nothing is looked for. */
  readonly openings: readonly RoundedRectangle[];
}

/** x and y, m. */
export type Place = readonly [number, number];

/** Lines of the search grid along each side. */
const gridLines = 33;
/** Halvings of the grid step while closing in on the largest. */
const halvings = 10;

/**
 * The place where a smooth function is largest over the material: first on a grid that includes the rims
 * of the openings, then closing in by ever smaller steps.
 *
 * @param field where to look
 * @param size what is to be largest, at x and y
 */
export function largestPlace(field: SearchField, size: (x: number, y: number) => number): Place {
  const { length, width, openings } = field;
  const xs = lines(
    length,
    openings.flatMap(({ left, width: w }) => [left, left + w / 2, left + w]),
  );
  const ys = lines(
    width,
    openings.flatMap(({ bottom, height: h }) => [bottom, bottom + h / 2, bottom + h]),
  );
  let best = largestOf(
    field,
    size,
    xs.flatMap((x) => ys.map((y): Place => [x, y])),
  );
  for (let cut = 1; cut <= halvings; cut++) {
    const step = 1 / gridLines / 2 ** cut;
    best = largestOf(field, size, around(best, step * length, step * width));
  }
  return best;
}

function lines(length: number, rims: readonly number[]): number[] {
  const even = Array.from({ length: gridLines }, (_, n) => (n * length) / (gridLines - 1));
  return [...even, ...rims];
}

function around([x, y]: Place, dx: number, dy: number): Place[] {
  const steps = [0, -1, 1];
  return steps.flatMap((a) => steps.map((b): Place => [x + a * dx, y + b * dy]));
}

/** The first of the largest; places off the plate or in an opening do not count. */
function largestOf(
  field: SearchField,
  size: (x: number, y: number) => number,
  places: readonly Place[],
): Place {
  const rated = places
    .filter((place) => inMaterial(field, place))
    .map((place) => ({ place, size: size(...place) }));
  return rated.reduce((best, one) => (one.size > best.size ? one : best)).place;
}

/** Whether a place is on the plate and not in an opening; rims count. */
export function inMaterial({ length, width, openings }: SearchField, [x, y]: Place): boolean {
  const onPlate = x >= 0 && x <= length && y >= 0 && y <= width;
  return onPlate && !openings.some((opening) => isInside(opening, x, y));
}
