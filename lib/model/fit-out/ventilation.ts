/** Air through the vents of a section, and how warm it gets with vents, with a fan, or shut. */
import type { Cooling, PlacedOpening } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  AirFlow,
  Altitude,
  airThinness,
  fanFlow,
  type HeatConductance,
  neutralLevel,
  onlyVentDischarge,
  stackFlow,
  steadyRise,
  TemperatureRise,
  ventedRise,
  ventsInRow,
} from "../../inside/index.js";
import { Area, Density, Length, type Power, type Ratio, ratio, Temperature } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import type { ReviewInput } from "../review-input.js";

/** The vents of a section, with what their grilles leave free. */
export interface Vents {
  /** Free area of the lower vent. */
  readonly low: Area;
  /** Free area of the upper vent. */
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
 * @throws Refusal for a name that is no opening
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

/** @throws Refusal for a name that is no opening */
function ventNamed({ parts }: ReviewInput, { section }: Cooling, name: string): PlacedOpening {
  const [face = "", ...rest] = name.split(".");
  const panel = parts.panels.find(({ id }) => id === `${section}.${face}`);
  const opening = panel?.openings.find((one) => one.name === rest.join("."));
  if (!opening) throw new Refusal(`vents: no opening ${name} in ${section}`);
  return opening;
}

function middle({ low, height }: PlacedOpening): number {
  return low.y + height / 2;
}

/** Air near the sea. */
const seaAir = 1.2;

/** The air where the case works. */
export interface OutdoorAir {
  /** Density over that near the sea. */
  readonly thinness: Ratio;
  /** Mass of a cubic metre of it. */
  readonly density: Density;
  /** The worked line; none near the sea. */
  readonly because: readonly WorkedLine[];
}

/** The air at the height that the case file names, or near the sea. */
export function outdoorAir(input: ReviewInput): OutdoorAir {
  const { altitude } = input.case.services;
  const line = airThinness.worked({ height: altitude ?? Altitude.si(0) });
  return {
    thinness: line.value,
    density: Density.si(seaAir * line.value),
    because: altitude === undefined ? [] : [line],
  };
}

/** Jets through slots and grilles; common practice, and ASHRAE's value for several openings. */
export const discharge: Ratio = ratio(0.65);

/** A rise, with its working. */
export interface Warmed {
  /** Rise over the air outside. */
  readonly rise: TemperatureRise;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
}

/** What a section is to its air. */
export interface HeatedSection {
  /** Heat that its loads give. */
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

/** Air through the lower vent, by the level where inside and outside press alike. */
export function draughtAt(
  { low, high, apart, only }: Vents,
  outside: Temperature,
  allowed: TemperatureRise,
): { readonly flow: AirFlow; readonly because: readonly WorkedLine[] } {
  const inside = Temperature.si(outside + allowed);
  if (only) {
    const factor = onlyVentDischarge.worked({ rise: allowed });
    const line = stackFlow.worked({ discharge: factor.value, area: low, rise: apart, inside, outside });
    return { flow: line.value, because: [factor, line] };
  }
  const level = neutralLevel.worked({ low, high, apart, warmth: ratio(inside / outside) });
  const line = stackFlow.worked({ discharge, area: low, rise: level.value, inside, outside });
  return { flow: line.value, because: [level, line] };
}
