import type { Cooling, PlacedOpening } from "../../design/index.js";
import { Area, Length } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** The vents of a section, with what their grilles leave free. */
export interface Vents {
  readonly low: Area;
  readonly high: Area;
  /** Between their middles; where there is only one vent, half its height: where air goes in below and out above. */
  readonly apart: Length;
  /** True where air goes in and out by the same opening. */
  readonly only: boolean;
}

/**
 * The vents that a section's cooling names.
 *
 * @throws RangeError for a name that is no opening
 */
export function ventsOf(input: ReviewInput, cooling: Cooling): Vents {
  const [low, high] = [ventNamed(input, cooling, cooling.letIn), ventNamed(input, cooling, cooling.letOut)];
  const free = (vent: PlacedOpening): Area => Area.si(vent.area * cooling.free);
  const only = cooling.letIn === cooling.letOut;
  return {
    low: free(low),
    high: free(high),
    apart: Length.si(only ? low.height / 2 : middle(high) - middle(low)),
    only,
  };
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
