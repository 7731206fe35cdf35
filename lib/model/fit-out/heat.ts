/** How warm a section gets, by which ways its heat leaves it, and how both go over a day. */
import type { WorkedLine } from "../../formula.js";
import {
  airHeat,
  fitWarmUp,
  HeatCapacity,
  HeatConductance,
  meanLoad,
  TemperatureRise,
} from "../../inside/index.js";
import { Power, Temperature, Time } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { loadsOf } from "./heat-limit.js";
import { draughtAt, fanThrough, outdoorAir, ventsOf, withAir, withoutAir } from "./ventilation.js";
import { freeFaces, sunOnSection, wallOf, wallsOf } from "./wall-heat.js";

/** Specific heat of wood and of instruments, J/(kg K); common values. */
const woodHeat = 1600;
const thingHeat = 800;

/** What a section comes to when all of it is warm. */
export interface SectionHeat {
  /** Mean power of the loads, with what the sun adds. */
  readonly power: Power;
  /** Rise over the air outside, in the end. */
  readonly rise: TemperatureRise;
  /** Half the width of its interval at 95 %, by the scatter of the log; absent where it is reckoned. */
  readonly riseWithin?: TemperatureRise;
  /** All heat out for each degree, once warm. */
  readonly conductance: HeatConductance;
  /** Heat that warms all of it by one degree. */
  readonly capacity: HeatCapacity;
  /** The worked lines behind it. */
  readonly because: readonly WorkedLine[];
  /** How it is known: the builder's log, or walls and vents reckoned. */
  readonly from: "log" | "reckoned";
}

/**
 * How warm a section gets: from the builder's own log where there is one, scaled to the load of the case, or else
 * reckoned from its walls and vents. What the sun sends in comes on top of the loads.
 *
 * @throws Refusal where a formula refuses its inputs
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

/** One way that heat takes out of a section. */
export interface HeatPath {
  /** As a table names it. */
  readonly way: string;
  /** Heat that goes that way for each degree. */
  readonly conductance: HeatConductance;
}

/**
 * Ways out of the heat of a section once it is warm: each wall, the air, and what the builder's log shows beyond them.
 *
 * @throws Refusal where a formula refuses its inputs
 */
export function heatPaths(input: ReviewInput, section: string): readonly HeatPath[] {
  const heat = sectionHeat(input, section);
  const reckoned = [
    ...freeFaces(input, section).map((panel) => ({
      way: `${panel.face ?? panel.id} wall`,
      conductance: wallOf(panel).value,
    })),
    ...airPath(input, section, heat),
  ];
  const rest = heat.conductance - reckoned.reduce((sum, { conductance }) => sum + conductance, 0);
  const beyond = { way: "beyond that, by the log", conductance: HeatConductance.si(rest) };
  return heat.from === "log" && rest > 0 ? [...reckoned, beyond] : reckoned;
}

function airPath(input: ReviewInput, section: string, { rise }: SectionHeat): readonly HeatPath[] {
  const cooling = input.case.services.cooling.find((one) => one.section === section);
  if (!cooling || !(rise > 0)) return [];
  const vents = ventsOf(input, cooling);
  const { flow } = cooling.fan
    ? fanThrough(input, cooling.fan, vents)
    : draughtAt(vents, input.case.services.hottest ?? Temperature.of(25, "°C"), rise);
  const conductance = HeatConductance.si(airHeat * outdoorAir(input).thinness * flow);
  return [{ way: cooling.fan ? "air of the fan" : "air through the vents", conductance }];
}

/** When things are switched on, and what the air outside does. */
export interface DayOutside {
  /** Switched on, since midnight. */
  readonly from: Time;
  /** Switched off, since midnight. */
  readonly until: Time;
  /** At three in the afternoon; the night is so much cooler. */
  readonly hottest: Temperature;
  /** From the hottest hour to the coldest, K. */
  readonly swing: number;
}

/** One quarter of an hour of that day. */
export interface DayReading {
  /** Since midnight. */
  readonly time: Time;
  /** Air inside, in the shade. */
  readonly inside: Temperature;
  /** Inside, where it stands in the sun all day; as inside where nobody said how strong it is. */
  readonly inSun: Temperature;
  /** Air outside. */
  readonly outside: Temperature;
}

const quarter = 900;
const day = 24 * 3600;

/**
 * Air in a section over a day, a quarter of an hour at a time: it runs after the air outside, and after what its
 * loads and the sun give, with the section's own time constant. The day before was alike.
 *
 * @throws Refusal where a formula refuses its inputs
 */
export function dayOfHeat(input: ReviewInput, section: string, outside: DayOutside): readonly DayReading[] {
  const { power, rise, capacity, conductance } = sectionHeat(input, section);
  const share = 1 - Math.exp((-quarter * conductance) / capacity);
  const noonSun = sunRise(input, section, outside.hottest, rise, power);
  const readings: DayReading[] = [];
  const coldest = outside.hottest - outside.swing;
  let [inside, inSun] = [coldest, coldest];
  for (let time = -day; time <= day; time += quarter) {
    const air = outsideAt(outside, time);
    const hour = ((time % day) + day) % day;
    const loads = hour >= outside.from && hour < outside.until ? rise : 0;
    inside += (air + loads - inside) * share;
    inSun += (air + loads + noonSun * sunAt(hour) - inSun) * share;
    if (time >= 0) readings.push(readingOf(time, inside, inSun, air));
  }
  return readings;
}

function readingOf(time: number, inside: number, inSun: number, outside: number): DayReading {
  return {
    time: Time.si(time),
    inside: Temperature.si(inside),
    inSun: Temperature.si(inSun),
    outside: Temperature.si(outside),
  };
}

/** What the noon sun alone warms it by, in proportion to what its loads do. */
function sunRise(
  input: ReviewInput,
  section: string,
  hottest: Temperature,
  rise: number,
  power: number,
): number {
  const { sun } = input.case.services;
  if (!sun || !(power > 0)) return 0;
  return (rise / power) * sunOnSection(input, section, sun, hottest).heat;
}

/** Share of the noon sun: half a sine from six to six. */
function sunAt(hour: number): number {
  return Math.max(0, Math.sin((Math.PI * (hour - 6 * 3600)) / (12 * 3600)));
}

/** A cosine with its crest at three in the afternoon. */
function outsideAt({ hottest, swing }: DayOutside, time: number): number {
  return hottest - (swing / 2) * (1 - Math.cos((2 * Math.PI * (time - 15 * 3600)) / day));
}
