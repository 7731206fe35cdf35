/** Moduli from strips bent over two rests: of one span, free of shear, of two spans, of a facing. */
import { type Formula, formula } from "../formula.js";
import { Length, Pressure, SpringRate } from "../quantity/index.js";
import { cite } from "../source.js";

/** A strip on two rests, loaded in the middle. */
export interface BendModulusInputs {
  /** Load over sag: the slope of the readings. */ readonly slope: SpringRate;
  /** Between the rests. */ readonly span: Length;
  /** Width of the strip. */ readonly width: Length;
  /** Thickness of the strip. */ readonly thickness: Length;
}

/**
 * Modulus of elasticity from a three-point bend: E = k L^3 / (4 b h^3), from w = P L^3 / (48 E I) with
 * I = b h^3 / 12. It is the apparent modulus, a little low, since shear sags the strip too.
 *
 * @throws Refusal when the span is below ten thicknesses, where shear is no longer small
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
 * @throws Refusal when the whole sag would be shear
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
  /** Load over sag on the long span. */ readonly longSlope: SpringRate;
  /** Between the rests of the long span. */ readonly longSpan: Length;
  /** Load over sag on the short span. */ readonly shortSlope: SpringRate;
  /** Between the rests of the short span. */ readonly shortSpan: Length;
  /** Width of the strip. */ readonly width: Length;
  /** Thickness of the strip. */ readonly thickness: Length;
}

/** What two spans tell apart. */
export type TwoSpanModuli = {
  /** Modulus of elasticity, free of shear. */ readonly modulus: Pressure;
  /** Through the thickness. */ readonly shearModulus: Pressure;
};

/**
 * Modulus and shear modulus of one strip from bends over two spans: a / (k L) is a straight line in L^2, whose
 * rise is 1 / (4 E b h^3) and whose foot is the shear.
 *
 * @throws Refusal when the short span sags no more than bending alone would make it
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

/** A strip bent bare, and one like it bent with a facing glued on. */
export interface FacedStripInputs {
  /** From bending the bare strip. */ readonly bareModulus: Pressure;
  /** Thickness of the bare strip. */ readonly bareThickness: Length;
  /** From bending the faced strip, as if it were one material of its whole thickness. */
  readonly facedModulus: Pressure;
  /** Thickness of the faced strip, facings included. */ readonly facedThickness: Length;
}

const facingInputs = {
  bareModulus: { symbol: "E_b", kind: Pressure, meaning: "bending modulus, bare", above: 0 },
  bareThickness: { symbol: "h", kind: Length, meaning: "thickness, bare", above: 0 },
  facedModulus: { symbol: "E_H", kind: Pressure, meaning: "bending modulus, faced", above: 0 },
  facedThickness: { symbol: "H", kind: Length, meaning: "thickness, faced", above: 0 },
} as const;
const facingResult = { symbol: "E_f", kind: Pressure, meaning: "modulus of the facing" } as const;
const facingSource = [cite("strength-of-materials", "composite beam, parallel-axis rule")] as const;
const facingValidity =
  "Full bond; the modulus of the bare strip taken along the same grain, and alike through it.";

function facingRefusals({
  bareModulus,
  bareThickness,
  facedModulus,
  facedThickness,
}: FacedStripInputs): string[] {
  if (facedThickness <= bareThickness) {
    return [
      `facedThickness must exceed the bare one (${Length.show(bareThickness)}), got ${Length.show(facedThickness)}`,
    ];
  }
  const gained = facedModulus * facedThickness ** 3 - bareModulus * bareThickness ** 3;
  return gained > 0 ? [] : ["the faced strip must be stiffer than the bare one: bend both anew"];
}

/**
 * Modulus of a facing glued on both faces: E_f = (E_H H^3 - E_b h^3) / (H^3 - h^3).
 *
 * @throws Refusal when the faced strip is no thicker or no stiffer
 * @example facingModulusBothFaces(facingModulusBothFaces.read({ bareModulus: "9000 MPa",
 *   bareThickness: "9 mm", facedModulus: "9452.2915101427 MPa", facedThickness: "11 mm" })) // 10 GPa
 */
export const facingModulusBothFaces: Formula<FacedStripInputs, Pressure> = formula({
  id: "facing.modulus.both",
  title: "Modulus of a facing on both faces, from bent strips",
  equation: String.raw`E_f = \frac{E_H H^3 - E_b h^3}{H^3 - h^3}`,
  inputs: facingInputs,
  result: facingResult,
  source: facingSource,
  validity: facingValidity,
  refuse: facingRefusals,
  compute: ({ bareModulus, bareThickness, facedModulus, facedThickness }) =>
    (facedModulus * facedThickness ** 3 - bareModulus * bareThickness ** 3) /
    (facedThickness ** 3 - bareThickness ** 3),
});

/**
 * Modulus of a facing glued on one face, whose neutral line it moves: with x = E_f t / E_b, t = H - h and
 * S = E_H H^3 / (12 E_b), S = h^3/12 + x t^2/12 + h x (H/2)^2 / (h + x), solved for x.
 *
 * @throws Refusal when the faced strip is no thicker or no stiffer
 * @example facingModulusOneFace(facingModulusOneFace.read({ bareModulus: "9000 MPa", bareThickness: "9 mm",
 *   facedModulus: "9241.329672 MPa", facedThickness: "10 mm" })) // 10 GPa
 */
export const facingModulusOneFace: Formula<FacedStripInputs, Pressure> = formula({
  id: "facing.modulus.one",
  title: "Modulus of a facing on one face, from bent strips",
  equation: String.raw`\frac{E_H H^3}{12 E_b} = \frac{h^3}{12} + \frac{x t^2}{12} + \frac{h x}{h + x}\,\frac{H^2}{4},\quad
    x = \frac{E_f t}{E_b},\ t = H - h`,
  inputs: facingInputs,
  result: facingResult,
  source: facingSource,
  validity: facingValidity,
  refuse: facingRefusals,
  compute: ({ bareModulus, bareThickness: h, facedModulus, facedThickness }) => {
    const t = facedThickness - h;
    const gained = (facedModulus * facedThickness ** 3) / (12 * bareModulus) - h ** 3 / 12;
    const square = t ** 2 / 12;
    const linear = square * h + (h * facedThickness ** 2) / 4 - gained;
    const x = (-linear + Math.sqrt(linear ** 2 + 4 * square * gained * h)) / (2 * square);
    return (x * bareModulus) / t;
  },
});
