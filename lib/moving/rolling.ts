/** Rolling a case: level, up a slope, over a step, and what its wheels do to the floor. */
import { type Formula, formula } from "../formula.js";
import {
  Angle,
  Area,
  choice,
  degree,
  Force,
  type Kind,
  Length,
  Mass,
  newton,
  Pressure,
  Ratio,
  ratio,
  standardGravity,
} from "../quantity/index.js";
import { type Citation, cite } from "../source.js";

/** What a wheel runs on: nylon or polyurethane, hard rubber, soft rubber. */
export type Tread = "plastic" | "hard rubber" | "soft rubber";
export const Tread: Kind<Tread> = choice("tread", ["plastic", "hard rubber", "soft rubber"]);

/**
 * Lever arms of rolling friction of the wheels of hand carts, m: hard rubber as measured on asphalt (2.2 mm on smooth
 * concrete), plastic and soft rubber as makers' shares of the load come to on wheels of 100 mm, rounded up. Drive makers
 * print ten times as much, for the loaded wheels of trucks.
 */
const levers: Readonly<Record<Tread, number>> = {
  plastic: 0.002,
  "hard rubber": 0.0033,
  "soft rubber": 0.0045,
};

/** A wheel on a hard floor. */
export interface WheelOnFloor {
  /** What it runs on. */
  readonly tread: Tread;
  /** The diameter of the wheel. */
  readonly diameter: Length;
}

/**
 * Push that a wheel needs to roll, as a share of its load: 2 f / D, f the lever arm of rolling friction.
 *
 * @source manual carts on four floors, measured; caster makers for plastic and soft rubber
 * @throws Refusal unless the diameter is positive
 * @example wheelResistance({ tread: "plastic", diameter: mm(100) }) // 0.04
 */
export const wheelResistance: Formula<WheelOnFloor, Ratio> = formula({
  id: "roll.wheel",
  title: "Rolling push of a wheel, as a share of its load",
  equation: String.raw`\mu_r=\frac{2f}{D}`,
  inputs: {
    tread: { symbol: "f", kind: Tread, meaning: "tread" },
    diameter: { symbol: "D", kind: Length, meaning: "diameter of the wheel", above: 0 },
  },
  result: { symbol: String.raw`\mu_r`, kind: Ratio, meaning: "push over load" },
  source: [
    cite("hand-carts", "coefficients of rolling friction of hard rubber: 2.2, 2.4, 3.3, 4.5 mm"),
    cite("rolling-friction", "shares of the load, as caster makers print them"),
  ],
  validity:
    "Steady rolling on a firm, even floor, bearings in good order. Carpet takes a third more, turned casters twice as much, and a tread that stood loaded for days starts harder.",
  compute: ({ tread, diameter }) => (2 * levers[tread]) / diameter,
});

/** How much of its weight a wheeled load resists with, by floor. */
export interface RollingShare {
  /** Push over weight. */
  readonly share: Ratio;
  /** Where it holds. */
  readonly floor: string;
  /** Who says so. */
  readonly source: Citation;
}

/** Guidance of a health and safety authority; the lower figure is the least to expect. */
export const rollingShares: { readonly good: RollingShare; readonly uneven: RollingShare } = {
  good: {
    share: ratio(0.02),
    floor: "level, even and firm, casters in good order",
    source: cite("hse-manual-handling", "push and pull filter, 2 % of the load"),
  },
  uneven: {
    share: ratio(0.1),
    floor: "soft or uneven",
    source: cite("hse-manual-handling", "push and pull filter, 10 % of the load"),
  },
};

/** Pushes up to which no closer look is asked for. */
export interface PushGuide {
  /** The force to start or stop a load. */
  readonly startOrStop: Force;
  /** The force to keep it moving. */
  readonly keepMoving: Force;
  /** Who says so, and for what kind of push. */
  readonly source: Citation;
}

const pushFilter = cite(
  "hse-manual-handling",
  "push and pull filter, up to 20 m, hands between knuckle and shoulder",
);

/** Guide figures, not limits: below them most people are at little risk. */
export const pushGuides: { readonly men: PushGuide; readonly women: PushGuide } = {
  men: { startOrStop: newton(200), keepMoving: newton(100), source: pushFilter },
  women: { startOrStop: newton(150), keepMoving: newton(70), source: pushFilter },
};

