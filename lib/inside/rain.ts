/** How long a case is sprayed before one may say that rain stays out. */
import { type Formula, formula } from "../formula.js";
import { Area, minute, Time } from "../quantity/index.js";
import { cite } from "../source.js";

/** A case under the hose. */
export interface SprayedCase {
  /** Outside surface that is sprayed. */
  readonly surface: Area;
}

/** At the least. */
const leastTime: Time = minute(5);
/** For each square metre. */
const timePerArea = 60;

/**
 * Time under a hand-held spray nozzle: a minute for each square metre, five minutes at least.
 *
 * @example sprayTime(sprayTime.read({ surface: "7 m2" })) // 7 min
 */
export const sprayTime: Formula<SprayedCase, Time> = formula<SprayedCase, Time>({
  id: "rain.spray.time",
  title: "Time of a spray test",
  equation: String.raw`t=\max\left(5\,\mathrm{min},\ A\cdot 1\,\mathrm{min/m^2}\right)`,
  inputs: { surface: { symbol: "A", kind: Area, meaning: "outside surface", above: 0 } },
  result: { symbol: "t", kind: Time, meaning: "time under the nozzle" },
  source: [cite("iec-60529", "IPX3 and IPX4 with the hand-held nozzle, 10 litres a minute")],
  validity:
    "A garden shower head of about 10 litres a minute from 30 to 50 cm, from all sides rain comes from. No jet, no flood.",
  compute: ({ surface }) => Math.max(leastTime, timePerArea * surface),
});
