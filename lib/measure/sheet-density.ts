import { type Formula, formula } from "../formula.js";
import { AreaDensity, Density, Length, Mass } from "../quantity/index.js";
import { cite } from "../source.js";

/** A rectangular offcut on the scale. */
export interface OffcutInputs {
  readonly length: Length;
  readonly width: Length;
  readonly thickness: Length;
  readonly mass: Mass;
}

/** What a sheet weighs. */
export type SheetWeight = {
  readonly density: Density;
  /** Of the whole thickness. */
  readonly massPerArea: AreaDensity;
};

/**
 * Density and mass per area of a sheet from a rectangular offcut: rho = m / (l b t), m / A = m / (l b).
 * Larger offcuts give truer figures: an edge cut 1 mm wrong on 100 mm is 1 %.
 *
 * @throws RangeError unless every input is positive
 * @example sheetDensity(sheetDensity.read({ length: "12 in", width: "12 in", thickness: "3/4 in",
 *   mass: "2.25 lb" })) // density 576.7 kg/m3, massPerArea 10.99 kg/m2
 */
export const sheetDensity: Formula<OffcutInputs, SheetWeight> = formula<OffcutInputs, SheetWeight>({
  id: "sheet.density",
  title: "Density of a sheet from an offcut",
  equation: String.raw`\rho = \frac{m}{l\,b\,t},\quad \frac{m}{A} = \frac{m}{l\,b}`,
  inputs: {
    length: { symbol: "l", kind: Length, meaning: "length of the offcut", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width of the offcut", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the offcut", above: 0 },
    mass: { symbol: "m", kind: Mass, meaning: "mass of the offcut", above: 0 },
  },
  result: {
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "density" },
    massPerArea: { symbol: "m/A", kind: AreaDensity, meaning: "mass per area" },
  },
  source: [cite("geometry", "mass over volume of a box")],
  validity: "A full rectangular offcut without holes, at the moisture it will have in use.",
  compute: ({ length, width, thickness, mass }) => ({
    density: mass / (length * width * thickness),
    massPerArea: mass / (length * width),
  }),
});
