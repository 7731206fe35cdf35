import { Angle, type Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import type { StandingCase } from "./tip-ways.js";

/** Lean in one direction. */
export interface ToppleDirection {
  /** From the right, anticlockwise seen from above: 90 degrees is the back. */
  readonly heading: Angle;
  /** Lean at which it tips that way. */
  readonly lean: Angle;
}

/**
 * The tip angle in every direction: how far the centre of gravity is from the edge of the base that way.
 *
 * @param steps directions, evenly round
 * @throws Refusal where the centre of gravity does not stand over the base
 */
export function toppleDirections(standing: StandingCase, steps: number): readonly ToppleDirection[] {
  const { baseWidth, baseDepth, fromLeft, fromFront, height } = standing;
  if (!(fromLeft > 0 && fromFront > 0 && fromLeft < baseWidth && fromFront < baseDepth))
    throw new Refusal("tip directions: the centre of gravity does not stand over the base");
  return Array.from({ length: steps }, (_, i) => {
    const heading = Angle.si((2 * Math.PI * i) / steps);
    const across = roomTo(Math.cos(heading), fromLeft, baseWidth);
    const deep = roomTo(Math.sin(heading), fromFront, baseDepth);
    return { heading, lean: Angle.si(Math.atan2(Math.min(across, deep), height)) };
  });
}

/** Distance along a direction until one pair of edges is reached; endless along them. */
function roomTo(part: number, fromLow: Length, size: Length): number {
  if (Math.abs(part) < 1e-12) return Number.POSITIVE_INFINITY;
  return (part > 0 ? size - fromLow : fromLow) / Math.abs(part);
}
