/** What casters meet: floors that dent, thresholds, gaps, slopes. */
import { type Formula, formula } from "../formula.js";
import { Angle, Area, Force, Length, Pressure, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";

/** A caster on a floor. */
export interface CasterOnFloor {
  /** On the caster. */
  readonly load: Force;
  /** Of tread that touches: press it on carbon paper. */
  readonly contact: Area;
}

/**
 * Pressure of a caster on the floor: F / A.
 *
 * @source statics
 * @throws RangeError for a negative load or no contact
 */
export const floorPressure: Formula<CasterOnFloor, Pressure> = formula({
  id: "roll.pressure",
  title: "Pressure of a caster on the floor",
  equation: String.raw`p=\frac{F}{A}`,
  inputs: {
    load: { symbol: "F", kind: Force, meaning: "load of the caster", min: 0 },
    contact: { symbol: "A", kind: Area, meaning: "tread that touches", above: 0 },
  },
  result: { symbol: "p", kind: Pressure, meaning: "pressure on the floor" },
  source: [cite("statics", "force over area")],
  validity: "Mean over the print; its middle has up to half as much again.",
  compute: ({ load, contact }) => load / contact,
});

/** A wheel against a step. */
export interface WheelAtStep {
  /** On the wheels that climb, together. */
  readonly load: Force;
  /** Of the wheel. */
  readonly diameter: Length;
  /** Of the step; a gap counts by how deep the wheel sinks. */
  readonly step: Length;
}

/**
 * Level push at the axle that lifts a wheel over a step: F sqrt(2 r s - s2) / (r - s).
 *
 * @source moments about the edge of the step
 * @throws RangeError unless the load is positive and the step lower than the axle
 * @example stepPush({ load: newton(7.84), diameter: mm(120), step: mm(30) }) // 13.6 N
 */
export const stepPush: Formula<WheelAtStep, Force> = formula({
  id: "roll.step",
  title: "Push over a threshold",
  equation: String.raw`P=F\,\frac{\sqrt{2rs-s^2}}{r-s},\quad r=\tfrac{D}{2}`,
  inputs: {
    load: { symbol: "F", kind: Force, meaning: "load on the climbing wheels", above: 0 },
    diameter: { symbol: "D", kind: Length, meaning: "diameter of the wheel", above: 0 },
    step: { symbol: "s", kind: Length, meaning: "height of the step", min: 0 },
  },
  result: { symbol: "P", kind: Force, meaning: "level push at the axle" },
  source: [cite("statics", "moments about the edge of the step")],
  validity:
    "A slow push; a run-up takes less and breaks casters. Tilt the case and lift wheel by wheel instead.",
  refuse: ({ diameter, step }) =>
    step < diameter / 2 ? [] : ["step must be lower than the axle: no push gets over it"],
  compute: ({ load, diameter, step }) => {
    const radius = diameter / 2;
    return (load * Math.sqrt(2 * radius * step - step ** 2)) / (radius - step);
  },
});

/**
 * How deep a wheel sinks into a gap: r - sqrt(r2 - (g/2)2); it must climb as much at the far side.
 *
 * @source geometry of a chord
 * @throws RangeError unless the gap is narrower than the wheel
 */
export const gapDepth: Formula<{ readonly diameter: Length; readonly gap: Length }, Length> = formula({
  id: "roll.gap",
  title: "How deep a wheel sinks into a gap",
  equation: String.raw`s=\tfrac{D}{2}-\sqrt{\left(\tfrac{D}{2}\right)^2-\left(\tfrac{g}{2}\right)^2}`,
  inputs: {
    diameter: { symbol: "D", kind: Length, meaning: "diameter of the wheel", above: 0 },
    gap: { symbol: "g", kind: Length, meaning: "width of the gap", min: 0 },
  },
  result: { symbol: "s", kind: Length, meaning: "depth it sinks" },
  source: [cite("geometry", "sagitta of a chord")],
  validity: "A gap square across the way; a wheel that runs along it falls in.",
  refuse: ({ diameter, gap }) => (gap < diameter ? [] : ["gap must be narrower than the wheel"]),
  compute: ({ diameter, gap }) => diameter / 2 - Math.sqrt((diameter / 2) ** 2 - (gap / 2) ** 2),
});

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
 * @throws RangeError unless the ramp is longer than its rise
 * @example rampSlope({ rise: mm(500), length: mm(3000) }) // 9.594 degrees
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
 * @throws RangeError unless share is from 0 to 1 and friction not negative
 * @example brakedSlope({ share: ratio(0.5), friction: ratio(0.5) }) // 14.04 degrees
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
