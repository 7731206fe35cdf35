/** Solid wood: the table of species, and what follows from its figures. */

import { type Formula, formula } from "../formula.js";
import { Density, Pressure, Ratio } from "../quantity/index.js";
import { cite, type Known } from "../source.js";

/** A value with how it is known. */
export interface Sourced<T> {
  /** The value itself. */
  readonly value: T;
  /** How the value is known. */
  readonly known: Known;
}

/** Read in a copy of the source. */
export function seen<T>(value: T): Sourced<T> {
  return { value, known: "seen" };
}

/** Recalled; measure it where it matters. */
export function recalled<T>(value: T): Sourced<T> {
  return { value, known: "memory" };
}

/** A rule of the trade. */
export function customary<T>(value: T): Sourced<T> {
  return { value, known: "common practice" };
}

/** Small clear specimens, mean values: a board is weaker, and one board differs from the next by a fifth. */
export interface Species {
  /** Oven-dry mass over volume at 12 % moisture, against water. */
  readonly specificGravity: Sourced<Ratio>;
  /** Modulus of rupture in bending. */
  readonly bendingStrength: Sourced<Pressure>;
  /** Bending modulus as the table has it, a little low since it contains the sag from shear. */
  readonly bendingModulus: Sourced<Pressure>;
  /** Shear strength along the grain. */
  readonly shearStrength: Sourced<Pressure>;
}

function row(
  gravity: Sourced<number>,
  strength: Sourced<number>,
  modulus: Sourced<number>,
  shear: Sourced<number>,
): Species {
  return {
    specificGravity: { ...gravity, value: Ratio.si(gravity.value) },
    bendingStrength: { ...strength, value: Pressure.of(strength.value, "MPa") },
    bendingModulus: { ...modulus, value: Pressure.of(modulus.value, "GPa") },
    shearStrength: { ...shear, value: Pressure.of(shear.value, "MPa") },
  };
}

/** A species of the table. */
export type SpeciesName =
  | "yellow birch"
  | "sweet birch"
  | "paper birch"
  | "red maple"
  | "sugar maple"
  | "yellow-poplar"
  | "quaking aspen"
  | "basswood"
  | "american beech"
  | "white ash"
  | "northern red oak"
  | "douglas-fir"
  | "shortleaf pine"
  | "slash pine"
  | "ponderosa pine"
  | "red pine"
  | "virginia pine"
  | "western white pine"
  | "sugar pine"
  | "spruce pine"
  | "longleaf pine"
  | "loblolly pine"
  | "sitka spruce";

/** Every species, by name. */
export const species: Readonly<Record<SpeciesName, Species>> = {
  "yellow birch": row(seen(0.62), seen(114), seen(13.9), seen(13.0)),
  "sweet birch": row(seen(0.65), recalled(117), seen(15.0), seen(15.4)),
  "paper birch": row(seen(0.55), recalled(85), seen(11.0), seen(8.3)),
  "red maple": row(seen(0.54), recalled(92), seen(11.3), recalled(12.8)),
  "sugar maple": row(recalled(0.63), recalled(109), recalled(12.6), recalled(16.1)),
  "yellow-poplar": row(recalled(0.42), recalled(70), recalled(10.9), recalled(8.2)),
  "quaking aspen": row(seen(0.38), recalled(58), seen(8.1), seen(5.9)),
  basswood: row(seen(0.37), recalled(60), seen(10.1), seen(6.8)),
  "american beech": row(seen(0.64), recalled(103), seen(11.9), seen(13.9)),
  "white ash": row(seen(0.6), recalled(103), seen(12.0), seen(13.2)),
  "northern red oak": row(recalled(0.63), recalled(99), recalled(12.5), recalled(12.3)),
  "douglas-fir": row(seen(0.48), recalled(85), recalled(13.4), recalled(7.8)),
  "shortleaf pine": row(seen(0.51), seen(90), seen(12.1), seen(9.6)),
  "slash pine": row(seen(0.59), seen(112), seen(13.7), seen(11.6)),
  "ponderosa pine": row(seen(0.4), seen(65), seen(8.9), seen(7.8)),
  "red pine": row(seen(0.46), seen(76), seen(11.2), seen(8.4)),
  "virginia pine": row(seen(0.48), seen(90), seen(10.5), seen(9.3)),
  "western white pine": row(recalled(0.38), seen(67), seen(10.1), seen(7.2)),
  "sugar pine": row(seen(0.36), seen(57), seen(8.2), seen(7.8)),
  "spruce pine": row(seen(0.44), seen(72), seen(8.5), seen(10.3)),
  "longleaf pine": row(recalled(0.59), recalled(100), recalled(13.7), recalled(10.4)),
  "loblolly pine": row(seen(0.51), recalled(88), recalled(12.3), recalled(9.6)),
  "sitka spruce": row(seen(0.4), recalled(70), recalled(10.8), recalled(7.9)),
};

