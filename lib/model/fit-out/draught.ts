import type { WorkedLine } from "../../formula.js";
import {
  type AirFlow,
  neutralLevel,
  onlyVentDischarge,
  stackFlow,
  type TemperatureRise,
} from "../../inside/index.js";
import { ratio, Temperature } from "../../quantity/index.js";
import { discharge } from "./cooled.js";
import type { Vents } from "./vents-of.js";

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