/** A case rolling on a floor or up a ramp. */
export interface RollingCase {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Push on the level as a share of the weight; see `rollingShares`. */
  readonly resistance: Ratio;
  /** The slope of the ramp; 0 on the level. */
  readonly slope: Angle;
}

/**
 * The push that keeps a case rolling, along the floor: weight x (share x cos(slope) + sin(slope)).
 *
 * @source HSE L23 for the share on the level; statics for the ramp
 * @throws Refusal unless the mass is positive, the share 0 or more and the slope from 0 to 45 degrees
 * @example rollingPush({ mass: kg(200), resistance: ratio(0.02), slope: degree(0) }) // 39.23 N
 */
export const rollingPush: Formula<RollingCase, Force> = formula({
  id: "roll.push",
  title: "Push that keeps a case rolling",
  equation: String.raw`F = m g\,(\mu_r \cos\theta + \sin\theta)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "loaded case", above: 0 },
    resistance: {
      symbol: String.raw`\mu_r`,
      kind: Ratio,
      meaning: "push as a share of the weight",
      min: 0,
    },
    slope: { symbol: String.raw`\theta`, kind: Angle, meaning: "slope of the ramp", min: 0, max: degree(45) },
  },
  result: { symbol: "F", kind: Force, meaning: "push along the floor" },
  source: [cite("hse-manual-handling", "push and pull filter"), cite("statics", "weight along a slope")],
  validity: "Steady rolling. Starting, sills and turned casters take more; two people on any ramp.",
  compute: ({ mass, resistance, slope }) =>
    mass * standardGravity * (resistance * Math.cos(slope) + Math.sin(slope)),
});

/**
 * The force that holds a case on its way down a ramp: weight x (sin(slope) - share x cos(slope)); zero where it does
 * not run by itself.
 *
 * @source statics
 * @throws Refusal unless the mass is positive, the share 0 or more and the slope from 0 to 45 degrees
 * @example rampHold({ mass: kg(100), resistance: ratio(0.02), slope: degree(10) }) // 151 N
 */
export const rampHold: Formula<RollingCase, Force> = formula({
  id: "roll.hold",
  title: "Force that holds a case on its way down",
  equation: String.raw`F=\max\left(0,\ m g\,(\sin\theta-\mu_r\cos\theta)\right)`,
  inputs: rollingPush.declaration.inputs,
  result: { symbol: "F", kind: Force, meaning: "force along the ramp that holds it" },
  source: [cite("statics", "weight along a slope")],
  validity: "Steady rolling; a jerk or a late brake takes more. Nobody below it, whatever this says.",
  compute: ({ mass, resistance, slope }) =>
    Math.max(0, mass * standardGravity * (Math.sin(slope) - resistance * Math.cos(slope))),
});

/** A ramp. */
export interface RampSize {
  /** The height from the lower floor to the upper. */
  readonly rise: Length;
  /** The length along the ramp. */
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
  /** The share of the weight that rests on braked casters. */
  readonly share: Ratio;
  /** The friction of a braked tread on the floor. */
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

/** A wheel against a step. */
export interface WheelAtStep {
  /** The load on the wheels that climb, together. */
  readonly load: Force;
  /** The diameter of the wheel. */
  readonly diameter: Length;
  /** The height of the step; a gap counts by how deep the wheel sinks. */
  readonly step: Length;
}

/**
 * Level push at the axle that lifts a wheel over a step: F sqrt(2 r s - s2) / (r - s).
 *
 * @source moments about the edge of the step
 * @throws Refusal unless the load is positive and the step lower than the axle
 * @example stepPush({ load: newton(7.84), diameter: mm(120), step: mm(30) }) // 13.58 N
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
 * @throws Refusal unless the gap is narrower than the wheel
 * @example gapDepth(gapDepth.read({ diameter: "4 in", gap: "0 in" })) // 0 mm
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

/** A caster on a floor. */
export interface CasterOnFloor {
  /** The load on the caster. */
  readonly load: Force;
  /** The area of tread that touches: press it on carbon paper. */
  readonly contact: Area;
}

/**
 * Pressure of a caster on the floor: F / A.
 *
 * @source statics
 * @throws Refusal for a negative load or no contact
 * @example floorPressure(floorPressure.read({ load: "300 N", contact: "100 mm2" })) // 3 MPa
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
