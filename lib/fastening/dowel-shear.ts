/** Screws and nails that join two pieces of wood, loaded sideways: their strength and their slip. */
import { at } from "../algebra/lists.js";
import { type Formula, formula } from "../formula.js";
import { choice, Density, Force, Length, Moment, Pressure, Ratio, SpringRate } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { cite } from "../source.js";
import { shankDiameter } from "./bearing.js";

/** One shank through an outer piece into an inner one. */
export interface DowelShearInputs {
  /** Thickness of the outer piece, under the head. */
  readonly outerThickness: Length;
  /** Penetration in the inner piece. */
  readonly innerThickness: Length;
  /** Embedment strength of either piece. */
  readonly outerEmbedment: Pressure;
  /** The embedment of the inner piece. */
  readonly innerEmbedment: Pressure;
  /** The diameter of the shank. */
  readonly diameter: Length;
  /** The bending moment at which the shank yields. */
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
  /** The characteristic shear strength, the least of the six below. */
  readonly strength: Force;
  /** What gives first. */
  readonly governs: DowelMode;
  /** The strength in bearing in the outer piece. */
  readonly outerBearing: Force;
  /** The strength in bearing in the inner piece. */
  readonly innerBearing: Force;
  /** The strength where the shank tilts in both pieces. */
  readonly tilts: Force;
  /** The strength where the shank bends in the inner piece. */
  readonly innerHinge: Force;
  /** The strength where the shank bends in the outer piece. */
  readonly outerHinge: Force;
  /** The strength where the shank bends in both pieces. */
  readonly twoHinges: Force;
};

/** Thinner than any veneer, m: below it the yield modes are not those of wood. */
const leastThickness = 1e-4;

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
    outerThickness: { symbol: "t_1", kind: Length, meaning: "outer piece", min: leastThickness },
    innerThickness: {
      symbol: "t_2",
      kind: Length,
      meaning: "penetration in the inner piece",
      min: leastThickness,
    },
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
    if (!Number.isFinite(strength)) {
      throw new Refusal(
        "the pieces are too unlike, in thickness or in what they stand, for the yield modes of wood",
      );
    }
    return { strength, governs: at(modes, values.indexOf(strength)), ...strengths };
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

/** A fastener between two pieces of wood or panel. */
export interface SlipInputs {
  /** Mean density; of two pieces the root of their product. */
  readonly density: Density;
  /** The diameter of the shank. */
  readonly diameter: Length;
  /** How the shank sits in the wood. */
  readonly shank: "driven nail" | "screw, bolt or drilled";
}

/**
 * Stiffness of one fastener against slip: K = rho^1.5 d / 23, of a driven nail rho^1.5 d^0.8 / 30 (N/mm, kg/m3, mm).
 *
 * @example slipStiffness(slipStiffness.read({ density: "400 kg/m3", diameter: "4 mm", shank: "driven nail" })) // 808.4 N/mm
 */
export const slipStiffness: Formula<SlipInputs, SpringRate> = formula({
  id: "fastener.slip",
  title: "Stiffness of a fastener against slip",
  equation: String.raw`K_{ser} = \frac{\rho^{1.5} d}{23}\ \text{(drilled)},\quad K_{ser} = \frac{\rho^{1.5} d^{0.8}}{30}\ \text{(driven nail)}`,
  inputs: {
    density: { symbol: String.raw`\rho`, kind: Density, meaning: "mean density", above: 0, unit: "kg/m3" },
    diameter: shankDiameter(0.03),
    shank: {
      symbol: String.raw`\text{shank}`,
      kind: choice("shank", ["driven nail", "screw, bolt or drilled"]),
      meaning: "how it sits",
    },
  },
  result: { symbol: "K_{ser}", kind: SpringRate, meaning: "force over slip in use", unit: "N/mm" },
  source: [cite("en-1995", "7.1, table 7.1")],
  validity:
    "One shear plane, wood on wood; with metal on one side twice as stiff. A rivet in ply: an estimate.",
  compute: ({ density, diameter, shank }) => {
    const size = diameter * 1000;
    return 1000 * density ** 1.5 * (shank === "driven nail" ? size ** 0.8 / 30 : size / 23);
  },
});
