/** Cables and circuits. Mains work is for someone licensed to do it. */
import { type Formula, formula } from "../formula.js";
import { Current, Power, Ratio, Voltage } from "../quantity/index.js";
import { cite } from "../source.js";
import { Resistance } from "./kinds.js";

/** Said with everything about mains. */
export const mainsCaution =
  "Mains wiring, plug-in or fixed, is for someone licensed to do it where you are, with a ground-fault device (GFCI, RCD) outdoors. Local code decides; this only tells you what to ask.";

/** A load at the end of a cable. */
export interface CableRun {
  /** Drawn. */
  readonly current: Current;
  /** Of one conductor, one way. */
  readonly oneWay: Resistance;
  /** At the plug. */
  readonly supply: Voltage;
}

/** What a cable takes. */
export type CableDrop = {
  /** Lost there and back. */
  readonly drop: Voltage;
  /** Of the supply. */
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
  validity: "One circuit with nothing else on it, which at a fair you must ask.",
  compute: ({ breaker }) => breaker / 1.25,
});

/** A load on a supply. */
export interface PlugLoad {
  /** Drawn. */
  readonly power: Power;
  /** Of the supply. */
  readonly supply: Voltage;
  /** 1 for lamps and heaters, 0.6 to 0.9 for small power supplies. */
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
