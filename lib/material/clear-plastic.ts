/** How strong clear plastics are in bending, as data sheets print it. */
import { type Formula, formula } from "../formula.js";
import { choice, type Kind, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";

/** What panes are made of where no data sheet is at hand. */
export type ClearPlastic = "acrylic" | "polycarbonate" | "copolyester";

/** What panes are made of, as a table says it. */
export const ClearPlastic: Kind<ClearPlastic> = choice("clear plastic", [
  "acrylic",
  "polycarbonate",
  "copolyester",
]);

/** The lower of what two data sheets print. */
const strengths: Readonly<Record<ClearPlastic, Pressure>> = {
  acrylic: Pressure.of(110, "MPa"),
  polycarbonate: Pressure.of(13500, "psi"),
  copolyester: Pressure.of(77, "MPa"),
};

/** A pane by its plastic. */
export interface PlasticPane {
  /** What it is made of. */
  readonly plastic: ClearPlastic;
}

/**
 * Bending strength of a clear plastic that is pressed for a moment.
 *
 * @example clearPlasticStrength(clearPlasticStrength.read({ plastic: "acrylic" })) // 110 MPa
 */
export const clearPlasticStrength: Formula<PlasticPane, Pressure> = formula<PlasticPane, Pressure>({
  id: "pane.plastic.strength",
  title: "Bending strength of a clear plastic",
  equation: "f_m",
  inputs: { plastic: { symbol: "p", kind: ClearPlastic, meaning: "what it is made of" } },
  result: { symbol: "f_m", kind: Pressure, meaning: "bending strength" },
  source: [cite("plastic-data", "flexural strength, ISO 178 or ASTM D790")],
  validity:
    "New sheet, a brief load, no notch or crack at a hole. Acrylic that is bent for long crazes at a tenth of it.",
  compute: ({ plastic }) => strengths[plastic],
});
