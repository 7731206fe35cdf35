/** How far off a size, a thickness, a mass or a square corner may be. */
import type { Parts } from "../design/index.js";
import { Length } from "../quantity/index.js";

/** How far off a thing may be. Common practice, no source. */
export const tolerance: {
  /** For the width and height of a sheet piece. */
  readonly sawn: Length;
  /** For the length of a bar. */
  readonly bar: Length;
  /** For the size and place of an opening. */
  readonly opening: Length;
  /** For an opening that a door closes, and for the door: together no more than the gap may be off. */
  readonly doorway: Length;
  /** For the gap round a door. */
  readonly gap: Length;
  /** For the outside of a section. */
  readonly box: Length;
  /** For adhesive, as a share of what is planned. */
  readonly adhesive: number;
  /** For a mass, as a share of what is reckoned. */
  readonly mass: number;
} = {
  sawn: Length.of(1, "mm"),
  bar: Length.of(0.5, "mm"),
  opening: Length.of(1, "mm"),
  doorway: Length.of(0.5, "mm"),
  gap: Length.of(0.5, "mm"),
  box: Length.of(2, "mm"),
  adhesive: 0.15,
  mass: 0.05,
};

/** How far off an opening may be, by its id such as "lower.left.side door": less where a door closes it. */
export function openingTolerance(id: string, { panels }: Pick<Parts, "panels">): Length {
  const isDoorway = panels.some(
    (panel) => panel.role === "leaf" && (panel.id === id || panel.id.startsWith(`${id}.`)),
  );
  return isDoorway ? tolerance.doorway : tolerance.opening;
}

/** EN 315 (from memory): an edge of a plywood sheet strays at most 1 mm from square in 1 m. */
const outOfSquare = 0.001;

/** A tape shows no less than this. */
const leastVisible: Length = Length.of(0.5, "mm");

/** Diagonal of a rectangle. */
export function diagonalOf(width: Length, height: Length): Length {
  return Length.si(Math.hypot(width, height));
}

/**
 * Difference of the diagonals of a rectangle whose corners are out of square by 1 mm in 1 m:
 * d1 - d2 = 2 w h s / d to first order in the slope s, from the law of cosines. Half a millimetre where
 * that is less, since no tape shows less.
 */
export function diagonalDifference(width: Length, height: Length): Length {
  const difference = (2 * width * height * outOfSquare) / diagonalOf(width, height);
  return Length.si(Math.max(difference, leastVisible));
}

/**
 * Thickness tolerance of sanded plywood, EN 315 (from memory): +(0.2 + 0.03 t), -(0.4 + 0.03 t) mm,
 * t in mm.
 */
export function thicknessTolerance(thickness: Length): { readonly over: Length; readonly under: Length } {
  return {
    over: Length.si(0.0002 + 0.03 * thickness),
    under: Length.si(0.0004 + 0.03 * thickness),
  };
}
