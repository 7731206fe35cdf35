/** Ramps and brakes. */
import { type Formula, formula } from "../formula.js";
import { Angle, Length, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A ramp. */
export interface RampSize {
  /** From the lower floor to the upper. */
  readonly rise: Length;
  /** Along the ramp. */
  readonly length: Length;
}

/**
 * Slope of a ramp: arcsin(rise / length).
 *
 * @source geometry
 * @throws Refusal unless the ramp is longer than its rise
 * @example rampSlope({ rise: mm(500), length: mm(3000) }) // 9.594°
 */
export const rampSlope: Formula<RampSize, Angle> = formula({
  id: "roll.ramp",
  title: "Slope of a ramp",
  equation: String.raw`\theta=\arcsin\frac{H}{L}`,
  inputs: {
    rise: { symbol: "H", kind: Length, meaning: "rise", min: 0 },
    length: { symbol: "L", kind: Length, meaning: "length along the ramp", above: 0 },
  },
  result: { symbol: String.raw`\theta`, kind: Angle, meaning: "slope" },
  source: [cite("geometry", "sine of an angle")],
  validity: "A straight ramp.",
  refuse: ({ rise, length }) => (rise < length ? [] : ["the ramp must be longer than its rise"]),
  compute: ({ rise, length }) => Math.asin(rise / length),
});

/** Brakes on some casters. */
export interface BrakedCase {
  /** Of the weight, on braked casters. */
  readonly share: Ratio;
  /** Of a braked tread on the floor. */
  readonly friction: Ratio;
}

/**
 * Slope that braked casters hold: arctan(share x friction).
 *
 * @source statics, dry friction on a slope
 * @throws Refusal unless share is from 0 to 1 and friction not negative
 * @example brakedSlope({ share: ratio(0.5), friction: ratio(0.5) }) // 14.04°
 */
export const brakedSlope: Formula<BrakedCase, Angle> = formula({
  id: "roll.brake",
  title: "Slope that the brakes hold",
  equation: String.raw`\theta=\arctan(s\,\mu)`,
  inputs: {
    share: { symbol: "s", kind: Ratio, meaning: "share of the weight on braked casters", min: 0, max: 1 },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction of a braked tread", min: 0 },
  },
  result: { symbol: String.raw`\theta`, kind: Angle, meaning: "steepest slope" },
  source: [cite("statics", "dry friction on a slope")],
  validity:
    "Dry floor, brakes that lock; the load shift down the slope is left out. Never leave a case on a ramp.",
  compute: ({ share, friction }) => Math.atan(share * friction),
});