/** Moduli as shares of the modulus along the grain: T across the rings' radius, R along it, L along the grain. */
export interface ElasticRatios {
  /** E_T / E_L: in the face of a peeled veneer, across the grain. */
  readonly tangential: Sourced<Ratio>;
  /** E_R / E_L: in the face of a quarter-sliced veneer, across the grain. */
  readonly radial: Sourced<Ratio>;
  /** G_LR / E_L: shear in the face of a quarter-sliced veneer. */
  readonly shearRadial: Sourced<Ratio>;
  /** G_LT / E_L: shear in the face of a peeled veneer. */
  readonly shearTangential: Sourced<Ratio>;
  /** Poisson's ratio LT: pulled along the grain, narrowing along the rings. */
  readonly poisson: Sourced<Ratio>;
}

function ratioRow(
  tangential: number,
  radial: number,
  shearRadial: number,
  shearTangential: number,
  poisson: Sourced<number> = customary(0.4),
): ElasticRatios {
  return {
    tangential: recalled(Ratio.si(tangential)),
    radial: recalled(Ratio.si(radial)),
    shearRadial: recalled(Ratio.si(shearRadial)),
    shearTangential: recalled(Ratio.si(shearTangential)),
    poisson: { ...poisson, value: Ratio.si(poisson.value) },
  };
}

/** A species whose ratios are tabulated. */
export type VeneerSpecies = Extract<
  SpeciesName,
  | "yellow birch"
  | "douglas-fir"
  | "yellow-poplar"
  | "red maple"
  | "sugar maple"
  | "loblolly pine"
  | "longleaf pine"
  | "sitka spruce"
  | "basswood"
>;

/** The ratios, by species. */
export const elasticRatios: Readonly<Record<VeneerSpecies, ElasticRatios>> = {
  "yellow birch": ratioRow(0.05, 0.078, 0.074, 0.068, recalled(0.451)),
  "douglas-fir": ratioRow(0.05, 0.068, 0.064, 0.078, recalled(0.449)),
  "yellow-poplar": ratioRow(0.043, 0.092, 0.075, 0.069),
  "red maple": ratioRow(0.067, 0.14, 0.133, 0.074),
  "sugar maple": ratioRow(0.065, 0.132, 0.111, 0.063),
  "loblolly pine": ratioRow(0.078, 0.113, 0.082, 0.081),
  "longleaf pine": ratioRow(0.055, 0.102, 0.071, 0.06),
  "sitka spruce": ratioRow(0.043, 0.078, 0.064, 0.061),
  basswood: ratioRow(0.027, 0.066, 0.056, 0.046),
};

/** What the handbook tabulates. */
export interface TabulatedModulus {
  /** Bending modulus of small clear specimens. */
  readonly bendingModulus: Pressure;
}

/**
 * Modulus along the grain without the sag from shear that the bending test contains.
 *
 * @example modulusAlong(modulusAlong.read({ bendingModulus: "13.9 GPa" })) // 15.29 GPa
 */
export const modulusAlong: Formula<TabulatedModulus, Pressure> = formula<TabulatedModulus, Pressure>({
  id: "wood.modulus.along",
  title: "Modulus along the grain from the tabulated bending modulus",
  equation: String.raw`E_L = 1.10\,\mathrm{MOE}`,
  inputs: {
    bendingModulus: {
      symbol: String.raw`\mathrm{MOE}`,
      kind: Pressure,
      meaning: "bending modulus",
      above: 0,
    },
  },
  result: { symbol: "E_L", kind: Pressure, meaning: "modulus along the grain" },
  source: [cite("wood-handbook", "ch. 5, note to table 5-1")],
  validity:
    "Clear wood tested as a simply supported beam with a span of about 14 depths. Recalled, not read.",
  compute: ({ bendingModulus }) => 1.1 * bendingModulus,
});

/** A piece of wood and how wet it is. */
export interface WoodMoisture {
  /** Oven-dry mass over volume at this moisture, against water. */
  readonly specificGravity: Ratio;
  /** Mass of water over oven-dry mass. */
  readonly moisture: Ratio;
}

/**
 * Density of wood with the water in it.
 *
 * @example woodDensity(woodDensity.read({ specificGravity: 0.62, moisture: "12 %" })) // 694.4 kg/m3
 */
export const woodDensity: Formula<WoodMoisture, Density> = formula<WoodMoisture, Density>({
  id: "wood.density",
  title: "Density of wood with the water in it",
  equation: String.raw`\rho = 1000\,G\,(1+M)`,
  inputs: {
    specificGravity: { symbol: "G", kind: Ratio, meaning: "specific gravity", above: 0, max: 1.5 },
    moisture: { symbol: "M", kind: Ratio, meaning: "moisture content", min: 0, max: 2 },
  },
  result: { symbol: String.raw`\rho`, kind: Density, meaning: "density" },
  source: [cite("wood-handbook", "ch. 4, density of wood; table 4-6a")],
  validity: "Specific gravity must be on the volume at the same moisture; the tables are for 12 %.",
  compute: ({ specificGravity, moisture }) => 1000 * specificGravity * (1 + moisture),
});
