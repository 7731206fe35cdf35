/** Quantities that only the inside of a case needs. */
import { type Quantity, type QuantityKind, quantityKind } from "../quantity/index.js";

/** 1/s */
export type Frequency = Quantity<"frequency">;
export const Frequency: QuantityKind<"frequency"> = quantityKind({
  name: "frequency",
  units: { Hz: 1, "1/min": 1 / 60 },
  metric: ["Hz"],
  inch: ["Hz"],
  example: "12 Hz",
});

/** m above the sea */
export type Altitude = Quantity<"altitude">;
export const Altitude: QuantityKind<"altitude"> = quantityKind({
  name: "altitude",
  units: { m: 1, ft: 0.3048 },
  metric: ["m"],
  inch: ["ft"],
  example: "900 m or 3000 ft",
});

/** m3/s */
export type AirFlow = Quantity<"air flow">;
export const AirFlow: QuantityKind<"air flow"> = quantityKind({
  name: "air flow",
  units: { "m3/s": 1, "m3/h": 1 / 3600, "L/s": 0.001, cfm: 0.3048 ** 3 / 60 },
  metric: ["m3/h"],
  inch: ["cfm"],
  example: "90 m3/h or 50 cfm",
});

/** K of difference, never a temperature; a Fahrenheit degree of difference is 5/9 of it */
export type TemperatureRise = Quantity<"temperature rise">;
export const TemperatureRise: QuantityKind<"temperature rise"> = quantityKind({
  name: "temperature rise",
  units: { K: 1, "F°": 5 / 9 },
  metric: ["K"],
  inch: ["F°"],
  example: "10 K or 18 F°",
});

/** W/K */
export type HeatConductance = Quantity<"heat conductance">;
export const HeatConductance: QuantityKind<"heat conductance"> = quantityKind({
  name: "heat conductance",
  units: { "W/K": 1 },
  metric: ["W/K"],
  inch: ["W/K"],
  example: "6 W/K",
});

/** m2 K/W; of a wall or of the air at its face */
export type HeatResistance = Quantity<"thermal resistance">;
export const HeatResistance: QuantityKind<"thermal resistance"> = quantityKind({
  name: "thermal resistance",
  units: { "m2K/W": 1, "m2·K/W": 1 },
  metric: ["m2K/W"],
  inch: ["m2K/W"],
  example: "0.13 m2K/W",
});

/** W/(m K) */
export type HeatConductivity = Quantity<"thermal conductivity">;
export const HeatConductivity: QuantityKind<"thermal conductivity"> = quantityKind({
  name: "thermal conductivity",
  units: { "W/mK": 1 },
  metric: ["W/mK"],
  inch: ["W/mK"],
  example: "0.13 W/mK",
});

/** W/(m2 K) */
export type Transmittance = Quantity<"thermal transmittance">;
export const Transmittance: QuantityKind<"thermal transmittance"> = quantityKind({
  name: "thermal transmittance",
  units: { "W/m2K": 1 },
  metric: ["W/m2K"],
  inch: ["W/m2K"],
  example: "3.2 W/m2K",
});

/** W/m2; sunshine on a face that looks straight into the sun */
export type Irradiance = Quantity<"irradiance">;
export const Irradiance: QuantityKind<"irradiance"> = quantityKind({
  name: "irradiance",
  units: { "W/m2": 1, "Btu/hft2": 1055.05585262 / 3600 / 0.3048 ** 2 },
  metric: ["W/m2"],
  inch: ["W/m2"],
  example: "900 W/m2",
});

/** J/K */
export type HeatCapacity = Quantity<"heat capacity">;
export const HeatCapacity: QuantityKind<"heat capacity"> = quantityKind({
  name: "heat capacity",
  units: { "J/K": 1, "kJ/K": 1000 },
  metric: ["J/K", "kJ/K"],
  inch: ["J/K", "kJ/K"],
  example: "25 kJ/K",
});

/** ohm */
export type Resistance = Quantity<"resistance">;
export const Resistance: QuantityKind<"resistance"> = quantityKind({
  name: "resistance",
  units: { Ω: 1, ohm: 1, mohm: 0.001 },
  metric: ["mohm", "ohm"],
  inch: ["mohm", "ohm"],
  example: "0.4 ohm",
});
