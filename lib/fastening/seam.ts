/** A seam along an edge: force along it, glue and screws in it. */
import { type Formula, formula } from "../formula.js";
import { Angle, type Density, Force, Length, LineLoad, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { codeScrew, squareWithdrawal, thinnerThanCode } from "./withdrawal.js";

/** A row of fasteners along a seam. */
export interface SeamInputs {
  /** Shear along the seam, a metre. */
  readonly flow: LineLoad;
  /** The distance from one fastener to the next. */
  readonly pitch: Length;
  /** Rows that share it. */
  readonly rows: Ratio;
}

/**
 * Force on each fastener of a seam: F = q p / m.
 *
 * @example seamForce(seamForce.read({ flow: "3 N/mm", pitch: "100 mm", rows: 1 })) // 300 N
 */
export const seamForce: Formula<SeamInputs, Force> = formula({
  id: "seam.force",
  title: "Force on each fastener of a seam",
  equation: String.raw`F = \frac{q\,p}{m}`,
  inputs: {
    flow: { symbol: "q", kind: LineLoad, meaning: "shear along the seam", min: 0 },
    pitch: { symbol: "p", kind: Length, meaning: "pitch", above: 0 },
    rows: { symbol: "m", kind: Ratio, meaning: "rows", min: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "force on each" },
  source: [cite("machine-design", "shear flow times pitch"), cite("statics", "equal shares along a seam")],
  validity: "Even shear along the seam; near openings and corners it is larger.",
  compute: ({ flow, pitch, rows }) => (flow * pitch) / rows,
});

/** A blind rivet to choose. */
export interface RivetLengthInputs {
  /** Washer counted. */
  readonly grip: Length;
  /** The diameter of the rivet. */
  readonly diameter: Length;
}

/**
 * Length of a blind rivet under its head, when no grip range is stated: l = g + 1.5 d.
 *
 * @example rivetLength(rivetLength.read({ grip: "6 mm", diameter: "4 mm" })) // 12 mm
 */
export const rivetLength: Formula<RivetLengthInputs, Length> = formula({
  id: "rivet.length",
  title: "Length of a blind rivet for a stack",
  equation: String.raw`l = g + 1.5\,d`,
  inputs: {
    grip: { symbol: "g", kind: Length, meaning: "stack, washer counted", above: 0 },
    diameter: { symbol: "d", kind: Length, meaning: "diameter", above: 0 },
  },
  result: { symbol: "l", kind: Length, meaning: "length under the head" },
  source: [cite("common-practice", "grip plus one and a half diameters")],
  validity: "Standard open-end rivets; a maker's grip range outranks it.",
  compute: ({ grip, diameter }) => grip + 1.5 * diameter,
});

/** A glued seam that screws pulled together while it set. */
export interface GlueLineInputs {
  /** The length of the seam. */
  readonly length: Length;
  /** The width of the seam. */
  readonly width: Length;
  /** The shear strength of the weaker of glue and wood. */
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

/** A screw at an angle to the grain, such as one in a pocket hole. */
export interface PocketScrewInputs {
  /** The density of the wood. */
  readonly density: Density;
  /** The diameter over the thread. */
  readonly diameter: Length;
  /** Thread in the wood that holds. */
  readonly penetration: Length;
  /** The angle between screw and grain: 90 degrees is straight in; a pocket into an end leaves about 15. */
  readonly angle: Angle;
  /** Screws of the joint that pull together. */
  readonly count: Ratio;
}

/**
 * Characteristic pull of screws at an angle to the grain: F = n^0.9 f_ax d l k_d / (1.2 cos^2 a + sin^2 a) with
 * f_ax = 0.52 d^-0.5 l^-0.1 rho^0.8 and k_d = min(d/8, 1).
 *
 * @example inclinedScrewPull(inclinedScrewPull.read({ density: "350 kg/m3", diameter: "4 mm", penetration: "30 mm", angle: "90 deg", count: 1 })) // 1.204 kN
 */
export const inclinedScrewPull: Formula<PocketScrewInputs, Force> = formula({
  id: "screw.withdrawal.inclined",
  title: "Withdrawal of screws at an angle, pocket screws",
  equation: String.raw`F = \frac{n^{0.9}\,0.52\,d^{-0.5}\,l^{-0.1}\rho^{0.8}\;d\,l\,\min(d/8,\,1)}{1.2\cos^2\alpha + \sin^2\alpha}`,
  inputs: {
    ...codeScrew,
    angle: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "screw to the grain",
      min: Math.PI / 12,
      max: Math.PI / 2,
    },
    count: { symbol: "n", kind: Ratio, meaning: "screws", min: 1 },
  },
  result: { symbol: "F", kind: Force, meaning: "pull that 95 % of such joints hold", unit: "N" },
  source: [cite("en-1995", "8.7.2, eq. 8.38 to 8.40")],
  validity: "Before load-duration and safety factors; solid softwood, 6 to 12 mm in the code.",
  warn: (inputs) => [
    ...(inputs.angle < Math.PI / 6
      ? ["below 30 degrees the code gives no value: pull a few of your own"]
      : []),
    ...thinnerThanCode(inputs),
  ],
  compute: (inputs) => {
    const slope = 1.2 * Math.cos(inputs.angle) ** 2 + Math.sin(inputs.angle) ** 2;
    return (inputs.count ** 0.9 * squareWithdrawal(inputs)) / slope;
  },
});
