/** Pushing a case on its casters, and what people may be asked to push. */
import { type Formula, formula } from "../formula.js";
import { Angle, degree, Force, Mass, newton, Ratio, ratio, standardGravity } from "../quantity/index.js";
import { type Citation, cite } from "../source.js";

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
  /** To start or stop a load. */
  readonly startOrStop: Force;
  /** To keep it moving. */
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
  /** Of the ramp; 0 on the level. */
  readonly slope: Angle;
}

/**
 * The push that keeps a case rolling, along the floor: weight x (share x cos(slope) + sin(slope)).
 *
 * @source HSE L23 for the share on the level; statics for the ramp
 * @throws Refusal unless the mass is positive, the share from 0 to 1 and the slope from 0 to 45 degrees
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
      max: 1,
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
 * @throws Refusal unless the mass is positive, the share from 0 to 1 and the slope from 0 to 45 degrees
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
