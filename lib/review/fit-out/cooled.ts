/** How warm a section gets with vents, with a fan, or shut. */
import type { Cooling, PlacedOpening } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  AirFlow,
  fanFlow,
  type HeatConductance,
  steadyRise,
  type TemperatureRise,
  ventedRise,
  ventsInRow,
} from "../../inside/index.js";
import { Area, Density, Length, type Power, ratio, Temperature } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** Jets through slots and grilles; common practice. */
const discharge = ratio(0.65);
const seaAir = Density.si(1.2);

/** A rise, with its working. */
export interface Warmed {
  readonly rise: TemperatureRise;
  readonly because: readonly WorkedLine[];
}

/** Shut. */
export function withoutAir(power: Power, conductance: HeatConductance): Warmed {
  const line = steadyRise.worked({ power, conductance, flow: fanless });
  return { rise: line.value, because: [line] };
}

const fanless = AirFlow.si(0);

/** With its vents, and its fan where it has one. */
export function withAir(
  input: ReviewInput,
  cooling: Cooling,
  power: Power,
  conductance: HeatConductance,
): Warmed {
  const [low, high] = [ventOf(input, cooling, cooling.letIn), ventOf(input, cooling, cooling.letOut)];
  const free = (vent: PlacedOpening): Area => Area.si(vent.area * cooling.free);
  const both = ventsInRow.worked({ low: free(low), high: free(high) });
  if (cooling.fan) {
    const fan = fanFlow.worked({
      freeFlow: cooling.fan.flow,
      deadPressure: cooling.fan.pressure,
      discharge,
      area: both.value,
      airDensity: seaAir,
    });
    const line = steadyRise.worked({ power, conductance, flow: fan.value });
    return { rise: line.value, because: [both, fan, line] };
  }
  const apart = Length.si(middle(high) - middle(low));
  const line = ventedRise.worked({
    power,
    conductance,
    area: both.value,
    discharge,
    apart,
    outside: input.case.services.hottest ?? Temperature.si(298.15),
  });
  return { rise: line.value.rise, because: [both, line] };
}

function ventOf({ parts }: ReviewInput, { section }: Cooling, name: string): PlacedOpening {
  const [face = "", ...rest] = name.split(".");
  const panel = parts.panels.find(({ id }) => id === `${section}.${face}`);
  const opening = panel?.openings.find((one) => one.name === rest.join("."));
  if (!opening) throw new RangeError(`vents: no opening ${name} in ${section}`);
  return opening;
}

function middle({ low, height }: PlacedOpening): number {
  return low.v + height / 2;
}
