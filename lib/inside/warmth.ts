/** How warm it gets inside, and how soon. */
import { type Formula, formula } from "../formula.js";
import {
  Area,
  Length,
  listOf,
  Power,
  Ratio,
  recordOf,
  standardGravity,
  Temperature,
  Time,
} from "../quantity/index.js";
import { cite } from "../source.js";
import { airHeat } from "./air.js";
import {
  AirFlow,
  HeatCapacity,
  HeatConductance,
  HeatConductivity,
  HeatResistance,
  TemperatureRise,
  Transmittance,
} from "./kinds.js";

/** One layer of a wall. */
export interface WallLayer {
  /** Of the layer. */
  readonly thickness: Length;
  /** Of its stuff: plywood 0.13, laminate 0.25. */
  readonly conductivity: HeatConductivity;
}

/** A wall with still air on both sides. */
export interface FacedWall {
  /** From inside to outside. */
  readonly layers: readonly WallLayer[];
  /** Of the air inside. */
  readonly insideFilm: HeatResistance;
  /** Of the air outside. */
  readonly outsideFilm: HeatResistance;
}

/** Air at an upright wall indoors. ISO 6946, table 7, horizontal flow. */
export const stillFilm: HeatResistance = HeatResistance.si(0.13);

/**
 * Heat through a faced wall, for each square metre and degree: 1 / (Ri + sum(t/k) + Ro).
 *
 * @source ISO 6946, 6.7
 * @throws RangeError for a layer without thickness or conductivity
 */
export const wallTransmittance: Formula<FacedWall, Transmittance> = formula<FacedWall, Transmittance>({
  id: "heat.wall",
  title: "Heat through a faced wall",
  equation: String.raw`U=\frac{1}{R_i+\sum t/k+R_o}`,
  inputs: {
    layers: {
      symbol: "t, k",
      kind: listOf(recordOf<WallLayer>("layer", { thickness: Length, conductivity: HeatConductivity })),
      meaning: "layers",
    },
    insideFilm: { symbol: "R_i", kind: HeatResistance, meaning: "air inside", above: 0 },
    outsideFilm: { symbol: "R_o", kind: HeatResistance, meaning: "air outside", above: 0 },
  },
  result: { symbol: "U", kind: Transmittance, meaning: "heat per area and degree" },
  source: [cite("iso-6946", "6.7, total thermal resistance"), cite("heat-transfer", "layers in a row")],
  validity: "In the shade. Sun on a dark side can add 20 K by itself.",
  refuse: ({ layers }) =>
    layers.every(({ thickness, conductivity }) => thickness > 0 && conductivity > 0)
      ? []
      : ["each layer has a thickness and a conductivity"],
  compute: ({ layers, insideFilm, outsideFilm }) =>
    1 /
    layers.reduce(
      (sum, { thickness, conductivity }) => sum + thickness / conductivity,
      insideFilm + outsideFilm,
    ),
});

/**
 * Heat that walls pass for each degree: U A.
 *
 * @source heat transfer
 * @throws RangeError unless both are positive
 */
export const wallConductance: Formula<
  { readonly transmittance: Transmittance; readonly area: Area },
  HeatConductance
> = formula({
  id: "heat.wall.conductance",
  title: "Heat through the walls for each degree",
  equation: "G=UA",
  inputs: {
    transmittance: { symbol: "U", kind: Transmittance, meaning: "heat per area and degree", above: 0 },
    area: { symbol: "A", kind: Area, meaning: "walls", above: 0 },
  },
  result: { symbol: "G", kind: HeatConductance, meaning: "heat for each degree" },
  source: [cite("heat-transfer", "conduction")],
  validity: "Walls alike, with free air outside: a side against a wall passes little.",
  compute: ({ transmittance, area }) => transmittance * area,
});

/** A case with a known stream of air. */
export interface SteadyHeat {
  /** All that turns to heat inside. */
  readonly power: Power;
  /** Through the walls. */
  readonly conductance: HeatConductance;
  /** Through vents or a fan; 0 for a shut case. */
  readonly flow: AirFlow;
}

