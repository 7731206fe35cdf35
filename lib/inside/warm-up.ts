/** How fast a case warms up, and what a log of its warming tells. */
import { type Formula, formula } from "../formula.js";
import { studentFactor } from "../measure/index.js";
import { listOf, Ratio, recordOf, Time } from "../quantity/index.js";
import { cite } from "../source.js";
import { HeatCapacity, HeatConductance, TemperatureRise } from "./kinds.js";

/** A case that has just been switched on. */
export interface WarmUp {
  /** The rise in the end. */
  readonly finalRise: TemperatureRise;
  /** The heat capacity of air, things and walls together. */
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
 * @example warmUp(warmUp.read({ finalRise: "20 K", capacity: "36 kJ/K", conductance: "10 W/K", time: "1 h" })) // 12.64 K
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

/** When a case that warms up gets too warm. */
export interface WarmWait {
  /** The rise in the end. */
  readonly finalRise: TemperatureRise;
  /** That must not be passed. */
  readonly allowed: TemperatureRise;
  /** The heat capacity of air, things and walls together. */
  readonly capacity: HeatCapacity;
  /** All heat out for each degree, walls and air. */
  readonly conductance: HeatConductance;
}

/**
 * How long it takes to a rise: (C/G) ln(A / (A - allowed)).
 *
 * @source heat transfer, one lump, solved for the time
 * @throws RangeError unless the allowed rise is below the final one: else it never gets there
 * @example warmWait(warmWait.read({ finalRise: "20 K", allowed: "0 K", capacity: "36 kJ/K", conductance: "10 W/K" })) // 0 s
 */
export const warmWait: Formula<WarmWait, Time> = formula<WarmWait, Time>({
  id: "heat.warm.wait",
  title: "How long until it is too warm",
  equation: String.raw`t=\frac{C}{G}\ln\frac{\Delta T_\infty}{\Delta T_\infty-\Delta T}`,
  inputs: {
    finalRise: warmUp.declaration.inputs.finalRise,
    allowed: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "rise allowed", min: 0 },
    capacity: warmUp.declaration.inputs.capacity,
    conductance: warmUp.declaration.inputs.conductance,
  },
  result: { symbol: "t", kind: Time, meaning: "until then" },
  source: [cite("heat-transfer", "lumped capacity")],
  validity: "Switched on cold, all inside warming together.",
  refuse: ({ finalRise, allowed }) =>
    allowed < finalRise ? [] : ["allowed must be below finalRise: it never gets that warm"],
  compute: ({ finalRise, allowed, capacity, conductance }) =>
    (capacity / conductance) * Math.log(finalRise / (finalRise - allowed)),
});

/** One reading of a thermometer inside, with one outside. */
export interface WarmReading {
  /** Since it was switched on. */
  readonly time: Time;
  /** The warmth inside over outside. */
  readonly rise: TemperatureRise;
}

/** A curve through the readings. */
export type WarmFit = {
  /** The rise in the end. */
  readonly finalRise: TemperatureRise;
  /** Half the width of its interval at 95 %. */
  readonly riseWithin: TemperatureRise;
  /** The time to 63 % of the final rise. */
  readonly timeConstant: Time;
  /** Half the width of its interval at 95 %. */
  readonly constantWithin: Time;
  /** Root mean square distance of the readings from the curve. */
  readonly scatter: TemperatureRise;
};

/**
 * Final rise and time constant from a builder's own log: the least squares curve A (1 - exp(-t/tau)), each with its
 * interval at 95 % from the scatter of the readings.
 *
 * @source least squares; for each tau the best A is exact, and tau is found by narrowing; intervals from the
 * linearised curve and Student's t
 * @throws RangeError for fewer than three readings, or readings that do not spread over time
 * @example fitWarmUp(fitWarmUp.read({ readings: [{ time: "300 s", rise: "1.4173434471311 K" },
 *   { time: "600 s", rise: "2.432914404837 K" }, { time: "900 s", rise: "3.1606027941428 K" },
 *   { time: "1800 s", rise: "4.3233235838169 K" }, { time: "3600 s", rise: "4.9084218055563 K" }] })) // finalRise 5 K, riseWithin 1.235e-13 K, timeConstant 15 min, constantWithin 5.562e-11 s, scatter 2.836e-14 K
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
    riseWithin: { symbol: String.raw`\pm A`, kind: TemperatureRise, meaning: "known within, at 95 %" },
    timeConstant: { symbol: String.raw`\tau`, kind: Time, meaning: "time constant" },
    constantWithin: { symbol: String.raw`\pm\tau`, kind: Time, meaning: "known within, at 95 %" },
    scatter: { symbol: "s", kind: TemperatureRise, meaning: "scatter about the curve" },
  },
  source: [
    cite("regression-datasets", "nonlinear least squares, linearised intervals"),
    cite("heat-transfer", "lumped capacity"),
  ],
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
    const longest = Math.max(...readings.map(({ time }) => time));
    const timeConstant = leastOf(
      (constant) => bestHeight(readings, constant).squares,
      longest / 100,
      longest * 10,
    );
    const { height, squares } = bestHeight(readings, timeConstant);
    return {
      finalRise: height,
      timeConstant,
      ...within(readings, height, timeConstant, squares),
      scatter: Math.sqrt(squares / readings.length),
    };
  },
});

/** A reading as plain numbers. */
interface Point {
  /** The time since the start, in seconds. */
  readonly time: number;
  /** The rise at that time, in kelvins. */
  readonly rise: number;
}

/** For a time constant the best final rise, and the squares that are left. */
function bestHeight(points: readonly Point[], constant: number): { height: number; squares: number } {
  const shapes = points.map(({ time, rise }) => ({ shape: 1 - Math.exp(-time / constant), rise }));
  const over = shapes.reduce((sum, { shape }) => sum + shape ** 2, 0);
  const height = shapes.reduce((sum, { shape, rise }) => sum + shape * rise, 0) / over;
  return { height, squares: shapes.reduce((sum, { shape, rise }) => sum + (rise - height * shape) ** 2, 0) };
}

/** Half widths of the intervals of height and time constant, from the curve's slopes at the readings. */
function within(
  points: readonly Point[],
  height: number,
  constant: number,
  squares: number,
): { riseWithin: number; constantWithin: number } {
  const slopes = points.map(({ time }) => {
    const left = Math.exp(-time / constant);
    return { byHeight: 1 - left, byConstant: (-height * time * left) / constant ** 2 };
  });
  const sum = (one: keyof (typeof slopes)[number], other: keyof (typeof slopes)[number]): number =>
    slopes.reduce((total, slope) => total + slope[one] * slope[other], 0);
  const [hh, cc, hc] = [
    sum("byHeight", "byHeight"),
    sum("byConstant", "byConstant"),
    sum("byHeight", "byConstant"),
  ];
  const degreesOfFreedom = points.length - 2;
  const factor = studentFactor({ confidence: Ratio.si(0.95), degreesOfFreedom });
  const spread = (squares / degreesOfFreedom / (hh * cc - hc ** 2)) ** 0.5;
  return {
    riseWithin: factor * spread * Math.sqrt(cc),
    constantWithin: factor * spread * Math.sqrt(hh),
  };
}

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
