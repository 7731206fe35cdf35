/** How warm a section gets with vents, with a fan, or shut. */
import type { Cooling } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  AirFlow,
  fanFlow,
  type HeatConductance,
  onlyVentDischarge,
  steadyRise,
  TemperatureRise,
  ventedRise,
  ventsInRow,
} from "../../inside/index.js";
import { type Area, type Power, type Ratio, ratio, Temperature } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { outdoorAir } from "./outdoors.js";
import { type Vents, ventsOf } from "./vents-of.js";

/** Jets through slots and grilles; common practice, and ASHRAE's value for several openings. */
export const discharge: Ratio = ratio(0.65);

/** A rise, with its working. */
export interface Warmed {
  readonly rise: TemperatureRise;
  readonly because: readonly WorkedLine[];
}

/** What a section is to its air. */
export interface HeatedSection {
  readonly power: Power;
  /** Through the walls. */
  readonly conductance: HeatConductance;
}

/** Shut. */
export function withoutAir(heated: HeatedSection): Warmed {
  const line = steadyRise.worked({ ...heated, flow: AirFlow.si(0), thinness: ratio(1) });
  return { rise: line.value, because: [line] };
}

/** With its vents, and its fan where it has one. */
export function withAir(input: ReviewInput, cooling: Cooling, heated: HeatedSection): Warmed {
  const vents = ventsOf(input, cooling);
  if (cooling.fan) return withFan(input, cooling.fan, vents, heated);
  const { thinness, because } = outdoorAir(input);
  const { area, factor, lines } = asOne(vents);
  const line = ventedRise.worked({
    ...heated,
    area,
    discharge: factor,
    apart: vents.apart,
    outside: input.case.services.hottest ?? Temperature.si(298.15),
    thinness,
  });
  return { rise: line.value.rise, because: [...because, ...lines, line] };
}

function withFan(
  input: ReviewInput,
  fan: NonNullable<Cooling["fan"]>,
  vents: Vents,
  heated: HeatedSection,
): Warmed {
  const { thinness, because } = outdoorAir(input);
  const blown = fanThrough(input, fan, vents);
  const line = steadyRise.worked({ ...heated, flow: blown.flow, thinness });
  return { rise: line.value, because: [...because, ...blown.because, line] };
}

/** What the fan moves through the vents. */
export function fanThrough(
  input: ReviewInput,
  fan: NonNullable<Cooling["fan"]>,
  { low, high }: Vents,
): { readonly flow: AirFlow; readonly because: readonly WorkedLine[] } {
  const both = ventsInRow.worked({ low, high });
  const line = fanFlow.worked({
    freeFlow: fan.flow,
    deadPressure: fan.pressure,
    discharge,
    area: both.value,
    airDensity: outdoorAir(input).density,
  });
  return { flow: line.value, because: [both, line] };
}

/** Two vents as one opening; the only vent by itself, with the factor it has before it is warm, the least. */
function asOne({ low, high, only }: Vents): {
  readonly area: Area;
  readonly factor: Ratio;
  readonly lines: readonly WorkedLine[];
} {
  if (only) {
    const line = onlyVentDischarge.worked({ rise: TemperatureRise.si(0) });
    return { area: low, factor: line.value, lines: [line] };
  }
  const both = ventsInRow.worked({ low, high });
  return { area: both.value, factor: discharge, lines: [both] };
}
