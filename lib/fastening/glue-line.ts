import { type Formula, formula } from "../formula.js";
import { Force, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A glued seam that screws pulled together while it set. */
export interface GlueLineInputs {
  readonly length: Length;
  readonly width: Length;
  /** Of the weaker of glue and wood. */
  readonly shearStrength: Pressure;
  /** Share of the seam that is wetted: 0.5 for screws without clamps, 0.9 clamped. */
  readonly bonded: Ratio;
}

/**
 * Shear strength of a glue line: F = eta tau l b. The screws hold it while it sets and are not added: glue is so
 * much stiffer that it breaks before they bear.
 *
 * @example glueLineShear(glueLineShear.read({ length: "200 mm", width: "18 mm", shearStrength: "5 MPa", bonded: 0.5 })) // 9 kN
 */
export const glueLineShear: Formula<GlueLineInputs, Force> = formula({
  id: "glue.line.shear",
  title: "Shear strength of a glue line with screws",
  equation: String.raw`F = \eta\,\tau\,l\,b`,
  inputs: {
    length: { symbol: "l", kind: Length, meaning: "length of the seam", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width of the seam", above: 0 },
    shearStrength: { symbol: String.raw`\tau`, kind: Pressure, meaning: "shear strength", above: 0 },
    bonded: { symbol: String.raw`\eta`, kind: Ratio, meaning: "share that is bonded", above: 0, max: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "shear strength" },
  source: [
    cite("strength-of-materials", "mean shear on an area"),
    cite("common-practice", "glue or screws, never both"),
  ],
  validity:
    "Short seams; in one longer than about 100 mm the ends carry more than the middle. Contact glue creeps.",
  compute: ({ length, width, shearStrength, bonded }) => bonded * shearStrength * length * width,
});
