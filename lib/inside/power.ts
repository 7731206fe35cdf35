/** Loads on a circuit or a battery. Mains work is for someone licensed to do it. */
import { type Formula, formula } from "../formula.js";
import {
  Charge,
  Count,
  Current,
  hour,
  listOf,
  Name,
  Power,
  Ratio,
  recordOf,
  Temperature,
  Time,
  Voltage,
} from "../quantity/index.js";
import { cite } from "../source.js";
import { Resistance } from "./kinds.js";

/** Said with everything about mains. */
export const mainsCaution =
  "Mains wiring, plug-in or fixed, is for someone licensed to do it where you are, with a ground-fault device (GFCI, RCD) outdoors. Local code decides; this only tells you what to ask.";

/** A load at the end of a cable. */
export interface CableRun {
  /** The current drawn. */
  readonly current: Current;
  /** The resistance of one conductor, one way. */
  readonly oneWay: Resistance;
  /** The voltage at the plug. */
  readonly supply: Voltage;
}

/** What a cable takes. */
export type CableDrop = {
  /** The voltage lost there and back. */
  readonly drop: Voltage;
  /** The voltage lost, as a share of the supply. */
  readonly share: Ratio;
};

/**
 * Voltage lost in a cable, there and back: 2 I R.
 *
 * @source electricity, Ohm's law
 * @throws RangeError unless supply is positive and the others not negative
 * @example cableDrop(cableDrop.read({ current: "10 A", oneWay: "0.12 ohm", supply: "12 V" })) // drop 2.4 V, share 0.2
 */
export const cableDrop: Formula<CableRun, CableDrop> = formula<CableRun, CableDrop>({
  id: "power.cable.drop",
  title: "Voltage lost in a cable",
  equation: String.raw`U=2\,I R,\quad u=\frac{U}{U_0}`,
  inputs: {
    current: { symbol: "I", kind: Current, meaning: "current", min: 0 },
    oneWay: { symbol: "R", kind: Resistance, meaning: "one conductor, one way", min: 0 },
    supply: { symbol: "U_0", kind: Voltage, meaning: "supply", above: 0 },
  },
  result: {
    drop: { symbol: "U", kind: Voltage, meaning: "lost" },
    share: { symbol: "u", kind: Ratio, meaning: "share lost" },
  },
  source: [cite("electricity", "Ohm's law")],
  validity: "Two wires, single phase or direct current. 3 % is the usual aim.",
  refuse: ({ current, oneWay, supply }) =>
    2 * current * oneWay < supply ? [] : ["the cable would take the whole supply"],
  compute: ({ current, oneWay, supply }) => ({
    drop: 2 * current * oneWay,
    share: (2 * current * oneWay) / supply,
  }),
});

/**
 * Current that a circuit may carry for hours: 80 % of its breaker.
 *
 * @source NEC 210.20(A): the breaker at least 125 % of a load of 3 h or more
 * @throws RangeError unless the breaker is positive
 * @example continuousCurrent(continuousCurrent.read({ breaker: "15 A" })) // 12 A
 */
export const continuousCurrent: Formula<{ readonly breaker: Current }, Current> = formula({
  id: "power.continuous",
  title: "Current a circuit carries for hours",
  equation: String.raw`I=\frac{I_b}{1.25}`,
  inputs: { breaker: { symbol: "I_b", kind: Current, meaning: "breaker", above: 0 } },
  result: { symbol: "I", kind: Current, meaning: "for three hours or more" },
  source: [cite("nec", "210.20(A), article 100")],
  validity: "One circuit with nothing else on it: ask, where the socket is not your own.",
  compute: ({ breaker }) => breaker / 1.25,
});

/** A load on a supply. */
export interface PlugLoad {
  /** The power drawn. */
  readonly power: Power;
  /** The voltage of the supply. */
  readonly supply: Voltage;
  /** The power factor: 1 for lamps and heaters, 0.6 to 0.9 for small power supplies. */
  readonly powerFactor: Ratio;
}

