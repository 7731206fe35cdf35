/** How hard a fastener's shank may press on the side of its hole in wood. */
import { type Formula, formula } from "../formula.js";
import { choice, type Density, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { densityOf, shankDiameter } from "./fastener-symbols.js";

/** A thin fastener through a panel. */
export interface EmbedmentInputs {
  /** Density at 12 % moisture; the low one of a batch for a characteristic strength. */
  readonly density: Density;
  readonly diameter: Length;
}

/**
 * Embedment strength of plywood under a nail or rivet: f_h = 0.11 rho d^-0.3 (MPa, kg/m3, mm), the
 * same in all directions.
 *
 * @throws RangeError for diameters above 8 mm
 * @example plywoodEmbedment(plywoodEmbedment.read({ density: "630 kg/m3", diameter: "3 mm" })) // 49.84 MPa
 */
export const plywoodEmbedment: Formula<EmbedmentInputs, Pressure> = formula({
  id: "plywood.embedment",
  title: "Embedment strength of plywood",
  equation: String.raw`f_h = 0.11\,\rho\,d^{-0.3}`,
  inputs: {
    density: densityOf("plywood"),
    diameter: shankDiameter(0.008),
  },
  result: { symbol: "f_h", kind: Pressure, meaning: "embedment strength, characteristic", unit: "MPa" },
  source: [cite("en-1995", "8.3.1.3, eq. 8.20")],
  validity: "Nails up to 8 mm with heads of at least two diameters; for rivets an estimate.",
  compute: ({ density, diameter }) => 0.11 * density * (diameter * 1000) ** -0.3 * 1e6,
});

/**
 * Embedment strength of solid timber under a nail or a thin screw: f_h = 0.082 rho d^-0.3, drilled
 * 0.082 (1 - 0.01 d) rho (MPa, kg/m3, mm).
 *
 * @throws RangeError for diameters above 8 mm
 * @example timberEmbedment(timberEmbedment.read({ density: "320 kg/m3", diameter: "3 mm", hole: "driven" })) // 18.87 MPa
 */
export const timberEmbedment: Formula<EmbedmentInputs & { readonly hole: "drilled" | "driven" }, Pressure> =
  formula({
    id: "timber.embedment",
    title: "Embedment strength of solid timber",
    equation: String.raw`f_h = 0.082\,\rho\,d^{-0.3}\ \text{(driven)},\quad f_h = 0.082\,(1 - 0.01\,d)\,\rho\ \text{(drilled)}`,
    inputs: {
      density: densityOf("timber"),
      diameter: shankDiameter(0.008),
      hole: { symbol: String.raw`\text{hole}`, kind: choice("hole", ["drilled", "driven"]), meaning: "hole" },
    },
    result: { symbol: "f_h", kind: Pressure, meaning: "embedment strength, characteristic", unit: "MPa" },
    source: [cite("en-1995", "8.3.1.1, eq. 8.15 and 8.16")],
    validity: "Nails, and screws thinner than 6 mm, up to 8 mm; side grain.",
    compute: ({ density, diameter, hole }) => {
      const size = diameter * 1000;
      return 0.082 * density * (hole === "drilled" ? 1 - 0.01 * size : size ** -0.3) * 1e6;
    },
  });

/** A dowel in wood, after the American code. */
export interface DowelBearingInputs {
  /** Oven-dry mass over volume, relative to water. */
  readonly specificGravity: Ratio;
  readonly diameter: Length;
  /** Direction of the load to the grain; makes a difference from 1/4 in up. */
  readonly grain: "along" | "across";
}

/** Below this a dowel bears alike in all directions. */
const quarterInch = Length.of(0.25, "in");

/**
 * Dowel bearing strength of wood: below 1/4 in F_e = 16 600 G^1.84 psi; from there 11 200 G along and
 * 6100 G^1.45 / sqrt(D) across the grain (psi, in).
 *
 * @throws RangeError for a specific gravity outside 0.3 to 0.8 or a diameter above 1 in
 * @example woodDowelBearing(woodDowelBearing.read({ specificGravity: 0.5, diameter: "1/4 in", grain: "along" })) // 38.61 MPa
 */
export const woodDowelBearing: Formula<DowelBearingInputs, Pressure> = formula({
  id: "wood.dowel.bearing",
  title: "Dowel bearing strength of wood",
  equation: String.raw`F_e = 16\,600\,\mathrm{psi}\,G^{1.84}\ \text{(below 1/4 in)},\quad F_e = 11\,200\,\mathrm{psi}\,G\ \text{(along)},\quad F_e = \frac{6100\,\mathrm{psi}\,G^{1.45}}{\sqrt{D}}\ \text{(across)}`,
  inputs: {
    specificGravity: { symbol: "G", kind: Ratio, meaning: "specific gravity, oven-dry", min: 0.3, max: 0.8 },
    diameter: {
      symbol: "D",
      kind: Length,
      meaning: "diameter of the dowel",
      above: 0,
      max: 0.0254,
      unit: "in",
    },
    grain: {
      symbol: String.raw`\text{grain}`,
      kind: choice("grain", ["along", "across"]),
      meaning: "load to the grain",
    },
  },
  result: { symbol: "F_e", kind: Pressure, meaning: "dowel bearing strength" },
  source: [cite("nds", "12.3.3, table 12.3.3")],
  validity: "Side grain of dry wood and plywood; the code prints it rounded to 50 psi.",
  compute: ({ specificGravity, diameter, grain }) => {
    const psi = Pressure.of(1, "psi");
    if (diameter < quarterInch) return 16_600 * specificGravity ** 1.84 * psi;
    if (grain === "along") return 11_200 * specificGravity * psi;
    return ((6100 * specificGravity ** 1.45) / Math.sqrt(Length.in(diameter, "in"))) * psi;
  },
});
