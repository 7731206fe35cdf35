/** Heat of a section as a builder knows it: loads, walls, vents or fan, and the temperature log. */
import type { Cooling, PanelPart, PlacedOpening } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  AirFlow,
  airHeat,
  fanFlow,
  fitWarmUp,
  HeatCapacity,
  HeatConductance,
  HeatConductivity,
  meanLoad,
  steadyRise,
  stillFilm,
  TemperatureRise,
  ventedRise,
  ventsInRow,
  wallConductance,
  wallTransmittance,
} from "../../inside/index.js";
import { Area, Density, Length, Power, ratio, Temperature } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** Plywood and laminate, W/mK; common values, from memory: 0.13 as in ISO 10456, 0.25. */
const plywood = HeatConductivity.si(0.13);
const laminate = HeatConductivity.si(0.25);

/** Jets through slots and grilles; common practice. */
const discharge = ratio(0.65);
const seaAir = Density.si(1.2);

/** Specific heat of wood and of instruments, J/(kg K); common values. */
const woodHeat = 1600;
const thingHeat = 800;

/** What a section comes to when all of it is warm. */
export interface SectionHeat {
  readonly power: Power;
  readonly rise: TemperatureRise;
  /** All heat out for each degree, once warm. */
  readonly conductance: HeatConductance;
  readonly capacity: HeatCapacity;
  readonly because: readonly WorkedLine[];
  /** How it is known: the builder's log, or walls and vents reckoned. */
  readonly from: "log" | "reckoned";
}

/**
 * How warm a section gets: from the builder's own log where there is one, scaled to the load of the case, or else
 * reckoned from its walls and vents.
 *
 * @throws RangeError where a formula refuses its inputs
 */
export function sectionHeat(input: ReviewInput, section: string): SectionHeat {
  const loads = input.case.contents
    .filter((content) => content.section === section)
    .map(({ name, power = Power.si(0), duty = ratio(1) }) => ({ name, power, duty }));
  const load = meanLoad.worked({ loads });
  const power = load.value.mean;
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
    conductance,
    capacity: HeatCapacity.si(conductance * fit.value.timeConstant),
    because: [fit],
    from: "log",
  };
}

function reckoned(input: ReviewInput, section: string, power: Power): Omit<SectionHeat, "power"> {
  const panels = input.parts.panels.filter((panel) => panel.section === section && panel.role === "face");
  const walls = panels.map(wallOf);
  const conductance = HeatConductance.si(walls.reduce((sum, { value }) => sum + value, 0));
  const cooling = input.case.services.cooling.find((one) => one.section === section);
  const air = cooling ? withAir(input, cooling, power, conductance) : withoutAir(power, conductance);
  const out = power > 0 ? HeatConductance.si(power / air.rise) : conductance;
  return {
    ...air,
    conductance: out,
    capacity: capacityOf(input, section),
    because: [...air.because, ...walls.slice(0, 1)],
    from: "reckoned",
  };
}

function wallOf(panel: PanelPart) {
  const { sheet, facing, netArea } = panel;
  const skins = facing ? (facing.sides === "both" ? 2 : 1) : 0;
  const transmittance = wallTransmittance({
    layers: [
      { thickness: sheet.thickness, conductivity: plywood },
      ...Array.from({ length: skins }, () => ({
        thickness: facing?.stock.thickness ?? sheet.thickness,
        conductivity: laminate,
      })),
    ],
    insideFilm: stillFilm,
    outsideFilm: stillFilm,
  });
  return wallConductance.worked({ transmittance, area: netArea });
}

interface Warmed {
  readonly rise: TemperatureRise;
  readonly because: readonly WorkedLine[];
}

function withoutAir(power: Power, conductance: HeatConductance): Warmed {
  const line = steadyRise.worked({ power, conductance, flow: fanless });
  return { rise: line.value, because: [line] };
}

const fanless = AirFlow.si(0);

function withAir(input: ReviewInput, cooling: Cooling, power: Power, conductance: HeatConductance): Warmed {
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
