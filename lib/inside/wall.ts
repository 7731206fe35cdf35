/** Heat through the walls of a case. */
import { type Formula, formula } from "../formula.js";
import { Area, Length, listOf, recordOf } from "../quantity/index.js";
import { cite } from "../source.js";
import { HeatConductance, HeatConductivity, HeatResistance, Transmittance } from "./kinds.js";

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
