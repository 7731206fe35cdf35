/** How warm a case gets in the end: heat through its walls and its vents. */
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
} from "../quantity/index.js";
import { cite } from "../source.js";
import { airHeat } from "./air.js";
import {
  AirFlow,
  HeatConductance,
  HeatConductivity,
  HeatResistance,
  TemperatureRise,
  Transmittance,
} from "./kinds.js";

/** One layer of a wall. */
export interface WallLayer {
  /** The thickness of the layer. */
  readonly thickness: Length;
  /** The conductivity of the layer's stuff: plywood 0.13, laminate 0.25. */
  readonly conductivity: HeatConductivity;
}

/** A wall with still air on both sides. */
export interface FacedWall {
  /** The layers from inside to outside. */
  readonly layers: readonly WallLayer[];
  /** The heat passed on by the air inside, for each square metre and kelvin. */
  readonly insideFilm: HeatResistance;
  /** The heat passed on by the air outside, for each square metre and kelvin. */
  readonly outsideFilm: HeatResistance;
}

/** Air at an upright wall indoors. ISO 6946, table 7, horizontal flow. */
export const stillFilm: HeatResistance = HeatResistance.si(0.13);

/**
 * Heat through a faced wall, for each square metre and degree: 1 / (Ri + sum(t/k) + Ro).
 *
 * @source ISO 6946, 6.7
 * @throws RangeError for a layer without thickness or conductivity
 * @example wallTransmittance(wallTransmittance.read({ layers: [{ thickness: "13 mm",
 *   conductivity: "0.13 W/mK" }], insideFilm: "0.13 m2K/W", outsideFilm: "0.13 m2K/W" })) // 2.778 W/m2K
 */
export const wallTransmittance: Formula<FacedWall, Transmittance> = formula<FacedWall, Transmittance>({
  id: "heat.wall",
  title: "Heat through a faced wall",
  equation: String.raw`U=\frac{1}{R_i+\sum\frac{t}{k}+R_o}`,
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
 * @example wallConductance(wallConductance.read({ transmittance: "2.5 W/m2K", area: "2 m2" })) // 5 W/K
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

const thinness = {
  symbol: String.raw`\rho/\rho_0`,
  kind: Ratio,
  meaning: "density over that near sea level",
  above: 0,
} as const;

/** A case with a known stream of air. */
export interface SteadyHeat {
  /** All that turns to heat inside. */
  readonly power: Power;
  /** The conductance through the walls. */
  readonly conductance: HeatConductance;
  /** The flow through vents or a fan; 0 for a shut case. */
  readonly flow: AirFlow;
  /** Density of the air over that at sea level, the result of heat.altitude. */
  readonly thinness: Ratio;
}

/**
 * How much warmer it ends inside than outside: P / (UA + rho c Q), with 1.2 kg/m3 and 1006 J/(kg K) near sea level.
 *
 * @source heat transfer, heat balance
 * @throws RangeError for a negative power, or walls that pass nothing
 * @example steadyRise(steadyRise.read({ power: "60 W", conductance: "6 W/K", flow: "0 m3/s", thinness: 1 })) // 10 K
 */
export const steadyRise: Formula<SteadyHeat, TemperatureRise> = formula({
  id: "heat.steady",
  title: "How warm it gets in the end",
  equation: String.raw`\Delta T=\frac{P}{UA+1.2\cdot1006\,(\rho/\rho_0)\,Q}`,
  inputs: {
    power: { symbol: "P", kind: Power, meaning: "heat inside", min: 0 },
    conductance: { symbol: "UA", kind: HeatConductance, meaning: "through the walls", above: 0 },
    flow: { symbol: "Q", kind: AirFlow, meaning: "air through the case", min: 0 },
    thinness,
  },
  result: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "rise over the outside" },
  source: [cite("heat-transfer", "heat balance")],
  validity: "Well mixed air, in the shade, after some hours.",
  compute: ({ power, conductance, flow, thinness }) => power / (conductance + airHeat * thinness * flow),
});

/** A case with vents at two heights and no fan. */
export interface VentedHeat {
  /** All that turns to heat inside. */
  readonly power: Power;
  /** The conductance through the walls. */
  readonly conductance: HeatConductance;
  /** Both vents as one opening. */
  readonly area: Area;
  /** Share of the free area that a jet fills. */
  readonly discharge: Ratio;
  /** The height between the vents. */
  readonly apart: Length;
  /** The temperature of the air outside. */
  readonly outside: Temperature;
  /** Density of the air over that at sea level, the result of heat.altitude. */
  readonly thinness: Ratio;
}

/** Warmth of a vented case. */
export type VentedWarmth = {
  /** The warmth inside over outside. */
  readonly rise: TemperatureRise;
  /** The flow through the vents. */
  readonly flow: AirFlow;
};

/**
 * Rise and draught of a vented case, each driving the other: P = UA dT + rho c C A sqrt(2 g H dT/Ti) dT.
 *
 * @source heat balance with ASHRAE's stack flow, both vents as one opening over their whole height
 * @throws RangeError unless walls and vents pass something
 * @example ventedRise(ventedRise.read({ power: "0 W", conductance: "5 W/K", area: "50 cm2", discharge: 0.65,
 *   apart: "0.4 m", outside: "298.15 K", thinness: 1 })) // rise 0 K, flow 0 m3/h
 */
export const ventedRise: Formula<VentedHeat, VentedWarmth> = formula<VentedHeat, VentedWarmth>({
  id: "heat.vented",
  title: "How warm a vented case gets",
  equation: String.raw`P=UA\,\Delta T+1.2\cdot1006\,(\rho/\rho_0)\,C_D A\sqrt{2gH\frac{\Delta T}{T_o+\Delta T}}\ \Delta T`,
  inputs: {
    power: { symbol: "P", kind: Power, meaning: "heat inside", min: 0 },
    conductance: { symbol: "UA", kind: HeatConductance, meaning: "through the walls", above: 0 },
    area: { symbol: "A", kind: Area, meaning: "vents as one opening", above: 0 },
    discharge: { symbol: "C_D", kind: Ratio, meaning: "discharge factor", above: 0, max: 1 },
    apart: { symbol: "H", kind: Length, meaning: "between the vents", above: 0 },
    outside: { symbol: "T_o", kind: Temperature, meaning: "outside", above: 0 },
    thinness,
  },
  result: {
    rise: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "rise over the outside" },
    flow: { symbol: "Q", kind: AirFlow, meaning: "air through the vents" },
  },
  source: [cite("heat-transfer", "heat balance"), cite("ashrae", "p. 25.13, eq. 37")],
  validity: "Still air, vents free on both sides, well mixed inside.",
  compute: ({ power, conductance, area, discharge, apart, outside, thinness }) => {
    const flowAt = (rise: number): number =>
      discharge * area * Math.sqrt((2 * standardGravity * apart * rise) / (outside + rise));
    const rise = rootOf(
      (one) => (conductance + airHeat * thinness * flowAt(one)) * one - power,
      power / conductance,
    );
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
