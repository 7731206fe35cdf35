/** How soon it gets warm. */
import { type Formula, formula } from "../formula.js";
import { listOf, recordOf, Time } from "../quantity/index.js";
import { cite } from "../source.js";
import { HeatCapacity, HeatConductance, TemperatureRise } from "./kinds.js";

/** A case that has just been switched on. */
export interface WarmUp {
  /** In the end. */
  readonly finalRise: TemperatureRise;
  /** Of air, things and walls together. */
  readonly capacity: HeatCapacity;
  /** All heat out for each degree, walls and air. */
  readonly conductance: HeatConductance;
  /** Since it was switched on. */
  readonly time: Time;
}

/**
 * How warm it is after a while: final rise x (1 - exp(-t G / C)).
 *
 * @source heat transfer, one lump
 * @throws RangeError for a negative time, or a capacity or conductance that is not positive
 */
export const warmUp: Formula<WarmUp, TemperatureRise> = formula({
  id: "heat.warm.up",
  title: "How warm it is after a while",
  equation: String.raw`\Delta T=\Delta T_\infty\left(1-e^{-tG/C}\right)`,
  inputs: {
    finalRise: {
      symbol: String.raw`\Delta T_\infty`,
      kind: TemperatureRise,
      meaning: "rise in the end",
      min: 0,
    },
    capacity: { symbol: "C", kind: HeatCapacity, meaning: "heat capacity", above: 0 },
    conductance: { symbol: "G", kind: HeatConductance, meaning: "heat out for each degree", above: 0 },
    time: { symbol: "t", kind: Time, meaning: "time", min: 0 },
  },
  result: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "rise by then" },
  source: [cite("heat-transfer", "lumped capacity")],
  validity: "All inside warms together; a chip warms in seconds, its case in an hour.",
  compute: ({ finalRise, capacity, conductance, time }) =>
    finalRise * (1 - Math.exp((-time * conductance) / capacity)),
});

/** One reading of a thermometer inside, with one outside. */
export interface WarmReading {
  /** Since it was switched on. */
  readonly time: Time;
  /** Inside over outside. */
  readonly rise: TemperatureRise;
}

/** A curve through the readings. */
export type WarmFit = {
  /** In the end. */
  readonly finalRise: TemperatureRise;
  /** To 63 % of it. */
  readonly timeConstant: Time;
  /** Root mean square distance of the readings from the curve. */
  readonly scatter: TemperatureRise;
};

/**
 * Final rise and time constant from a builder's own log: the least squares curve A (1 - exp(-t/tau)).
 *
 * @source least squares; for each tau the best A is exact, and tau is found by narrowing
 * @throws RangeError for fewer than three readings, or readings that do not spread over time
 */
export const fitWarmUp: Formula<{ readonly readings: readonly WarmReading[] }, WarmFit> = formula<
  { readonly readings: readonly WarmReading[] },
  WarmFit
>({
  id: "heat.log.fit",
  title: "Warm-up curve through a temperature log",
  equation: String.raw`\min_{A,\tau}\sum_i\left(\Delta T_i-A(1-e^{-t_i/\tau})\right)^2`,
  inputs: {
    readings: {
      symbol: String.raw`t_i, \Delta T_i`,
      kind: listOf(recordOf<WarmReading>("reading", { time: Time, rise: TemperatureRise })),
      meaning: "readings",
    },
  },
  result: {
    finalRise: { symbol: "A", kind: TemperatureRise, meaning: "rise in the end" },
    timeConstant: { symbol: String.raw`\tau`, kind: Time, meaning: "time constant" },
    scatter: { symbol: "s", kind: TemperatureRise, meaning: "scatter about the curve" },
  },
  source: [cite("statistical-tables", "least squares, any text"), cite("heat-transfer", "lumped capacity")],
  validity: "Switched on once and left alone; log until it hardly rises any more.",
  refuse: ({ readings }) => [
    ...(readings.length >= 3 ? [] : [`at least 3 readings, got ${readings.length}`]),
    ...(readings.every(({ time }) => time >= 0) ? [] : ["times must not be negative"]),
    ...(new Set(readings.filter(({ time }) => time > 0).map(({ time }) => time)).size >= 2
      ? []
      : ["at least 2 different times after the start"]),
  ],
  warn: ({ readings }, { timeConstant }) =>
    Math.max(...readings.map(({ time }) => time)) < 2 * timeConstant
      ? ["the log ends while it still rises: the final rise is a guess"]
      : [],
  compute: ({ readings }) => {
    const fit = (constant: number): { height: number; squares: number } => {
      const shape = readings.map(({ time }) => 1 - Math.exp(-time / constant));
      const over = shape.reduce((sum, one) => sum + one ** 2, 0);
      const height = shape.reduce((sum, one, i) => sum + one * (readings[i]?.rise ?? 0), 0) / over;
      return {
        height,
        squares: readings.reduce((sum, { rise }, i) => sum + (rise - height * (shape[i] ?? 0)) ** 2, 0),
      };
    };
    const longest = Math.max(...readings.map(({ time }) => time));
    const timeConstant = leastOf((constant) => fit(constant).squares, longest / 100, longest * 10);
    const { height, squares } = fit(timeConstant);
    return { finalRise: height, timeConstant, scatter: Math.sqrt(squares / readings.length) };
  },
});

/** Where a function of one valley is least, by a coarse look and narrowing, on even factors. */
function leastOf(value: (at: number) => number, low: number, high: number): number {
  const steps = 60;
  const at = (i: number): number => low * (high / low) ** (i / steps);
  const best = Array.from({ length: steps + 1 }, (_, i) => i).reduce(
    (least, i) => (value(at(i)) < value(at(least)) ? i : least),
    0,
  );
  let [left, right] = [Math.log(at(Math.max(0, best - 1))), Math.log(at(Math.min(steps, best + 1)))];
  for (let step = 0; step < 80; step++) {
    const [one, other] = [left + (right - left) / 3, right - (right - left) / 3];
    if (value(Math.exp(one)) < value(Math.exp(other))) right = other;
    else left = one;
  }
  return Math.exp((left + right) / 2);
}
