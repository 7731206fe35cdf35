/** Air that carries heat out of a case: how much, by a fan, and through vents. */
import { type Formula, formula } from "../formula.js";
import {
  Area,
  Density,
  Length,
  Power,
  Pressure,
  Ratio,
  standardGravity,
  Temperature,
} from "../quantity/index.js";
import { cite } from "../source.js";
import { AirFlow, Altitude, TemperatureRise } from "./kinds.js";

/** Heat that a cubic metre of air takes for each degree: density 1.2 kg/m3 times 1006 J/(kg K). */
export const airHeat: number = 1.2 * 1006;

/**
 * Air needed to carry heat away: P / (rho c dT), at 1.2 kg/m3 and 1006 J/(kg K).
 *
 * @source heat transfer, heat balance of a stream
 * @throws RangeError unless the rise is positive
 * @example airNeeded({ power: Power.si(300), rise: TemperatureRise.si(10), thinness: ratio(1) }) // 89.46 m3/h
 */
export const airNeeded: Formula<
  { readonly power: Power; readonly rise: TemperatureRise; readonly thinness: Ratio },
  AirFlow
> = formula({
  id: "heat.air",
  title: "Air that carries heat away",
  equation: String.raw`Q=\frac{P}{1.2\cdot1006\,(\rho/\rho_0)\,\Delta T}`,
  inputs: {
    power: { symbol: "P", kind: Power, meaning: "heat", min: 0 },
    rise: { symbol: String.raw`\Delta T`, kind: TemperatureRise, meaning: "allowed rise", above: 0 },
    thinness: {
      symbol: String.raw`\rho/\rho_0`,
      kind: Ratio,
      meaning: "density over that near sea level",
      above: 0,
    },
  },
  result: { symbol: "Q", kind: AirFlow, meaning: "air" },
  source: [cite("heat-transfer", "heat balance of a stream")],
  validity: "Well mixed air; what stands in a corner gets hotter.",
  compute: ({ power, rise, thinness }) => power / (airHeat * thinness * rise),
});

/**
 * Density of air over that at sea level: (1 - 2.25577e-5 z)^4.25588.
 *
 * @source International Standard Atmosphere
 * @throws RangeError unless the height is from -500 to 11 000 m
 * @example airThinness(airThinness.read({ height: "0 m" })) // 1
 */
export const airThinness: Formula<{ readonly height: Altitude }, Ratio> = formula({
  id: "heat.altitude",
  title: "Thinner air higher up",
  equation: String.raw`\rho/\rho_0=(1-2.25577\cdot10^{-5}z)^{4.25588}`,
  inputs: {
    height: {
      symbol: "z",
      kind: Altitude,
      meaning: "height above the sea",
      min: -500,
      max: 11_000,
      unit: "m",
    },
  },
  result: { symbol: String.raw`\rho/\rho_0`, kind: Ratio, meaning: "share of the density" },
  source: [cite("ashrae", "standard atmosphere")],
  validity: "A standard day.",
  compute: ({ height }) => (1 - 2.25577e-5 * height) ** 4.25588,
});

/** A fan and the openings it blows through. */
export interface FanInCase {
  /** Its flow against nothing. */
  readonly freeFlow: AirFlow;
  /** Its pressure without flow. */
  readonly deadPressure: Pressure;
  /** Share of the free area that a jet fills. */
  readonly discharge: Ratio;
  /** The openings it blows through, as one. */
  readonly area: Area;
  /** The density of the air: 1.2 kg/m3 near sea level. */
  readonly airDensity: Density;
}

/**
 * What a fan moves in its case: where its line from dead pressure to free flow meets the pressure that the openings
 * take, rho/2 (Q / (C A))^2.
 *
 * @source fluid mechanics, operating point of a fan
 * @throws RangeError unless every input is positive
 * @example fanFlow(fanFlow.read({ freeFlow: "0.02 m3/s", deadPressure: "50 Pa", discharge: 1, area: "100 m2", airDensity: "1.2 kg/m3" })) // 72 m3/h
 */
