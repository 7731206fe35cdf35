/** How hard a fastener's shank may press on the side of its hole, and where the shank yields. */
import { type Formula, type FormulaSymbol, formula } from "../formula.js";
import { choice, Density, Force, Length, Moment, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** Diameter of a shank, up to the largest that a rule knows. */
export function shankDiameter(max: number): FormulaSymbol<Length> {
  return { symbol: "d", kind: Length, meaning: "diameter of the shank", above: 0, max, unit: "mm" };
}

/** Density of something a shank presses on. */
export function densitySymbol(what: string): FormulaSymbol<Density> {
  return {
    symbol: String.raw`\rho`,
    kind: Density,
    meaning: `density of the ${what}`,
    above: 0,
    unit: "kg/m3",
  };
}

/** A thin fastener through a panel. */
export interface EmbedmentInputs {
  /** Density at 12 % moisture; the low one of a batch for a characteristic strength. */
  readonly density: Density;
  /** The diameter of the dowel. */
  readonly diameter: Length;
}

/**
 * Embedment strength of plywood under a nail or rivet: f_h = 0.11 rho d^-0.3 (MPa, kg/m3, mm), the
 * same in all directions.
 *
 * @throws Refusal for diameters above 8 mm
 * @example plywoodEmbedment(plywoodEmbedment.read({ density: "630 kg/m3", diameter: "3 mm" })) // 49.84 MPa
 */
export const plywoodEmbedment: Formula<EmbedmentInputs, Pressure> = formula({
  id: "plywood.embedment",
  title: "Embedment strength of plywood",
  equation: String.raw`f_h = 0.11\,\rho\,d^{-0.3}`,
  inputs: {
    density: densitySymbol("plywood"),
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
 * @throws Refusal for diameters above 8 mm
 * @example timberEmbedment(timberEmbedment.read({ density: "320 kg/m3", diameter: "3 mm", hole: "driven" })) // 18.87 MPa
 */
export const timberEmbedment: Formula<EmbedmentInputs & { readonly hole: "drilled" | "driven" }, Pressure> =
  formula({
    id: "timber.embedment",
    title: "Embedment strength of solid timber",
    equation: String.raw`f_h = 0.082\,\rho\,d^{-0.3}\ \text{(driven)},\quad f_h = 0.082\,(1 - 0.01\,d)\,\rho\ \text{(drilled)}`,
    inputs: {
      density: densitySymbol("timber"),
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
  /** The diameter of the dowel. */
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
 * @throws Refusal for a specific gravity outside 0.3 to 0.8 or a diameter above 1 in
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

/** A fastener in a hole in sheet metal. */
export interface MetalBearingInputs {
  /** The diameter of the fastener. */
  readonly diameter: Length;
  /** The thickness of the metal. */
  readonly thickness: Length;
  /** Tensile strength of the metal. */
  readonly tensileStrength: Pressure;
  /** Centre of the hole to the edge towards which it is pulled. */
  readonly edgeDistance: Length;
}

/**
 * Bearing strength of one hole in aluminium: R = min(e, 2 d) t F_tu. Near the edge the metal in front
 * of the fastener shears out, further in it crushes.
 *
 * @throws Refusal when the hole's centre is nearer to the edge than one diameter
 * @example metalBearing(metalBearing.read({ diameter: "4.8 mm", thickness: "1.5 mm", tensileStrength: "200 MPa", edgeDistance: "15 mm" })) // 2.88 kN
 */
export const metalBearing: Formula<MetalBearingInputs, Force> = formula({
  id: "metal.bearing",
  title: "Bearing strength of a hole in aluminium",
  equation: String.raw`R = \min(e,\,2d)\;t\,F_{tu}`,
  inputs: {
    diameter: { symbol: "d", kind: Length, meaning: "diameter of the fastener", above: 0 },
    thickness: { symbol: "t", kind: Length, meaning: "thickness of the metal", above: 0 },
    tensileStrength: { symbol: "F_{tu}", kind: Pressure, meaning: "tensile strength of the metal", above: 0 },
    edgeDistance: { symbol: "e", kind: Length, meaning: "centre of the hole to the edge", above: 0 },
  },
  result: { symbol: "R", kind: Force, meaning: "bearing strength, ultimate" },
  source: [cite("aluminum-design", "J.3.6 and J.4.6, bearing at holes")],
  validity: "Sheet and extrusions; heat beside a weld would lower the tensile strength.",
  refuse: ({ diameter, edgeDistance }) =>
    edgeDistance >= diameter * (1 - 1e-9)
      ? []
      : [
          `edgeDistance must be at least one diameter (${Length.show(diameter)}), got ${Length.show(edgeDistance)}`,
        ],
  compute: ({ diameter, thickness, tensileStrength, edgeDistance }) =>
    Math.min(edgeDistance, 2 * diameter) * thickness * tensileStrength,
});

/** A round shank. */
export interface YieldMomentInputs {
  /** The tensile strength of the wire. */
  readonly tensileStrength: Pressure;
  /** The diameter of a nail; of a screw 1.1 times the diameter under the thread. */
  readonly diameter: Length;
}

/**
 * Bending moment at which a round nail or screw yields: M = 0.3 f_u d^2.6 (N mm, MPa, mm).
 *
 * @example dowelYieldMoment(dowelYieldMoment.read({ tensileStrength: "650 MPa", diameter: "3 mm" })) // 3.393 N·m
 */
export const dowelYieldMoment: Formula<YieldMomentInputs, Moment> = formula({
  id: "dowel.yield.moment",
  title: "Yield moment of a nail or screw",
  equation: String.raw`M_y = 0.3\,f_u\,d^{2.6}`,
  inputs: {
    tensileStrength: {
      symbol: "f_u",
      kind: Pressure,
      meaning: "tensile strength of the wire",
      above: 0,
      unit: "MPa",
    },
    diameter: shankDiameter(0.03),
  },
  result: { symbol: "M_y", kind: Moment, meaning: "yield moment, characteristic", unit: "Nmm" },
  source: [cite("en-1995", "eq. 8.14 and 8.30")],
  validity: "Round steel wire.",
  compute: ({ tensileStrength, diameter }) => 0.3 * (tensileStrength / 1e6) * (diameter * 1000) ** 2.6 * 1e-3,
});