/**
 * Current of a load: P / (U x power factor).
 *
 * @source electricity
 * @throws RangeError unless supply is positive and the factor above 0 and at most 1
 * @example loadCurrent(loadCurrent.read({ power: "1440 W", supply: "120 V", powerFactor: 1 })) // 12 A
 */
export const loadCurrent: Formula<PlugLoad, Current> = formula({
  id: "power.current",
  title: "Current of a load",
  equation: String.raw`I=\frac{P}{U\cos\varphi}`,
  inputs: {
    power: { symbol: "P", kind: Power, meaning: "load", min: 0 },
    supply: { symbol: "U", kind: Voltage, meaning: "supply", above: 0 },
    powerFactor: { symbol: String.raw`\cos\varphi`, kind: Ratio, meaning: "power factor", above: 0, max: 1 },
  },
  result: { symbol: "I", kind: Current, meaning: "current" },
  source: [cite("electricity", "single-phase power")],
  validity: "Single phase or direct current, running steadily.",
  compute: ({ power, supply, powerFactor }) => power / (supply * powerFactor),
});

/** A load at the moment it is switched on. */
export interface ColdStart {
  /** Running. */
  readonly current: Current;
  /** First current over running current: about 10 to 15 for filament lamps, up to 50 for lamp drivers for under a millisecond. */
  readonly factor: Ratio;
}

/**
 * First current of a cold lamp or a power supply: factor x running current.
 *
 * @source common practice; the maker's sheet decides
 * @throws RangeError unless the factor is at least 1
 * @example inrushCurrent(inrushCurrent.read({ current: "2 A", factor: 1 })) // 2 A
 */
export const inrushCurrent: Formula<ColdStart, Current> = formula({
  id: "power.inrush",
  title: "Current at switching on",
  equation: String.raw`\hat I=k\,I`,
  inputs: {
    current: { symbol: "I", kind: Current, meaning: "running", min: 0 },
    factor: { symbol: "k", kind: Ratio, meaning: "first over running", min: 1 },
  },
  result: { symbol: String.raw`\hat I`, kind: Current, meaning: "first current" },
  source: [cite("common-practice", "inrush as a multiple of the running current")],
  validity: "All switched on together; switch one after another and it never happens.",
  compute: ({ current, factor }) => factor * current,
});

/** One load with its duty. */
export interface DutyLoad {
  /** The name in a table. */
  readonly name: string;
  /** The power while on. */
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
  /** The capacity at its rated time. */
  readonly capacity: Charge;
  /** Time its capacity is rated for, 20 h as a rule. */
  readonly ratedTime: Time;
  /** The exponent of the battery: 1 for an ideal one, 1.1 to 1.3 for lead, 1.05 for lithium. */
  readonly peukert: Ratio;
  /** The voltage of the battery. */
  readonly voltage: Voltage;
  /** The power drawn by the loads. */
  readonly load: Power;
  /** The efficiency of the inverter between: 0.85 to 0.92; 1 without one. */
  readonly efficiency: Ratio;
  /** Share that may be taken out: 0.5 for lead, 0.8 to 0.9 for lithium. */
  readonly usable: Ratio;
}

/** How long it lasts. */
export type RunTime = {
  /** The current drawn from the battery. */
  readonly current: Current;
  /** The time until the usable share is out. */
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
  validity: "A new battery at 25 °C: cold and age take a third, see what is left of it.",
  warn: (_, { time }) =>
    time > hour(100) ? ["so slow a drain is mostly the battery's own: do not count on it"] : [],
  compute: ({ capacity, ratedTime, peukert, voltage, load, efficiency, usable }) => {
    const current = load / (voltage * efficiency);
    return { current, time: usable * ratedTime * (capacity / (current * ratedTime)) ** peukert };
  },
});

/** A battery on the day it must last. */
export interface AgedBattery {
  /** The battery itself, on the coldest day. */
  readonly temperature: Temperature;
  /** What age has left of its capacity: 0.8 when it is due to be replaced. */
  readonly age: Ratio;
}

/** Degrees Celsius between which the cold factor was fitted. */
const coldRange = { low: -20, high: 25 };