export const fanFlow: Formula<FanInCase, AirFlow> = formula({
  id: "heat.fan",
  title: "What a fan moves in its case",
  equation: String.raw`Q=\frac{2\,p_0}{\frac{p_0}{Q_0}+\sqrt{\left(\frac{p_0}{Q_0}\right)^2+\frac{2\,\rho\,p_0}{(C_D A)^2}}}`,
  inputs: {
    freeFlow: { symbol: "Q_0", kind: AirFlow, meaning: "free flow", above: 0 },
    deadPressure: { symbol: "p_0", kind: Pressure, meaning: "pressure without flow", above: 0 },
    discharge: { symbol: "C_D", kind: Ratio, meaning: "discharge factor", above: 0, max: 1 },
    area: { symbol: "A", kind: Area, meaning: "openings as one", above: 0 },
    airDensity: { symbol: String.raw`\rho`, kind: Density, meaning: "air", above: 0 },
  },
  result: { symbol: "Q", kind: AirFlow, meaning: "air" },
  source: [cite("fluid-flow", "operating point of a fan")],
  validity:
    "A straight fan line, which flatters small axial fans in their middle; use the maker's curve where there is one.",
  compute: ({ freeFlow, deadPressure, discharge, area, airDensity }) => {
    const drag = airDensity / (2 * (discharge * area) ** 2);
    const slope = deadPressure / freeFlow;
    return (2 * deadPressure) / (slope + Math.sqrt(slope ** 2 + 4 * drag * deadPressure));
  },
});

/** Two vents, one above the other. */
export interface VentPair {
  /** Free area of the lower one: what a grille leaves. */
  readonly low: Area;
  /** Free area of the upper one. */
  readonly high: Area;
}

/**
 * The one opening that two in a row come to: 1 / sqrt(1/A1^2 + 1/A2^2).
 *
 * @source ASHRAE Fundamentals, openings in series
 * @throws RangeError unless both are positive
 * @example ventsInRow(ventsInRow.read({ low: "30 cm2", high: "40 cm2" })) // 24 cm2
 */
export const ventsInRow: Formula<VentPair, Area> = formula({
  id: "heat.vents",
  title: "Two vents in a row",
  equation: String.raw`A=\frac{1}{\sqrt{1/A_1^2+1/A_2^2}}`,
  inputs: {
    low: { symbol: "A_1", kind: Area, meaning: "lower vent, free area", above: 0 },
    high: { symbol: "A_2", kind: Area, meaning: "upper vent, free area", above: 0 },
  },
  result: { symbol: "A", kind: Area, meaning: "one opening alike" },
  source: [cite("ashrae", "openings in series"), cite("fluid-flow", "openings in series")],
  validity: "Room between them; a filter counts as a third opening.",
  compute: ({ low, high }) => 1 / Math.sqrt(1 / low ** 2 + 1 / high ** 2),
});

/** Warm air in a vented case. */
export interface Stack {
  /** Share of the free area that a jet fills: 0.6 to 0.65. */
  readonly discharge: Ratio;
  /** One opening. */
  readonly area: Area;
  /**
   * The rise from the level where inside and outside press alike to the middle of the opening: half the way
   * between like vents.
   */
  readonly rise: Length;
  /** The temperature inside. */
  readonly inside: Temperature;
  /** The temperature outside. */
  readonly outside: Temperature;
}

/**
 * Air that warmth drives through an opening: C A sqrt(2 g H (Ti - To) / Ti).
 *
 * @source ASHRAE Fundamentals 1997, p. 25.13, eq. 37
 * @throws RangeError unless the inside is at least as warm as the outside
 * @example stackFlow({ discharge: ratio(0.65), area: Area.si(0.02), rise: mm(500), inside: Temperature.si(308.15), outside: Temperature.si(298.15) }) // 26.4 m3/h
 */
