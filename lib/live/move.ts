/** A thing moved by hand on a face, as the change that typing its new place would make. */
import type { MovableThing } from "./messages.js";

/** The finest step of the hand, in metres: a sixteenth of an inch, or a millimetre. */
export function stepOf(unit: "in" | "mm"): number {
  return unit === "in" ? 0.0254 / 16 : 0.001;
}

/** How a length stands in the file: a bare number in the file's unit, inches as a fraction of a sixteenth. */
export function bareLength(metres: number, unit: "in" | "mm"): string {
  const steps = Math.round(metres / stepOf(unit));
  if (unit === "mm") return String(steps);
  const whole = Math.floor(steps / 16);
  let [part, of] = [steps - 16 * whole, 16];
  while (part > 0 && part % 2 === 0) [part, of] = [part / 2, of / 2];
  if (part === 0) return String(whole);
  return whole === 0 ? `${part}/${of}` : `${whole}-${part}/${of}`;
}

/** Where a thing is, measured from its corner, m. */
export interface Placed {
  /** From the corner's upright edge. */
  readonly across: number;
  /** From the corner's level edge. */
  readonly up: number;
}

/**
 * A thing moved to the right and up on its face, snapped to the hand's step; never past its corner's edges.
 *
 * @param right to the right, seen from outside, m
 * @param up upwards, m
 */
export function movedBy(
  { from, across, up: height }: MovableThing,
  right: number,
  up: number,
  unit: "in" | "mm",
): Placed {
  const step = stepOf(unit);
  const snapped = (value: number): number => Math.max(0, Math.round(value / step) * step);
  return {
    across: snapped(across + (from.endsWith("right") ? -right : right)),
    up: snapped(height + (from.startsWith("top") ? -up : up)),
  };
}

/** A change of case.yaml as the page sends it. */
export interface SetChange {
  /** A value in place of another. */
  readonly kind: "set";
  /** Its full place. */
  readonly at: string;
  /** As in the file. */
  readonly to: string;
}

/** The changes that put a thing there; none for a distance that stays. */
export function moveChanges(thing: MovableThing, to: Placed, unit: "in" | "mm"): readonly SetChange[] {
  return (["across", "up"] as const)
    .filter((way) => Math.abs(to[way] - thing[way]) > stepOf(unit) / 4)
    .map((way) => ({ kind: "set", at: `${thing.place}.${way}`, to: bareLength(to[way], unit) }));
}
