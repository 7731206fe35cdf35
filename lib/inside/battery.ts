/** Loads that come and go, and the battery that runs them. */
import { type Formula, formula } from "../formula.js";
import {
  Charge,
  Current,
  hour,
  listOf,
  Name,
  Power,
  Ratio,
  recordOf,
  Time,
  Voltage,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** One load with its duty. */
export interface DutyLoad {
  /** As a table names it. */
  readonly name: string;
  /** While on. */
  readonly power: Power;
  /** Share of the time it is on. */
  readonly duty: Ratio;
}

/**
 * Mean of loads that come and go: sum of power x share of the time.
 *
 * @source plain arithmetic
 * @throws RangeError for a negative power or a duty outside 0 to 1
 * @example meanLoad(meanLoad.read({ loads: [] })) // mean 0 W, peak 0 W
 */
export const meanLoad: Formula<
  { readonly loads: readonly DutyLoad[] },
  { readonly mean: Power; readonly peak: Power }
> = formula<{ readonly loads: readonly DutyLoad[] }, { readonly mean: Power; readonly peak: Power }>({
  id: "power.mean",
  title: "Mean and greatest load",
  equation: String.raw`\bar P=\sum P_i d_i,\quad \hat P=\sum P_i`,
  inputs: {
    loads: {
      symbol: "P_i, d_i",
      kind: listOf(recordOf<DutyLoad>("load", { name: Name, power: Power, duty: Ratio })),
      meaning: "loads and their duty",
    },
  },
  result: {
    mean: { symbol: String.raw`\bar P`, kind: Power, meaning: "mean" },
    peak: { symbol: String.raw`\hat P`, kind: Power, meaning: "all on" },
  },
  source: [cite("geometry", "weighted sum")],
  validity: "Over a time long beside the on and off.",
  refuse: ({ loads }) =>
    loads
      .filter(({ power, duty }) => !(power >= 0 && duty >= 0 && duty <= 1))
      .map(({ name }) => `${name}: power at least 0 and duty from 0 to 1`),
  compute: ({ loads }) => ({
    mean: loads.reduce((sum, { power, duty }) => sum + power * duty, 0),
    peak: loads.reduce((sum, { power }) => sum + power, 0),
  }),
});

/** A battery under a steady load. */
export interface LoadedBattery {
  /** At its rated time. */
  readonly capacity: Charge;
  /** Time its capacity is rated for, 20 h as a rule. */
  readonly ratedTime: Time;
  /** 1 for an ideal one, 1.1 to 1.3 for lead, 1.05 for lithium. */
  readonly peukert: Ratio;
  /** Of the battery. */
  readonly voltage: Voltage;
  /** Drawn by the loads. */
  readonly load: Power;
  /** Of the inverter between: 0.85 to 0.92; 1 without one. */
  readonly efficiency: Ratio;
  /** Share that may be taken out: 0.5 for lead, 0.8 to 0.9 for lithium. */
  readonly usable: Ratio;
}

/** How long it lasts. */
export type RunTime = {
  /** Drawn from the battery. */
  readonly current: Current;
  /** Until the usable share is out. */
  readonly time: Time;
};

/**
 * How long a battery runs a load: usable x H (C / (I H))^k with I = P / (U efficiency).
 *
 * @source electricity, Peukert's law
 * @throws RangeError unless capacity, voltage and load are positive and shares above 0 and at most 1
 * @example batteryTime(batteryTime.read({ capacity: "100 Ah", ratedTime: "100 h", peukert: 1.2,
 *   voltage: "12 V", load: "60 W", efficiency: 1, usable: 1 })) // current 5 A, time 14.5 h
 */
export const batteryTime: Formula<LoadedBattery, RunTime> = formula<LoadedBattery, RunTime>({
  id: "power.battery",
  title: "How long a battery lasts",
  equation: String.raw`I=\frac{P}{U\eta},\quad t=u\,H\left(\frac{C}{I H}\right)^{k}`,
  inputs: {
    capacity: { symbol: "C", kind: Charge, meaning: "capacity", above: 0 },
    ratedTime: { symbol: "H", kind: Time, meaning: "time it is rated for", above: 0 },
    peukert: { symbol: "k", kind: Ratio, meaning: "Peukert's exponent", min: 1, max: 2 },
    voltage: { symbol: "U", kind: Voltage, meaning: "voltage", above: 0 },
    load: { symbol: "P", kind: Power, meaning: "load", above: 0 },
    efficiency: { symbol: String.raw`\eta`, kind: Ratio, meaning: "inverter", above: 0, max: 1 },
    usable: { symbol: "u", kind: Ratio, meaning: "share that may be taken out", above: 0, max: 1 },
  },
  result: {
    current: { symbol: "I", kind: Current, meaning: "from the battery" },
    time: { symbol: "t", kind: Time, meaning: "until the usable share is out" },
  },
  source: [cite("electricity", "Peukert's law")],
  validity: "A new battery at 25 °C; cold and age take a third.",
  warn: (_, { time }) =>
    time > hour(100) ? ["so slow a drain is mostly the battery's own: do not count on it"] : [],
  compute: ({ capacity, ratedTime, peukert, voltage, load, efficiency, usable }) => {
    const current = load / (voltage * efficiency);
    return { current, time: usable * ratedTime * (capacity / (current * ratedTime)) ** peukert };
  },
});
