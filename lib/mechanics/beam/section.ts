/** Cross-sections of beams and shelves. */
import { type Formula, formula } from "../../formula.js";
import { Area, BeamStiffness, Length, Moment, Pressure, SecondMoment, Volume } from "../../quantity/index.js";
import { cite } from "../../source.js";

/** A rectangular bar lying on its width. */
export interface RectangularBar {
  /** Across the load. */
  readonly width: Length;
  /** Along the load. */
  readonly depth: Length;
}

/** What bending needs to know of a section. */
export type Section = {
  readonly area: Area;
  /** I, against bending. */
  readonly secondMoment: SecondMoment;
  /** W, for stress at the outer face. */
  readonly modulus: Volume;
};

/**
 * Section of a rectangle.
 *
 * @example rectangleSection(rectangleSection.read({ width: "100 mm", depth: "20 mm" })) // area 20 cm2, secondMoment 6.667 cm4, modulus 6.667 mL
 */
export const rectangleSection: Formula<RectangularBar, Section> = formula<RectangularBar, Section>({
  id: "section.rectangle",
  title: "Section of a rectangular bar",
  equation: String.raw`A=bh,\quad I=\frac{bh^3}{12},\quad W=\frac{bh^2}{6}`,
  inputs: {
    width: { symbol: "b", kind: Length, meaning: "width across the load", above: 0 },
    depth: { symbol: "h", kind: Length, meaning: "depth along the load", above: 0 },
  },
  result: {
    area: { symbol: "A", kind: Area, meaning: "area" },
    secondMoment: { symbol: "I", kind: SecondMoment, meaning: "second moment of area" },
    modulus: { symbol: "W", kind: Volume, meaning: "section modulus" },
  },
  source: [cite("strength-of-materials", "section properties"), cite("stress-strain", "table A.1")],
  validity: "A solid rectangle, bent about the axis along its width.",
  compute: ({ width, depth }) => ({
    area: width * depth,
    secondMoment: (width * depth ** 3) / 12,
    modulus: (width * depth ** 2) / 6,
  }),
});

/** A bar of one material. */
export interface PlainBar {
  /** Modulus of elasticity along the bar. */
  readonly modulus: Pressure;
  /** Second moment of area of its section. */
  readonly secondMoment: SecondMoment;
}

/**
 * Bending stiffness of a bar of one material.
 *
 * @example beamStiffness(beamStiffness.read({ modulus: "10 GPa", secondMoment: "120000 mm4" })) // 1200 N·m2
 */
export const beamStiffness: Formula<PlainBar, BeamStiffness> = formula<PlainBar, BeamStiffness>({
  id: "beam.stiffness",
  title: "Bending stiffness of a bar",
  equation: "EI",
  inputs: {
    modulus: { symbol: "E", kind: Pressure, meaning: "modulus of elasticity", above: 0 },
    secondMoment: { symbol: "I", kind: SecondMoment, meaning: "second moment of area", above: 0 },
  },
  result: { symbol: "EI", kind: BeamStiffness, meaning: "bending stiffness" },
  source: [cite("strength-of-materials", "bending of beams")],
  validity: "One material, bent within its elastic range.",
  compute: ({ modulus, secondMoment }) => modulus * secondMoment,
});

/** A bent bar. */
export interface BentBar {
  /** Bending moment in the bar. */
  readonly moment: Moment;
  /** Section modulus W. */
  readonly sectionModulus: Volume;
}

/**
 * Stress at the outer face of a bent bar.
 *
 * @example beamBendingStress(beamBendingStress.read({ moment: "100 N·m", sectionModulus: "10000 mm3" })) // 10 MPa
 */
export const beamBendingStress: Formula<BentBar, Pressure> = formula<BentBar, Pressure>({
  id: "beam.bending.stress",
  title: "Bending stress at the outer face",
  equation: String.raw`\sigma=\frac{M}{W}`,
  inputs: {
    moment: { symbol: "M", kind: Moment, meaning: "bending moment" },
    sectionModulus: { symbol: "W", kind: Volume, meaning: "section modulus", above: 0 },
  },
  result: { symbol: String.raw`\sigma`, kind: Pressure, meaning: "stress at the outer face" },
  source: [cite("strength-of-materials", "flexure formula"), cite("stress-strain", "eq. 8.1-1")],
  validity: "One material, bent within its elastic range.",
  compute: ({ moment, sectionModulus }) => moment / sectionModulus,
});