/**
 * How much warmer it ends inside than outside: P / (UA + rho c Q).
 *
 * @source heat transfer, heat balance
 * @throws RangeError for a negative power, or walls that pass nothing
 */
export const steadyRise: Formula<SteadyHeat, TemperatureRise> = formula({
  id: "heat.steady",
  title: "How warm it gets in the end",
  equation: String.raw`\Delta T=\frac{P}{UA+\rho c_p Q}`,
  inputs: {
    power: { symbol: "P", kind: Power, meaning: "heat inside", min: 0 },
    conductance: { symbol: "UA", kind: HeatConductance, meaning: "through the walls", above: 0 },
    flow: { symbol: "Q", kind: AirFlow, meaning: "air through the case", min: 0 },
  },
  result: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "rise over the outside" },
  source: [cite("heat-transfer", "heat balance")],
  validity: "Well mixed air near sea level, in the shade, after some hours.",
  compute: ({ power, conductance, flow }) => power / (conductance + airHeat * flow),
});

/** A case with vents at two heights and no fan. */
export interface VentedHeat {
  /** All that turns to heat inside. */
  readonly power: Power;
  /** Through the walls. */
  readonly conductance: HeatConductance;
  /** Both vents as one opening. */
  readonly area: Area;
  /** Share of the free area that a jet fills. */
  readonly discharge: Ratio;
  /** Between the vents. */
  readonly apart: Length;
  /** Of the air. */
  readonly outside: Temperature;
}

/** Warmth of a vented case. */
export type VentedWarmth = {
  /** Over the outside. */
  readonly rise: TemperatureRise;
  /** Through the vents. */
  readonly flow: AirFlow;
};

/**
 * Rise and draught of a vented case, each driving the other: P = UA dT + rho c C A sqrt(2 g H dT/Ti) dT.
 *
 * @source heat balance with ASHRAE's stack flow, both vents as one opening over their whole height
 * @throws RangeError unless walls and vents pass something
 */
export const ventedRise: Formula<VentedHeat, VentedWarmth> = formula<VentedHeat, VentedWarmth>({
  id: "heat.vented",
  title: "How warm a vented case gets",
  equation: String.raw`P=UA\,\Delta T+\rho c_p\,C_D A\sqrt{2gH\frac{\Delta T}{T_o+\Delta T}}\ \Delta T`,
  inputs: {
    power: { symbol: "P", kind: Power, meaning: "heat inside", min: 0 },
    conductance: { symbol: "UA", kind: HeatConductance, meaning: "through the walls", above: 0 },
    area: { symbol: "A", kind: Area, meaning: "vents as one opening", above: 0 },
    discharge: { symbol: "C_D", kind: Ratio, meaning: "discharge factor", above: 0, max: 1 },
    apart: { symbol: "H", kind: Length, meaning: "between the vents", above: 0 },
    outside: { symbol: "T_o", kind: Temperature, meaning: "outside", above: 0 },
  },
  result: {
    rise: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "rise over the outside" },
    flow: { symbol: "Q", kind: AirFlow, meaning: "air through the vents" },
  },
  source: [cite("heat-transfer", "heat balance"), cite("ashrae", "p. 25.13, eq. 37")],
  validity: "Still air, vents free on both sides, well mixed inside.",
  compute: ({ power, conductance, area, discharge, apart, outside }) => {
    const flowAt = (rise: number): number =>
      discharge * area * Math.sqrt((2 * standardGravity * apart * rise) / (outside + rise));
    const rise = rootOf((one) => (conductance + airHeat * flowAt(one)) * one - power, power / conductance);
    return { rise, flow: flowAt(rise) };
  },
});

/** Where a rising function crosses zero between 0 and a bound, by halving. */
function rootOf(value: (at: number) => number, bound: number): number {
  let [low, high] = [0, bound];
  for (let step = 0; step < 100; step++) {
    const middle = (low + high) / 2;
    if (value(middle) > 0) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

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
  equation: String.raw`\Delta T(t)=\Delta T_\infty\left(1-e^{-tG/C}\right)`,
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
