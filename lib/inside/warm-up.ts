/** How soon it gets warm. */
import { type Formula, formula } from "../formula.js";
import { Time } from "../quantity/index.js";
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
  /** In the end. */
  readonly finalRise: TemperatureRise;
  /** That must not be passed. */
  readonly allowed: TemperatureRise;
  /** Of air, things and walls together. */
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
