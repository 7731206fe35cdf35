/** Properties of solid wood that follow from the tabulated ones. */
import { type Formula, formula } from "../formula.js";
import { Density, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

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
