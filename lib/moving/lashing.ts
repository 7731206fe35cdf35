/** Straps over a case on a vehicle's floor. EN 12195-1:2010, accelerations of road transport. */
import { type Formula, formula } from "../formula.js";
import {
  Angle,
  Count,
  choice,
  degree,
  Force,
  type Kind,
  Length,
  Mass,
  Ratio,
  standardGravity,
} from "../quantity/index.js";
import { cite } from "../source.js";

/** Which way the load wants to go. */
export type RideWay = "forward" | "rearward" | "sideways";
/** All three. */
export const rideWays: readonly RideWay[] = ["forward", "rearward", "sideways"];
export const RideWay: Kind<RideWay> = choice("way", rideWays);

/** Shares of gravity on the road, and the safety factor of frictional lashing. EN 12195-1:2010, tables 2 and 4. */
const sliding: Readonly<Record<RideWay, number>> = { forward: 0.8, rearward: 0.5, sideways: 0.5 };
/** The same for a load that may tip: sideways 0.6. */
const tilting: Readonly<Record<RideWay, number>> = { forward: 0.8, rearward: 0.5, sideways: 0.6 };
const safety: Readonly<Record<RideWay, number>> = { forward: 1.25, rearward: 1.1, sideways: 1.1 };

/**
 * Push of the road on a load, as a share of its weight. EN 12195-1:2010: 0.8 forward, 0.5 rearward and
 * sideways, 0.6 sideways for a load that may tip.
 *
 * @throws nothing: every way and movement has its figure
 * @example rideShare({ way: "forward", movement: "sliding" }) // 0.8
 */
export const rideShare: Formula<{ readonly way: RideWay; readonly movement: "sliding" | "tilting" }, Ratio> =
  formula<{ readonly way: RideWay; readonly movement: "sliding" | "tilting" }, Ratio>({
    id: "ride.share",
    title: "Push of the road on a load",
    equation: "c",
    inputs: {
      way: { symbol: "w", kind: RideWay, meaning: "which way" },
      movement: {
        symbol: "u",
        kind: choice("movement", ["sliding", "tilting"]),
        meaning: "sliding or tilting",
      },
    },
    result: { symbol: "c", kind: Ratio, meaning: "share of the weight" },
    source: [cite("en-12195", "table 2"), cite("ctu-code", "acceleration coefficients, road")],
    validity: "Road transport in normal traffic, evasive action and hard braking included; not a crash.",
    compute: ({ way, movement }) => (movement === "sliding" ? sliding : tilting)[way],
  });

