import { type Formula, formula } from "../formula.js";
import { Angle, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A property along and across the grain, wanted in between. */
export interface GrainAngleInputs {
  readonly along: Pressure;
  readonly across: Pressure;
  readonly angle: Angle;
  /** 2 for compression and bearing, 1.5 to 2 for tension and bending. */
  readonly power: Ratio;
}

/**
 * Strength or modulus at an angle to the grain: N = P Q / (P sin^n + Q cos^n).
 *
 * @example atGrainAngle(atGrainAngle.read({ along: "40 MPa", across: "8 MPa", angle: "0 deg", power: 2 })) // 40 MPa
 */
export const atGrainAngle: Formula<GrainAngleInputs, Pressure> = formula({
  id: "wood.grain.angle",
  title: "Strength of wood at an angle to the grain",
  equation: String.raw`N = \frac{P\,Q}{P\sin^n\theta + Q\cos^n\theta}`,
  inputs: {
    along: { symbol: "P", kind: Pressure, meaning: "along the grain", above: 0 },
    across: { symbol: "Q", kind: Pressure, meaning: "across the grain", above: 0 },
    angle: {
      symbol: String.raw`\theta`,
      kind: Angle,
      meaning: "between load and grain",
      min: 0,
      max: Math.PI / 2,
    },
    power: { symbol: "n", kind: Ratio, meaning: "power", min: 1.5, max: 3 },
  },
  result: { symbol: "N", kind: Pressure, meaning: "at the angle" },
  source: [cite("wood-handbook", "eq. 5-1"), cite("nds", "appendix J")],
  validity: "Straight-grained wood; the power depends on the property.",
  compute: ({ along, across, angle, power }) =>
    (along * across) /
    // A cosine of a right angle is a rounding of zero, and may be below it.
    (along * Math.sin(angle) ** power + across * Math.max(0, Math.cos(angle)) ** power),
});
