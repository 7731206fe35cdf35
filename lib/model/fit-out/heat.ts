import type { WorkedLine } from "../../formula.js";
import {
  airHeat,
  fitWarmUp,
  HeatCapacity,
  HeatConductance,
  meanLoad,
  TemperatureRise,
} from "../../inside/index.js";
import { Power } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { withAir, withoutAir } from "./cooled.js";
import { loadsOf } from "./loads.js";
import { freeFaces, wallOf, wallsOf } from "./wall-heat.js";

/** Specific heat of wood and of instruments, J/(kg K); common values. */
const woodHeat = 1600;
const thingHeat = 800;

/** What a section comes to when all of it is warm. */
export interface SectionHeat {
  readonly power: Power;
  readonly rise: TemperatureRise;
  /** Half the width of its interval at 95 %, by the scatter of the log; absent where it is reckoned. */
  readonly riseWithin?: TemperatureRise;
  /** All heat out for each degree, once warm. */
  readonly conductance: HeatConductance;
  readonly capacity: HeatCapacity;
  readonly because: readonly WorkedLine[];
  /** How it is known: the builder's log, or walls and vents reckoned. */
  readonly from: "log" | "reckoned";
}

/**
 * How warm a section gets: from the builder's own log where there is one, scaled to the load of the case, or else
 * reckoned from its walls and vents. What the sun sends in comes on top of the loads.
 *
 * @throws RangeError where a formula refuses its inputs
 */
export function sectionHeat(input: ReviewInput, section: string, fromSun: Power = Power.si(0)): SectionHeat {
  const loads = loadsOf(input, section);
  const load = meanLoad.worked({ loads });
  const power = Power.si(load.value.mean + fromSun);
  const logged = fromLog(input, section, power);
  const heat = logged ?? reckoned(input, section, power);
  return { power, ...heat, because: [load, ...heat.because] };
}

function fromLog(
  { measurements }: ReviewInput,
  section: string,
  power: Power,
): Omit<SectionHeat, "power"> | undefined {
  const rows = measurements.temperatures.filter((row) => row.section === section);
  const [first] = rows;
  if (!first || rows.length < 3 || !(first.power > 0)) return undefined;
  const fit = fitWarmUp.worked({
    readings: rows.map(({ time, inside, outside }) => ({ time, rise: TemperatureRise.si(inside - outside) })),
  });
  const conductance = HeatConductance.si(first.power / fit.value.finalRise);
  return {
    rise: TemperatureRise.si(power / conductance),
    riseWithin: TemperatureRise.si((power / first.power) * fit.value.riseWithin),
    conductance,
    capacity: HeatCapacity.si(conductance * fit.value.timeConstant),
    because: [fit],
    from: "log",
  };
}

function reckoned(input: ReviewInput, section: string, power: Power): Omit<SectionHeat, "power"> {
  const conductance = wallsOf(input, section);
  const cooling = input.case.services.cooling.find((one) => one.section === section);
  const heated = { power, conductance };
  const air = cooling ? withAir(input, cooling, heated) : withoutAir(heated);
  const out = power > 0 ? HeatConductance.si(power / air.rise) : conductance;
  return {
    ...air,
    conductance: out,
    capacity: capacityOf(input, section),
    because: [...freeFaces(input, section).slice(0, 1).map(wallOf), ...air.because],
    from: "reckoned",
  };
}

/** Air, panels and things together. */
function capacityOf({ parts, case: { sections } }: ReviewInput, section: string): HeatCapacity {
  const inside = sections.find(({ name }) => name === section)?.inside;
  const air = inside ? inside.width * inside.depth * inside.height * airHeat : 0;
  const wood = parts.panels
    .filter((panel) => panel.section === section)
    .reduce((sum, { netArea, sheet }) => sum + netArea * sheet.thickness * sheet.density * woodHeat, 0);
  const things = parts.contents
    .filter(({ content }) => content.section === section)
    .reduce((sum, { content }) => sum + content.mass * thingHeat, 0);
  return HeatCapacity.si(air + wood / 2 + things);
}
