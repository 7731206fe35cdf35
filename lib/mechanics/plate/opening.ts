/** Openings in a panel. */
import { type Kind, Length, recordOf } from "../../quantity/index.js";
import type { RoundedRectangle } from "../series/index.js";

/** A window, port, slot or notch; a round one has a corner radius of half its width and height. */
export interface Opening extends RoundedRectangle {
  /** Distance of its left side from the panel's left edge. */
  readonly left: Length;
  /** Distance of its lower side from the panel's lower edge. */
  readonly bottom: Length;
  /** Along x. */
  readonly width: Length;
  /** Along y. */
  readonly height: Length;
  /** Zero for sharp corners. */
  readonly cornerRadius: Length;
}

/** An opening as text. */
export const Opening: Kind<Opening> = recordOf<Opening>("opening", {
  left: Length,
  bottom: Length,
  width: Length,
  height: Length,
  cornerRadius: Length,
});

/**
 * A round opening.
 *
 * @param centreX distance of its centre from the panel's left edge
 * @param centreY distance of its centre from the panel's lower edge
 * @param diameter across
 */
export function roundOpening(centreX: Length, centreY: Length, diameter: Length): Opening {
  const radius = diameter / 2;
  return {
    left: Length.si(centreX - radius),
    bottom: Length.si(centreY - radius),
    width: diameter,
    height: diameter,
    cornerRadius: Length.si(radius),
  };
}
