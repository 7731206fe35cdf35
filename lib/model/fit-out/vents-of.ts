import type { Cooling, PlacedOpening } from "../../design/index.js";
import { Area, Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** The vents of a section, with what their grilles leave free. */
export interface Vents {
  readonly low: Area;
  readonly high: Area;
  /** Between their middles; half the height where all are at one height, air going in below and out above. */
  readonly apart: Length;
  /** True where air goes in and out at one height. */
  readonly only: boolean;
}

/**
 * The vents that a section's cooling names. Whatever their names, air goes in by the lower one; two at one height
 * serve as one opening.
 *
 * @throws RangeError for a name that is no opening
 */
export function ventsOf(input: ReviewInput, cooling: Cooling): Vents {
  const one = ventNamed(input, cooling, cooling.letIn);
  const other = ventNamed(input, cooling, cooling.letOut);
  const [low, high] = middle(one) <= middle(other) ? [one, other] : [other, one];
  const free = (...vents: readonly PlacedOpening[]): Area =>
    Area.si(vents.reduce((sum, { area }) => sum + area * cooling.free, 0));
  const apart = middle(high) - middle(low);
  if (apart > 0) return { low: free(low), high: free(high), apart: Length.si(apart), only: false };
  const whole = low === high ? free(low) : free(low, high);
  return { low: whole, high: whole, apart: Length.si(low.height / 2), only: true };
}

function ventNamed({ parts }: ReviewInput, { section }: Cooling, name: string): PlacedOpening {
  const [face = "", ...rest] = name.split(".");
  const panel = parts.panels.find(({ id }) => id === `${section}.${face}`);
  const opening = panel?.openings.find((one) => one.name === rest.join("."));
  if (!opening) throw new RangeError(`vents: no opening ${name} in ${section}`);
  return opening;
}

function middle({ low, height }: PlacedOpening): number {
  return low.v + height / 2;
}
