import { Temperature, Time } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { sectionHeat } from "./heat.js";
import { sunOnSection } from "./sun.js";

/** When things are switched on, and what the air outside does. */
export interface DayOutside {
  /** Switched on and off, since midnight. */
  readonly from: Time;
  readonly until: Time;
  /** At three in the afternoon; the night is so much cooler. */
  readonly hottest: Temperature;
  /** From the hottest hour to the coldest, K. */
  readonly swing: number;
}

/** One quarter of an hour of that day. */
export interface DayReading {
  readonly time: Time;
  readonly inside: Temperature;
  /** Inside, where it stands in the sun all day; as inside where nobody said how strong it is. */
  readonly inSun: Temperature;
  readonly outside: Temperature;
}

const quarter = 900;
const day = 24 * 3600;

/**
 * Air in a section over a day, a quarter of an hour at a time: it runs after the air outside, and after what its
 * loads and the sun give, with the section's own time constant. The day before was alike.
 *
 * @throws RangeError where a formula refuses its inputs
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
