/** What a shop loses of its stock before and while it cuts. */
import { type Formula, formula } from "../formula.js";
import { Angle, Length } from "../quantity/index.js";
import { cite } from "../source.js";

/** A cut at an angle. */
export interface MitreCut {
  /** Width of the saw's cut, square across the blade. */ readonly kerf: Length;
  /** Off square; 0 is a square cut. */ readonly mitre: Angle;
}

/**
 * How much of a bar's length a cut turns to dust: kerf / cos(angle off square).
 *
 * Pieces measured long point to long point and laid this far apart can always be sawn, whichever way
 * their ends slant. Nesting slanted ends into each other would save more; that is not counted on.
 *
 * @source plain geometry
 * @throws Refusal for a negative kerf, or an angle that is not from 0 to below 90 degrees
 * @example mitreKerf({ kerf: mm(3.2), mitre: degree(45) }) // 4.525 mm
 */
export const mitreKerf: Formula<MitreCut, Length> = formula({
  id: "saw.mitre.kerf",
  title: "Bar lost to a cut at an angle",
  equation: String.raw`k_\alpha = \frac{k}{\cos\alpha}`,
  inputs: {
    kerf: { symbol: "k", kind: Length, meaning: "width of the saw's cut", min: 0 },
    mitre: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "angle off square",
      min: 0,
      below: Math.PI / 2,
    },
  },
  result: { symbol: String.raw`k_\alpha`, kind: Length, meaning: "length of bar lost" },
  source: [cite("geometry", "right triangle across the kerf")],
  validity: "Any straight cut; slanted ends are not nested into each other.",
  compute: ({ kerf, mitre }) => kerf / Math.cos(mitre),
});

/** Common practice, no source: taken off each edge of a sheet to get clear of dents. */
export const sheetEdgeTrim: Length = Length.of(1 / 4, "in");

/** Common practice, no source: taken off each end of a bar to get a square, clean end. */
export const barEndTrim: Length = Length.of(1 / 4, "in");