/** A case held down by straps over it. */
export interface TieDown {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Between case and floor: 0.3 to 0.45 for wood on wood, 0.6 with an anti-slip mat. */
  readonly friction: Ratio;
  /** Between strap and floor, at its steepest 90 degrees. */
  readonly strapAngle: Angle;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Tension of all straps together that keeps a case from sliding: (c - mu) m g f / (2 mu sin(alpha)).
 * Zero where friction alone holds it, though a strap still keeps it from wandering.
 *
 * @source EN 12195-1:2010, eq. 10, with c_z = 1
 * @throws RangeError unless mass and friction are positive and the angle is above 0 and at most 90 degrees
 * @example tieDownTension({ mass: kg(500), friction: ratio(0.3), strapAngle: degree(75), way: "forward" }) // 5288 N
 */
export const tieDownTension: Formula<TieDown, Force> = formula({
  id: "lashing.slide",
  title: "Strap tension that keeps a case from sliding",
  equation: String.raw`n F_T=\max\left(0,\ \frac{(c-\mu)\,m g}{2\,\mu\,\sin\alpha}\,f_s\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "loaded case", above: 0 },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction on the floor", above: 0, max: 1 },
    strapAngle: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "strap against the floor",
      above: 0,
      max: degree(90),
    },
    way: { symbol: "c, f_s", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "n F_T", kind: Force, meaning: "tension of all straps together" },
  source: [cite("en-12195", "tie-down lashing, sliding"), cite("ctu-code", "annex 7, appendix 4")],
  validity:
    "Straps over the top, sound anchor points, every strap at its standard tension and checked after the first miles.",
  warn: ({ strapAngle }) =>
    strapAngle < degree(30) ? ["below 30 degrees a strap presses too little: block the case instead"] : [],
  compute: ({ mass, friction, strapAngle, way }) =>
    Math.max(
      0,
      ((sliding[way] - friction) * mass * standardGravity * safety[way]) /
        (2 * friction * Math.sin(strapAngle)),
    ),
});

/** A case that may tip under straps over it. */
export interface TieDownTilt {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Of the centre of gravity. */
  readonly height: Length;
  /** Centre of gravity to the edge it would tip over. */
  readonly toEdge: Length;
  /** Of the case, the way it would tip: from one strap corner to the other. */
  readonly width: Length;
  /** Between strap and floor. */
  readonly strapAngle: Angle;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Tension of all straps together that keeps a case from tipping: (c d - b) m g f / (w sin(alpha)). Moments
 * about the tipping edge, both sides of the strap pulling alike; zero where it stands by itself.
 *
 * @source EN 12195-1:2010, tie-down lashing against tilting; moments
 * @throws RangeError unless mass, lengths and angle are positive
 */
export const tieDownTilt: Formula<TieDownTilt, Force> = formula({
  id: "lashing.tilt",
  title: "Strap tension that keeps a case from tipping",
  equation: String.raw`n F_T=\max\left(0,\ \frac{(c\,d-b)\,m g}{w\,\sin\alpha}\,f_s\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "loaded case", above: 0 },
    height: { symbol: "d", kind: Length, meaning: "height of the centre of gravity", above: 0 },
    toEdge: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    width: { symbol: "w", kind: Length, meaning: "width under the strap", above: 0 },
    strapAngle: {
      symbol: String.raw`\alpha`,
      kind: Angle,
      meaning: "strap against the floor",
      above: 0,
      max: degree(90),
    },
    way: { symbol: "c, f_s", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "n F_T", kind: Force, meaning: "tension of all straps together" },
  source: [cite("en-12195", "tie-down lashing, tilting"), cite("statics", "moments about the tipping edge")],
  validity: "One case by itself; straps across the way it would tip.",
  compute: ({ mass, height, toEdge, width, strapAngle, way }) =>
    Math.max(
      0,
      ((tilting[way] * height - toEdge) * mass * standardGravity * safety[way]) /
        (width * Math.sin(strapAngle)),
    ),
});

/** A load against a bulkhead. */
export interface BlockedLoad {
  /** Of the load. */
  readonly mass: Mass;
  /** Under it. */
  readonly friction: Ratio;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Force on what a case leans against: (c - mu) m g. Zero where friction alone holds it.
 *
 * @source EN 12195-1:2010, blocking
 * @throws RangeError unless the mass is positive and friction from 0 to 1
 */
export const blockingForce: Formula<BlockedLoad, Force> = formula({
  id: "lashing.block",
  title: "Force on a bulkhead",
  equation: String.raw`F_B=\max(0,\ (c-\mu)\,m g)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "load", above: 0 },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction on the floor", min: 0, max: 1 },
    way: { symbol: "c", kind: RideWay, meaning: "which way" },
  },
  result: { symbol: "F_B", kind: Force, meaning: "on the bulkhead" },
  source: [cite("en-12195", "blocking")],
  validity: "A load that touches the bulkhead; a gap turns the push into a blow.",
  compute: ({ mass, friction, way }) => Math.max(0, (sliding[way] - friction) * mass * standardGravity),
});

/** Straps to share a tension. */
export interface StrapSet {
  /** Of all straps together. */
  readonly tension: Force;
  /** Standard tension of one, STF on its label. */
  readonly each: Force;
}

/**
 * How many straps a tension takes, whole ones.
 *
 * @source EN 12195-1:2010, number of lashings
 * @throws RangeError for a negative tension, or a strap without one
 * @example strapCount({ tension: newton(5290), each: newton(4000) }) // 2
 */
export const strapCount: Formula<StrapSet, number> = formula({
  id: "lashing.straps",
  title: "Straps needed",
  equation: String.raw`n=\left\lceil\frac{n F_T}{S_{TF}}\right\rceil`,
  inputs: {
    tension: { symbol: "n F_T", kind: Force, meaning: "tension of all straps together", min: 0 },
    each: { symbol: "S_{TF}", kind: Force, meaning: "standard tension of one strap", above: 0 },
  },
  result: { symbol: "n", kind: Count, meaning: "straps" },
  source: [cite("en-12195", "number of lashings")],
  validity: "The standard tension (STF) printed on the strap, not its breaking strength.",
  compute: ({ tension, each }) => Math.ceil(tension / each - 1e-9),
});