export const stackFlow: Formula<Stack, AirFlow> = formula({
  id: "heat.stack",
  title: "Air driven by warmth",
  equation: String.raw`Q=C_D A\sqrt{2g\,\Delta H\,\frac{T_i-T_o}{T_i}}`,
  inputs: {
    discharge: { symbol: "C_D", kind: Ratio, meaning: "discharge factor", above: 0, max: 1 },
    area: { symbol: "A", kind: Area, meaning: "opening", above: 0 },
    rise: { symbol: String.raw`\Delta H`, kind: Length, meaning: "from the neutral level", min: 0 },
    inside: { symbol: "T_i", kind: Temperature, meaning: "inside", above: 0, unit: "K" },
    outside: { symbol: "T_o", kind: Temperature, meaning: "outside", above: 0, unit: "K" },
  },
  result: { symbol: "Q", kind: AirFlow, meaning: "air" },
  source: [cite("ashrae", "p. 25.13, eq. 37")],
  validity: "Still air outside, openings at two heights; wind may help or hinder.",
  refuse: ({ inside, outside }) => (inside >= outside ? [] : ["inside must be at least as warm as outside"]),
  compute: ({ discharge, area, rise, inside, outside }) =>
    discharge * area * Math.sqrt((2 * standardGravity * rise * (inside - outside)) / inside),
});

/**
 * Discharge factor of the only opening of a case, where air goes in below and out above: 0.40 + 0.0045 (Ti - To).
 *
 * @source ASHRAE Fundamentals 1997, p. 25.13, eq. 38
 * @throws RangeError for a rise below 0 or above 60 K
 * @example onlyVentDischarge(onlyVentDischarge.read({ rise: "0 K" })) // 0.4
 */
export const onlyVentDischarge: Formula<{ readonly rise: TemperatureRise }, Ratio> = formula({
  id: "heat.vents.only",
  title: "Discharge factor of the only opening",
  equation: String.raw`C_D=0.40+0.0045\,\Delta T`,
  inputs: {
    rise: {
      symbol: String.raw`\Delta T`,
      kind: TemperatureRise,
      meaning: "inside over outside",
      min: 0,
      max: 60,
      unit: "K",
    },
  },
  result: { symbol: "C_D", kind: Ratio, meaning: "discharge factor" },
  source: [cite("ashrae", "p. 25.13, eq. 38")],
  validity: "Air going both ways through one opening; the neutral level is at half its height.",
  compute: ({ rise }) => 0.4 + 0.0045 * rise,
});

/** Vents of unlike size. */
export interface NeutralLevel extends VentPair {
  /** The distance between the middles of the two. */
  readonly apart: Length;
  /** The absolute temperature inside over that outside, near 1. */
  readonly warmth: Ratio;
}

/**
 * Height of the neutral level above the lower vent: H / (1 + (A1/A2)^2 Ti/To).
 *
 * @source ASHRAE Fundamentals, neutral pressure level
 * @throws RangeError unless areas, distance and warmth are positive
 * @example neutralLevel(neutralLevel.read({ low: "100 cm2", high: "100 cm2", apart: "1 m", warmth: 1 })) // 500 mm
 */
export const neutralLevel: Formula<NeutralLevel, Length> = formula({
  id: "heat.neutral",
  title: "Level where inside and outside press alike",
  equation: String.raw`h=\frac{H}{1+(A_1/A_2)^2\,T_i/T_o}`,
  inputs: {
    low: { symbol: "A_1", kind: Area, meaning: "lower vent", above: 0 },
    high: { symbol: "A_2", kind: Area, meaning: "upper vent", above: 0 },
    apart: { symbol: "H", kind: Length, meaning: "between the vents", above: 0 },
    warmth: { symbol: "T_i/T_o", kind: Ratio, meaning: "inside over outside, absolute", above: 0 },
  },
  result: { symbol: "h", kind: Length, meaning: "above the lower vent" },
  source: [cite("ashrae", "neutral pressure level, two openings")],
  validity: "Two openings and a case tight elsewhere.",
  compute: ({ low, high, apart, warmth }) => apart / (1 + (low / high) ** 2 * warmth),
});
