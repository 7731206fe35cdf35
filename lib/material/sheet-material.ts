/** Sheets that face or edge a case: what they are made of, thickness as sold, growth with heat and humidity. */

import { type Formula, formula } from "../formula.js";
import { choice, Density, type Kind, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite, type Known } from "../source.js";
import { customary, recalled, type Sourced, seen } from "./species.js";

/** One material. */
export interface SheetMaterial {
  /** What the material is, in words. */
  readonly title: string;
  /** The modulus of elasticity. */
  readonly modulus: Pressure;
  /** The Poisson's ratio. */
  readonly poissonRatio: Ratio;
  /** The density. */
  readonly density: Density;
  /** How all three are known. */
  readonly known: Known;
}

/** A material of the table. */
export type SheetMaterialName = "aluminium" | "steel" | "high-pressure laminate";

function row(
  title: string,
  gigapascals: number,
  poissonRatio: number,
  density: number,
  known: Known,
): SheetMaterial {
  return {
    title,
    modulus: Pressure.of(gigapascals, "GPa"),
    poissonRatio: Ratio.si(poissonRatio),
    density: Density.si(density),
    known,
  };
}

/**
 * Modulus, Poisson's ratio, density. The metals are in every engineering table; the laminate figures are
 * the usual floor of the trade and vary with make and direction by a third.
 */
export const sheetMaterials: Readonly<Record<SheetMaterialName, SheetMaterial>> = {
  aluminium: row("aluminium extrusion or sheet", 69, 0.33, 2700, "memory"),
  steel: row("mild steel", 205, 0.29, 7850, "memory"),
  "high-pressure laminate": row("high-pressure decorative laminate", 9, 0.3, 1400, "common practice"),
};

/** One material's growth, free to move. */
export interface Expansion {
  /** What the sheet is, in words. */
  readonly title: string;
  /** A kelvin, as a share. */
  readonly heat: Sourced<Ratio>;
  /** The growth from 0 to 100 % relative humidity, as a share. */
  readonly humidity: Sourced<Ratio>;
}

function growth(title: string, heat: Sourced<number>, humidity: Sourced<number>): Expansion {
  return {
    title,
    heat: { ...heat, value: Ratio.si(heat.value) },
    humidity: { ...humidity, value: Ratio.si(humidity.value) },
  };
}

/** A material of the table. */
export type ExpandingMaterial = "plywood" | "aluminium" | "steel" | "high-pressure laminate" | "ABS";

/**
 * Plywood in its plane 3.4e-6 a degree Fahrenheit and 0.0002 for each tenth of humidity (panel industry);
 * metals from any table; the laminate grows mostly with humidity, more across its sheet than along it.
 */
export const expansions: Readonly<Record<ExpandingMaterial, Expansion>> = {
  plywood: growth("plywood, in its plane", seen(6.1e-6), seen(0.002)),
  aluminium: growth("aluminium extrusion", recalled(23.1e-6), customary(0)),
  steel: growth("mild steel", recalled(12e-6), customary(0)),
  "high-pressure laminate": growth("high-pressure laminate", customary(20e-6), customary(0.007)),
  ABS: growth("ABS sheet", recalled(85e-6), customary(0.002)),
};

/** Surface of the sheet. */
export type SheetSurface = "sanded" | "unsanded";
const SheetSurface: Kind<SheetSurface> = choice("surface", ["sanded", "unsanded"]);

/** A sheet as sold. */
export interface NominalSheet {
  /** The nominal thickness. */
  readonly nominal: Length;
  /** Whether the sheet is sanded. */
  readonly surface: SheetSurface;
}

/** Thickness limits. */
export type ThicknessRange = {
  /** The least thickness. */
  readonly least: Length;
  /** The greatest thickness. */
  readonly greatest: Length;
};

/**
 * Limits of the thickness of a plywood sheet.
 *
 * @example thicknessRange(thicknessRange.read({ nominal: "9 mm", surface: "sanded" })) // least 8.33 mm, greatest 9.47 mm
 */
export const thicknessRange: Formula<NominalSheet, ThicknessRange> = formula<NominalSheet, ThicknessRange>({
  id: "plywood.thickness.range",
  title: "Thickness a plywood sheet may have",
  equation: String.raw`t_{\max}=t+(c+0.03t),\quad t_{\min}=t-(0.4\,\mathrm{mm}+0.03t),\quad c=0.2\ \text{or}\ 0.8\,\mathrm{mm}`,
  inputs: {
    nominal: { symbol: "t", kind: Length, meaning: "nominal thickness", min: 0.003, max: 0.03 },
    surface: { symbol: "s", kind: SheetSurface, meaning: "sanded (c = 0.2 mm) or not (c = 0.8 mm)" },
  },
  result: {
    least: { symbol: String.raw`t_{\min}`, kind: Length, meaning: "least thickness" },
    greatest: { symbol: String.raw`t_{\max}`, kind: Length, meaning: "greatest thickness" },
  },
  source: [cite("en-315", "thickness tolerances")],
  validity: "Sheets of 3 to 30 mm at 10 % moisture, from memory. Measure: thickness enters stiffness cubed.",
  compute: ({ nominal, surface }) => ({
    least: nominal - (0.0004 + 0.03 * nominal),
    greatest: nominal + (surface === "sanded" ? 0.0002 : 0.0008) + 0.03 * nominal,
  }),
});