/**
 * Share of a battery's rated capacity that cold and age leave: age / K, with K the cold factor of lead batteries,
 * -2.8117 x3 + 4.1916 x2 - 2.4941 x + 1.4054 for x in hundreds of degrees Celsius; 1 from 25 degrees up.
 *
 * @source IEEE 485, temperature correction and ageing factor
 * @throws Refusal below -20 °C, or for an age outside 0 to 1
 * @example capacityLeft(capacityLeft.read({ temperature: "0 °C", age: 0.8 })) // 0.5692
 */
export const capacityLeft: Formula<AgedBattery, Ratio> = formula({
  id: "power.battery.left",
  title: "What cold and age leave of a battery",
  equation: String.raw`r=\frac{a}{1.4054-0.024941\,\vartheta+0.00041916\,\vartheta^2-0.0000028117\,\vartheta^3}`,
  inputs: {
    temperature: {
      symbol: String.raw`\vartheta`,
      kind: Temperature,
      meaning: "battery on the coldest day",
      unit: "°C",
    },
    age: { symbol: "a", kind: Ratio, meaning: "what age has left", above: 0, max: 1 },
  },
  result: { symbol: "r", kind: Ratio, meaning: "share of the rated capacity left" },
  source: [
    cite("ieee-485", "temperature correction factor and ageing factor, as a software note prints them"),
  ],
  validity:
    "Lead batteries, hours of discharge; lithium loses less above freezing, and must not be charged below it.",
  refuse: ({ temperature }) =>
    Temperature.in(temperature, "°C") >= coldRange.low ? [] : ["temperature must be at least -20 °C"],
  compute: ({ temperature, age }) => {
    const x = Math.min(coldRange.high, Temperature.in(temperature, "°C")) / 100;
    return age / Math.max(1, ((-2.8117 * x + 4.1916) * x - 2.4941) * x + 1.4054);
  },
});

/** What copper wires carry for hours, amperes by American gauge: insulation for 75 °C, in air of 30 °C. */
const wireTable: Readonly<Record<number, number>> = {
  18: 10,
  16: 15,
  14: 20,
  12: 25,
  10: 40,
  8: 65,
  6: 95,
  4: 125,
  3: 145,
  2: 170,
  1: 195,
};

/** What a wire on a battery carries, and what may stand in front of it. */
export type BatteryWire = {
  /** The current for hours. */
  readonly carries: Current;
  /** The largest fuse at the battery. */
  readonly fuse: Current;
};

/**
 * What a copper wire on a battery carries for hours, and the largest fuse at its start: 150 % of that.
 *
 * @source 33 CFR 183.425, table 5, and 183.455(c)(1) for circuits below 50 V
 * @throws Refusal for a gauge that is not in the table
 * @example batteryWire({ gauge: 12 }) // carries 25 A, fuse 37.5 A
 */
export const batteryWire: Formula<{ readonly gauge: number }, BatteryWire> = formula<
  { readonly gauge: number },
  BatteryWire
>({
  id: "power.dc.wire",
  title: "What a wire on a battery carries",
  equation: String.raw`I_f=1.5\,I_w`,
  inputs: { gauge: { symbol: "n", kind: Count, meaning: "American gauge" } },
  result: {
    carries: { symbol: "I_w", kind: Current, meaning: "for hours" },
    fuse: { symbol: "I_f", kind: Current, meaning: "fuse at most" },
  },
  source: [cite("cfr-183", "183.425, table 5, insulation for 75 °C; 183.455, fuses below 50 V")],
  validity:
    "Stranded copper below 50 V, insulation for 75 °C, one wire in air of 30 °C; a smaller fuse is safer still.",
  refuse: ({ gauge }) =>
    wireTable[gauge] === undefined
      ? [`gauge must be one of ${Object.keys(wireTable).reverse().join(", ")}, got ${gauge}`]
      : [],
  compute: ({ gauge }) => {
    const carries = wireTable[gauge] ?? Number.NaN;
    return { carries, fuse: 1.5 * carries };
  },
});
