import { Temperature, Time } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";
import { sectionHeat } from "./heat.js";

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
  readonly outside: Temperature;
}

const quarter = 900;
const day = 24 * 3600;

/**
 * Air in a section over a day, a quarter of an hour at a time: it runs after the air outside, and after what its
 * loads give, with the section's own time constant. The day before was alike.
 *
 * @throws RangeError where a formula refuses its inputs
 */
export function dayOfHeat(input: ReviewInput, section: string, outside: DayOutside): readonly DayReading[] {
  const { rise, capacity, conductance } = sectionHeat(input, section);
  const share = 1 - Math.exp((-quarter * conductance) / capacity);
  const readings: DayReading[] = [];
  let inside: number = outside.hottest - outside.swing;
  for (let time = -day; time <= day; time += quarter) {
    const air = outsideAt(outside, time);
    const hour = ((time % day) + day) % day;
    const working = hour >= outside.from && hour < outside.until;
    inside += (air + (working ? rise : 0) - inside) * share;
    if (time >= 0)
      readings.push({ time: Time.si(time), inside: Temperature.si(inside), outside: Temperature.si(air) });
  }
  return readings;
}

/** A cosine with its crest at three in the afternoon. */
function outsideAt({ hottest, swing }: DayOutside, time: number): number {
  return hottest - (swing / 2) * (1 - Math.cos((2 * Math.PI * (time - 15 * 3600)) / day));
}
