/** Landing on an edge or a corner: cushions on three faces at once. */
import { type Formula, formula } from "../formula.js";
import { Ratio, recordOf, SpringRate } from "../quantity/index.js";
import { cite } from "../source.js";

/** Cushions on three faces and the way a case lands on them. */
export interface CushionedFaces {
  /** Across the left and right faces. */
  readonly sides: SpringRate;
  /** Across front and back. */
  readonly ends: SpringRate;
  /** Across top and bottom. */
  readonly flats: SpringRate;
  /** Direction of the fall against the three: parts of a direction, which need not have length one. */
  readonly towards: { readonly sides: Ratio; readonly ends: Ratio; readonly flats: Ratio };
}

/**
 * Stiffness of cushions on three faces when a case lands on an edge or a corner: each face counts by the
 * square of its share of the direction. With three like faces an edge or a corner lands no harder than a flat.
 *
 * @source springs at right angles, energy
 * @throws Refusal for a stiffness that is not positive, or no direction
 * @example tiltedCushion(tiltedCushion.read({ sides: "10 N/mm", ends: "10 N/mm", flats: "10 N/mm", towards: { sides: 1, ends: 1, flats: 1 } })) // 10 N/mm
 */
export const tiltedCushion: Formula<CushionedFaces, SpringRate> = formula({
  id: "cushion.tilted",
  title: "Stiffness on an edge or a corner",
  equation: String.raw`k=\frac{\sum k_i n_i^2}{\sum n_i^2}`,
  inputs: {
    sides: { symbol: "k_x", kind: SpringRate, meaning: "sides", above: 0 },
    ends: { symbol: "k_y", kind: SpringRate, meaning: "ends", above: 0 },
    flats: { symbol: "k_z", kind: SpringRate, meaning: "flats", above: 0 },
    towards: {
      symbol: "n",
      kind: recordOf("direction", { sides: Ratio, ends: Ratio, flats: Ratio }),
      meaning: "direction of the fall",
    },
  },
  result: { symbol: "k", kind: SpringRate, meaning: "stiffness that way" },
  source: [
    cite("strength-of-materials", "springs at right angles"),
    cite("statics", "components of a force"),
  ],
  validity: "Foam that slides past the thing it holds; glued foam adds its shear.",
  refuse: ({ towards }) =>
    towards.sides ** 2 + towards.ends ** 2 + towards.flats ** 2 > 0 ? [] : ["a fall has a direction"],
  compute: ({ sides, ends, flats, towards }) => {
    const [x, y, z] = [towards.sides ** 2, towards.ends ** 2, towards.flats ** 2];
    return (sides * x + ends * y + flats * z) / (x + y + z);
  },
});
