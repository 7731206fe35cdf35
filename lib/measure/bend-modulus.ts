import { type Formula, formula } from "../formula.js";
import { Length, Pressure, SpringRate } from "../quantity/index.js";
import { cite } from "../source.js";

/** A strip on two rests, loaded in the middle. */
export interface BendModulusInputs {
  /** Load over sag: the slope of the readings. */
  readonly slope: SpringRate;
  /** Between the rests. */
  readonly span: Length;
  readonly width: Length;
  readonly thickness: Length;
}

/**
 * Modulus of elasticity from a three-point bend: E = k L^3 / (4 b h^3), from w = P L^3 / (48 E I) with
 * I = b h^3 / 12. It is the apparent modulus, a little low, since shear sags the strip too.
 *
 * @throws RangeError when the span is below ten thicknesses, where shear is no longer small
 * @example bendModulus(bendModulus.read({ slope: "125 N/mm", span: "240 mm", width: "50 mm", thickness: "12 mm" })) // 5 GPa
 */
export const bendModulus: Formula<BendModulusInputs, Pressure> = formula({
  id: "bend.modulus",
  title: "Modulus of a strip bent over two rests",
  equation: String.raw`E = \frac{k\,L^3}{4\,b\,h^3}`,
  inputs: {
    slope: { symbol: "k", kind: SpringRate, meaning: "load over sag", above: 0 },
    span: { symbol: "L", kind: Length, meaning: "span between the rests", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width of the strip", above: 0 },
    thickness: { symbol: "h", kind: Length, meaning: "thickness of the strip", above: 0 },
  },
  result: { symbol: "E", kind: Pressure, meaning: "apparent modulus of elasticity in bending" },
  source: [
    cite("strength-of-materials", "simple beam, load in the middle: w = P L^3 / (48 E I)"),
    cite("en-310", "modulus of elasticity, three-point bending"),
  ],
  validity: "Small sag, below a tenth of the span; span at least 10 thicknesses, 20 for a true figure.",
  refuse: ({ span, thickness }) =>
    span < 10 * thickness
      ? [
          `span must be at least 10 thicknesses (${Length.show(leastSpan(thickness))}), got ${Length.show(span)}`,
        ]
      : [],
  warn: ({ span, thickness }) =>
    span < 2 * leastSpan(thickness)
      ? ["span below 20 thicknesses: shear adds to the sag, the modulus reads some percent low"]
      : [],
  compute: ({ slope, span, width, thickness }) => (slope * span ** 3) / (4 * width * thickness ** 3),
});

/** Ten thicknesses, less a hair for binary rounding of a span given as just that. */
export function leastSpan(thickness: Length): Length {
  return Length.si(10 * thickness * (1 - 1e-12));
}
