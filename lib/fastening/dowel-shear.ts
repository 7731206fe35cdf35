/** Screws and nails that join two pieces of wood, loaded sideways: the European yield theory. */
import { type Formula, formula } from "../formula.js";
import { choice, Force, Length, Moment, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** One shank through an outer piece into an inner one. */
export interface DowelShearInputs {
  /** Thickness of the outer piece, under the head. */
  readonly outerThickness: Length;
  /** Penetration in the inner piece. */
  readonly innerThickness: Length;
  /** Embedment strength of either piece. */
  readonly outerEmbedment: Pressure;
  readonly innerEmbedment: Pressure;
  readonly diameter: Length;
  readonly yieldMoment: Moment;
  /** Withdrawal strength, a quarter of which helps; zero leaves it out. */
  readonly withdrawal: Force;
  /** The help is at most this share of the rest: round nails 0.15, other nails 0.5, screws 1. */
  readonly helpShare: Ratio;
}

/** How a joint of two pieces may give. */
export type DowelMode =
  | "outer bearing"
  | "inner bearing"
  | "shank tilts"
  | "hinge in the inner piece"
  | "hinge in the outer piece"
  | "two hinges";

/** The six ways and the first. */
export type DowelShear = {
  readonly strength: Force;
  readonly governs: DowelMode;
  readonly outerBearing: Force;
  readonly innerBearing: Force;
  readonly tilts: Force;
  readonly innerHinge: Force;
  readonly outerHinge: Force;
  readonly twoHinges: Force;
};

/** In the order of eq. 8.6 a to f. */
const modes: readonly DowelMode[] = [
  "outer bearing",
  "inner bearing",
  "shank tilts",
  "hinge in the inner piece",
  "hinge in the outer piece",
  "two hinges",
];

/**
 * Characteristic shear strength of one nail or screw in single shear, wood or panel on wood: the least of
 * the six yield modes of EN 1995-1-1 eq. 8.6 a to f.
 *
 * @example dowelShear(dowelShear.read({ outerThickness: "10 mm", innerThickness: "10 mm",
 *   outerEmbedment: "10 MPa", innerEmbedment: "10 MPa", diameter: "2 mm", yieldMoment: "100000 Nmm",
 *   withdrawal: "0 N", helpShare: 0 })) // strength 82.84 N, governs shank tilts, outerBearing 200 N, innerBearing 200 N, tilts 82.84 N, innerHinge 1.65 kN, outerHinge 1.65 kN, twoHinges 2.3 kN
 */
export const dowelShear: Formula<DowelShearInputs, DowelShear> = formula<DowelShearInputs, DowelShear>({
  id: "dowel.single.shear",
  title: "Nail or screw in single shear, wood on wood",
  equation: String.raw`F = \min(F_a, \ldots, F_f),\quad
    F_f = 1.15\sqrt{\frac{2\beta}{1+\beta}}\sqrt{2 M_y f_{h1} d} + \frac{F_{ax}}{4},\quad \beta = \frac{f_{h2}}{f_{h1}}`,
  inputs: {
    outerThickness: { symbol: "t_1", kind: Length, meaning: "outer piece", above: 0 },
    innerThickness: { symbol: "t_2", kind: Length, meaning: "penetration in the inner piece", above: 0 },
    outerEmbedment: { symbol: "f_{h1}", kind: Pressure, meaning: "embedment of the outer piece", above: 0 },
    innerEmbedment: { symbol: "f_{h2}", kind: Pressure, meaning: "embedment of the inner piece", above: 0 },
    diameter: { symbol: "d", kind: Length, meaning: "diameter of the shank", above: 0 },
    yieldMoment: { symbol: "M_y", kind: Moment, meaning: "yield moment", above: 0 },
    withdrawal: { symbol: "F_{ax}", kind: Force, meaning: "withdrawal strength", min: 0 },
    helpShare: { symbol: "k", kind: Ratio, meaning: "largest share of help", min: 0, max: 1 },
  },
  result: {
    strength: { symbol: "F", kind: Force, meaning: "shear strength, characteristic" },
    governs: {
      symbol: String.raw`\text{governs}`,
      kind: choice("what gives first", modes),
      meaning: "what gives first",
    },
    outerBearing: { symbol: "F_a", kind: Force, meaning: "bearing in the outer piece" },
    innerBearing: { symbol: "F_b", kind: Force, meaning: "bearing in the inner piece" },
    tilts: { symbol: "F_c", kind: Force, meaning: "shank tilts in both" },
    innerHinge: { symbol: "F_d", kind: Force, meaning: "shank bends in the inner piece" },
    outerHinge: { symbol: "F_e", kind: Force, meaning: "shank bends in the outer piece" },
    twoHinges: { symbol: "F_f", kind: Force, meaning: "shank bends in both" },
  },
  source: [cite("en-1995", "8.2.2, eq. 8.6 a to f")],
  validity: "Characteristic, before load-duration and safety factors; edge distances kept.",
  compute: (inputs) => {
    const strengths = yieldModes(inputs);
    const values = Object.values(strengths);
    const strength = Math.min(...values);
    return { strength, governs: modes[values.indexOf(strength)] as DowelMode, ...strengths };
  },
});

/** The six, in the order of `modes`. */
function yieldModes(
  inputs: DowelShearInputs,
): Record<Exclude<keyof DowelShear, "strength" | "governs">, number> {
  const { outerThickness: t1, innerThickness: t2, outerEmbedment: f1, diameter: d, yieldMoment } = inputs;
  const b = inputs.innerEmbedment / f1;
  const t = t2 / t1;
  const helped = (own: number): number => own + Math.min(inputs.withdrawal / 4, inputs.helpShare * own);
  const outer = f1 * t1 * d;
  const hinge = (length: number): number => yieldMoment / (f1 * d * length ** 2);
  return {
    outerBearing: outer,
    innerBearing: inputs.innerEmbedment * t2 * d,
    tilts: helped(
      (outer / (1 + b)) * (Math.sqrt(b + 2 * b ** 2 * (1 + t + t ** 2) + b ** 3 * t ** 2) - b * (1 + t)),
    ),
    innerHinge: helped(
      ((1.05 * outer) / (2 + b)) * (Math.sqrt(2 * b * (1 + b) + 4 * b * (2 + b) * hinge(t1)) - b),
    ),
    outerHinge: helped(
      ((1.05 * f1 * t2 * d) / (1 + 2 * b)) *
        (Math.sqrt(2 * b ** 2 * (1 + b) + 4 * b * (1 + 2 * b) * hinge(t2)) - b),
    ),
    twoHinges: helped(1.15 * Math.sqrt((2 * b) / (1 + b)) * Math.sqrt(2 * yieldMoment * f1 * d)),
  };
}
