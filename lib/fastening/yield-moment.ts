import { type Formula, formula } from "../formula.js";
import { type Length, Moment, Pressure } from "../quantity/index.js";
import { cite } from "../source.js";
import { shankDiameter } from "./fastener-symbols.js";

/** A round shank. */
export interface YieldMomentInputs {
  /** Of the wire. */
  readonly tensileStrength: Pressure;
  /** Of a nail; of a screw 1.1 times the diameter under the thread. */
  readonly diameter: Length;
}

/**
 * Bending moment at which a round nail or screw yields: M = 0.3 f_u d^2.6 (N mm, MPa, mm).
 *
 * @example dowelYieldMoment(dowelYieldMoment.read({ tensileStrength: "650 MPa", diameter: "3 mm" })) // 3.393 N·m
 */
export const dowelYieldMoment: Formula<YieldMomentInputs, Moment> = formula({
  id: "dowel.yield.moment",
  title: "Yield moment of a nail or screw",
  equation: String.raw`M_y = 0.3\,f_u\,d^{2.6}`,
  inputs: {
    tensileStrength: {
      symbol: "f_u",
      kind: Pressure,
      meaning: "tensile strength of the wire",
      above: 0,
      unit: "MPa",
    },
    diameter: shankDiameter(0.03),
  },
  result: { symbol: "M_y", kind: Moment, meaning: "yield moment, characteristic", unit: "Nmm" },
  source: [cite("en-1995", "eq. 8.14 and 8.30")],
  validity: "Round steel wire.",
  compute: ({ tensileStrength, diameter }) => 0.3 * (tensileStrength / 1e6) * (diameter * 1000) ** 2.6 * 1e-3,
});
