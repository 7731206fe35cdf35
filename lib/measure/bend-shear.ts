/** A strip bent over two rests sags by shear too: how to take that out. */
import { type Formula, formula } from "../formula.js";
import { Length, Pressure, SpringRate } from "../quantity/index.js";
import { cite } from "../source.js";
import { type BendModulusInputs, bendModulus } from "./bend-modulus.js";

/** A bend test whose strip has a known stiffness against shear through its thickness. */
export interface ShearBendInputs extends BendModulusInputs {
  /** Through the thickness along the span; for plywood mostly the rolling shear of the crossbands. */
  readonly shearModulus: Pressure;
}

/** Shear sag of a rectangular strip counts 6/5 of the mean: the shear is not even over the thickness. */
const shearForm = 6 / 5;

/**
 * Modulus of elasticity free of shear: the sag 1/k = L^3 / (48 E I) + 6 L / (20 G b h), solved for E.
 *
 * @throws RangeError when the whole sag would be shear
 * @example bendModulusWithoutShear(bendModulusWithoutShear.read({ slope: "5838.5391638635 N/m", span: "0.6 m",
 *   width: "0.05 m", thickness: "0.009 m", shearModulus: "60000000.0 Pa" })) // 9 GPa
 */
export const bendModulusWithoutShear: Formula<ShearBendInputs, Pressure> = formula({
  id: "bend.modulus.shear",
  title: "Modulus of a bent strip, shear taken out",
  equation: String.raw`\frac{1}{k} = \frac{L^3}{4\,E\,b\,h^3} + \frac{6}{5}\,\frac{L}{4\,G\,b\,h}`,
  inputs: {
    ...bendModulus.declaration.inputs,
    shearModulus: { symbol: "G", kind: Pressure, meaning: "shear modulus through the thickness", above: 0 },
  },
  result: { symbol: "E", kind: Pressure, meaning: "modulus of elasticity" },
  source: [
    cite("strength-of-materials", "shear sag of a simple beam, form factor 6/5"),
    cite("en-310", "span"),
  ],
  validity: "Small sag; shear modulus from bends of two spans, or 0.05 to 0.1 GPa for rolling shear.",
  refuse: ({ slope, span, width, thickness, shearModulus }) =>
    1 / slope > shearSag({ span, width, thickness, shearModulus })
      ? []
      : ["slope leaves no sag for bending: the shear modulus is too low or the sag too small"],
  compute: ({ slope, span, width, thickness, shearModulus }) =>
    span ** 3 /
    (4 * width * thickness ** 3 * (1 / slope - shearSag({ span, width, thickness, shearModulus }))),
});

function shearSag({
  span,
  width,
  thickness,
  shearModulus,
}: Readonly<Record<"span" | "width" | "thickness" | "shearModulus", number>>): number {
  return (shearForm * span) / (4 * shearModulus * width * thickness);
}

/** One strip bent over a long and a short span. */
export interface TwoSpanInputs {
  readonly longSlope: SpringRate;
  readonly longSpan: Length;
  readonly shortSlope: SpringRate;
  readonly shortSpan: Length;
  readonly width: Length;
  readonly thickness: Length;
}

/** What two spans tell apart. */
export type TwoSpanModuli = {
  readonly modulus: Pressure;
  /** Through the thickness. */
  readonly shearModulus: Pressure;
};

/**
 * Modulus and shear modulus of one strip from bends over two spans: a / (k L) is a straight line in L^2, whose
 * rise is 1 / (4 E b h^3) and whose foot is the shear.
 *
 * @throws RangeError when the short span sags no more than bending alone would make it
 * @example bendOverTwoSpans(bendOverTwoSpans.read({ longSlope: "5838.5391638635 N/m", longSpan: "0.6 m",
 *   shortSlope: "120208.86771711 N/m", shortSpan: "0.2 m", width: "0.05 m", thickness: "0.009 m" })) // modulus 9 GPa, shearModulus 60 MPa
 */
export const bendOverTwoSpans: Formula<TwoSpanInputs, TwoSpanModuli> = formula<TwoSpanInputs, TwoSpanModuli>({
  id: "bend.two.spans",
  title: "Modulus and shear modulus from two spans",
  equation: String.raw`\frac{1}{k_i L_i} = \frac{L_i^2}{4\,E\,b\,h^3} + \frac{6}{5}\,\frac{1}{4\,G\,b\,h},\quad i = 1, 2`,
  inputs: {
    longSlope: { symbol: "k_1", kind: SpringRate, meaning: "load over sag, long span", above: 0 },
    longSpan: { symbol: "L_1", kind: Length, meaning: "long span", above: 0 },
    shortSlope: { symbol: "k_2", kind: SpringRate, meaning: "load over sag, short span", above: 0 },
    shortSpan: { symbol: "L_2", kind: Length, meaning: "short span", above: 0 },
    width: { symbol: "b", kind: Length, meaning: "width of the strip", above: 0 },
    thickness: { symbol: "h", kind: Length, meaning: "thickness of the strip", above: 0 },
  },
  result: {
    modulus: { symbol: "E", kind: Pressure, meaning: "modulus of elasticity" },
    shearModulus: { symbol: "G", kind: Pressure, meaning: "shear modulus through the thickness" },
  },
  source: [cite("strength-of-materials", "bending and shear sag of a simple beam")],
  validity:
    "Spans of at least 5 thicknesses, the long one twice the short one or more; rests that do not dent.",
  refuse: (inputs) => [
    ...(inputs.longSpan > inputs.shortSpan * 1.2 ? [] : ["longSpan must be at least 1.2 times shortSpan"]),
    ...(lineOf(inputs).rise > 0 ? [] : ["the long span must sag more for its length than the short one"]),
    ...(lineOf(inputs).foot > 0
      ? []
      : ["the short span shows no shear: let both rests be the same, and measure it anew"]),
  ],
  compute: (inputs) => {
    const { rise, foot } = lineOf(inputs);
    const { width, thickness } = inputs;
    return {
      modulus: 1 / (4 * width * thickness ** 3 * rise),
      shearModulus: shearForm / (4 * width * thickness * foot),
    };
  },
});

function lineOf({ longSlope, longSpan, shortSlope, shortSpan }: TwoSpanInputs): {
  readonly rise: number;
  readonly foot: number;
} {
  const [long, short] = [1 / (longSlope * longSpan), 1 / (shortSlope * shortSpan)];
  const rise = (long - short) / (longSpan ** 2 - shortSpan ** 2);
  return { rise, foot: short - rise * shortSpan ** 2 };
}
