/** What the sun adds. */
import { type Formula, formula } from "../formula.js";
import { Area, Power, Temperature } from "../quantity/index.js";
import { cite } from "../source.js";
import { HeatResistance, Irradiance, TemperatureRise, Transmittance } from "./kinds.js";

/**
 * Absorptance over the outside film, alpha / h_o, of a facing in the sun: the handbook's greatest values.
 * ASHRAE Fundamentals, sol-air temperatures: 0.15 and 0.30 h ft2 F/Btu.
 */
export const sunTaken: Readonly<Record<"light" | "dark", HeatResistance>> = {
  light: HeatResistance.si(0.026),
  dark: HeatResistance.si(0.052),
};

/** A face in the sun. */
export interface SunlitFace {
  /** The temperature of the air outside. */
  readonly outside: Temperature;
  /** Absorptance over the outside film: sunTaken. */
  readonly taken: HeatResistance;
  /** Square onto the face. */
  readonly sun: Irradiance;
  /** What the face loses to a clear sky: 0 for an upright one, about 4 K for one that lies flat. */
  readonly skyLoss: TemperatureRise;
}

/**
 * Sol-air temperature, the air that would warm a shaded face as sun and air warm this one:
 * T_o + (alpha/h_o) I - skyLoss. A thin face with no heat behind it gets as warm itself.
 *
 * @source ASHRAE Fundamentals, sol-air temperature
 * @throws RangeError for a negative sun, or a share taken that is not positive
 * @example solAir({ outside: Temperature.of(35, "°C"), taken: sunTaken.dark, sun: Irradiance.si(900), skyLoss: TemperatureRise.si(0) }) // 81.8 °C
 */
export const solAir: Formula<SunlitFace, Temperature> = formula({
  id: "heat.sun.air",
  title: "Air as warm as the sun makes a face",
  equation: String.raw`T_e=T_o+\frac{\alpha}{h_o}\,I-\Delta T_s`,
  inputs: {
    outside: { symbol: "T_o", kind: Temperature, meaning: "air outside", above: 0, unit: "°C" },
    taken: {
      symbol: String.raw`\frac{\alpha}{h_o}`,
      kind: HeatResistance,
      meaning: "absorptance over outside film",
      above: 0,
    },
    sun: { symbol: "I", kind: Irradiance, meaning: "sun square onto the face", min: 0 },
    skyLoss: {
      symbol: String.raw`\Delta T_s`,
      kind: TemperatureRise,
      meaning: "lost to the sky",
      min: 0,
      unit: "K",
    },
  },
  result: { symbol: "T_e", kind: Temperature, meaning: "sol-air temperature", unit: "°C" },
  source: [cite("ashrae", "sol-air temperature")],
  validity: "Outdoors with some wind; in still air a dark face gets warmer yet.",
  compute: ({ outside, taken, sun, skyLoss }) => outside + taken * sun - skyLoss,
});

/** Three faces that meet at a corner. */
export interface CornerFaces {
  /** The area of the top, 0 where another section stands on it. */
  readonly top: Area;
  /** Front or back, the larger. */
  readonly front: Area;
  /** Left or right, the larger. */
  readonly side: Area;
}

/**
 * Largest shadow that a box throws, sun square onto it: sqrt(A1^2 + A2^2 + A3^2).
 *
 * @source geometry, projections of a box
 * @throws RangeError for a negative area
 * @example shadowArea(shadowArea.read({ top: "4 m2", front: "3 m2", side: "0 m2" })) // 5 m2
 */
export const shadowArea: Formula<CornerFaces, Area> = formula({
  id: "heat.sun.area",
  title: "Largest shadow of a box",
  equation: String.raw`A=\sqrt{A_1^2+A_2^2+A_3^2}`,
  inputs: {
    top: { symbol: "A_1", kind: Area, meaning: "top", min: 0 },
    front: { symbol: "A_2", kind: Area, meaning: "front or back", min: 0 },
    side: { symbol: "A_3", kind: Area, meaning: "a side", min: 0 },
  },
  result: { symbol: "A", kind: Area, meaning: "largest shadow" },
  source: [cite("geometry", "projections of a box")],
  validity: "The sun wherever it takes hold of most; what the ground throws back is left out.",
  compute: ({ top, front, side }) => Math.hypot(top, front, side),
});

/** Sun on walls. */
export interface SunOnWalls {
  /** The transmittance of the walls. */
  readonly transmittance: Transmittance;
  /** The largest shadow. */
  readonly area: Area;
  /** Sol-air temperature over the air. */
  readonly rise: TemperatureRise;
}

/**
 * Heat that the sun sends through walls: U A (T_e - T_o).
 *
 * @source ASHRAE Fundamentals, sol-air temperature
 * @throws RangeError for a negative area or rise, or walls that pass nothing
 * @example sunHeat(sunHeat.read({ transmittance: "3 W/m2K", area: "0.5 m2", rise: "40 K" })) // 60 W
 */
export const sunHeat: Formula<SunOnWalls, Power> = formula({
  id: "heat.sun.gain",
  title: "Heat that the sun sends in",
  equation: String.raw`P_s=U A\,\Delta T_e`,
  inputs: {
    transmittance: { symbol: "U", kind: Transmittance, meaning: "heat per area and degree", above: 0 },
    area: { symbol: "A", kind: Area, meaning: "walls in the sun, as one square onto it", min: 0 },
    rise: {
      symbol: String.raw`\Delta T_e`,
      kind: TemperatureRise,
      meaning: "sol-air temperature over the air",
      min: 0,
    },
  },
  result: { symbol: "P_s", kind: Power, meaning: "heat from the sun" },
  source: [cite("ashrae", "sol-air temperature"), cite("heat-transfer", "conduction")],
  validity: "Through faced ply, not through windows: the sun behind glass heats far more.",
  compute: ({ transmittance, area, rise }) => transmittance * area * rise,
});
