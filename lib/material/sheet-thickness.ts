/** What thickness a sheet sold as plywood may really have. */
import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** Surface of the sheet. */
export type SheetSurface = "sanded" | "unsanded";
const SheetSurface: Kind<SheetSurface> = choice("surface", ["sanded", "unsanded"]);

/** A sheet as sold. */
export interface NominalSheet {
  readonly nominal: Length;
  readonly surface: SheetSurface;
}

/** Thickness limits. */
export type ThicknessRange = {
  readonly least: Length;
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
