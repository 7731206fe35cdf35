/** What openings leave of a plate, and what is wrong with them. */
import { gap, type Rectangle, type RoundedRectangle, roundedArea, shareArea } from "./rounded-rectangle.js";

/** The sides of a plate, m. */
export interface PlateSides {
  /** Along x. */
  readonly length: number;
  /** Along y. */
  readonly width: number;
}

/** Rounding allowed where an opening ends flush with an edge, as a share of the side. */
const flush = 1e-9;

/** The share of the plate's area that is cut away. */
export function cutAwayShare({ length, width }: PlateSides, openings: readonly RoundedRectangle[]): number {
  return openings.reduce((sum, opening) => sum + roundedArea(opening), 0) / (length * width);
}

/**
 * The narrowest bar left between two openings, or between an opening and an edge, as a share of the side
 * across it; 1 without openings. A notch open to the edge leaves no bar there.
 */
export function narrowestBar(sides: PlateSides, openings: readonly RoundedRectangle[]): number {
  const bars = openings.flatMap((one, i) => [
    ...rims(sides, one),
    ...openings.slice(i + 1).flatMap((other) => between(sides, one, other)),
  ]);
  return Math.min(1, ...bars.filter((bar) => bar > flush));
}

function rims({ length, width }: PlateSides, { left, bottom, width: w, height: h }: Rectangle): number[] {
  return [left / length, (length - left - w) / length, bottom / width, (width - bottom - h) / width];
}

/** The bar between two openings that face each other. */
function between({ length, width }: PlateSides, one: Rectangle, other: Rectangle): number[] {
  const [across, up] = [gap(one, other, "x"), gap(one, other, "y")];
  return [...(up < 0 ? [across / length] : []), ...(across < 0 ? [up / width] : [])];
}

/** Whether a rectangle is all on the plate. */
export function isOnPlate({ length, width }: PlateSides, rectangle: Rectangle): boolean {
  const inside = (from: number, size: number, side: number): boolean =>
    from >= -flush * side && from + size <= (1 + flush) * side;
  return inside(rectangle.left, rectangle.width, length) && inside(rectangle.bottom, rectangle.height, width);
}

/**
 * What is wrong with the openings of a plate.
 *
 * @returns reasons, each with the number of the opening counted from 1
 */
export function openingFaults(sides: PlateSides, openings: readonly RoundedRectangle[]): string[] {
  return openings.flatMap((opening, i) => {
    const overlapping = openings.flatMap((other, k) =>
      k > i && shareArea(opening, other) ? [`openings ${i + 1} and ${k + 1} overlap`] : [],
    );
    return [...oneFault(sides, opening, `opening ${i + 1}`), ...overlapping];
  });
}

function oneFault(sides: PlateSides, opening: RoundedRectangle, name: string): string[] {
  const { width, height, cornerRadius } = opening;
  if (!(width > 0 && height > 0)) return [`${name} must have a positive width and height`];
  const roundest = (Math.min(width, height) / 2) * (1 + flush);
  if (!(cornerRadius >= 0 && cornerRadius <= roundest))
    return [`${name} must have a corner radius of at most half its smaller side`];
  if (!isOnPlate(sides, opening)) return [`${name} must lie on the plate`];
  const through = width >= (1 - flush) * sides.length || height >= (1 - flush) * sides.width;
  return through ? [`${name} cuts the plate in two`] : [];
}
