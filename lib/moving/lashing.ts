/** Straps over a load and along it, and what it leans against. */
import { type Formula, type FormulaSymbols, formula } from "../formula.js";
import { Angle, Count, degree, Force, Length, Mass, Ratio, standardGravity } from "../quantity/index.js";
import { cite } from "../source.js";
import { lashingSafety, RideWay, slidingShares, tiltingShares } from "./ride.js";

/** A case held down by straps over it. */
export interface TieDown {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** The friction between case and floor: 0.3 to 0.45 for wood on wood, 0.6 with an anti-slip mat. */
  readonly friction: Ratio;
  /** The strap angle between strap and floor, at its steepest 90 degrees. */
  readonly strapAngle: Angle;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/** Symbols of a strap over the top, whichever way the case would go. */
const strapSymbols: FormulaSymbols<Pick<TieDown, "strapAngle" | "way">> = {
  strapAngle: {
    symbol: String.raw`\alpha`,
    kind: Angle,
    meaning: "strap against the floor",
    above: 0,
    max: degree(90),
  },
  way: { symbol: "c, f_s", kind: RideWay, meaning: "which way" },
};

/**
 * Tension of all straps together that keeps a case from sliding: (c - mu) m g f / (2 mu sin(alpha)).
 * Zero where friction alone holds it, though a strap still keeps it from wandering.
 *
 * @source EN 12195-1:2010, eq. 10, with c_z = 1
 * @throws Refusal unless mass and friction are positive and the angle is above 0 and at most 90 degrees
 * @example tieDownTension({ mass: kg(500), friction: ratio(0.3), strapAngle: degree(75), way: "forward" }) // 5.288 kN
 */
export const tieDownTension: Formula<TieDown, Force> = formula({
  id: "lashing.slide",
  title: "Strap tension that keeps a case from sliding",
  equation: String.raw`n F_T=\max\left(0,\ \frac{(c-\mu)\,m g}{2\,\mu\,\sin\alpha}\,f_s\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "loaded case", above: 0 },
    friction: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction on the floor", above: 0, max: 1 },
    ...strapSymbols,
  },
  result: { symbol: "n F_T", kind: Force, meaning: "tension of all straps together" },
  source: [cite("en-12195", "tie-down lashing, sliding"), cite("ctu-code", "annex 7, appendix 4")],
  validity:
    "Straps over the top, sound anchor points, every strap at its standard tension and checked at the first stop.",
  warn: ({ strapAngle }) =>
    strapAngle < degree(30) ? ["below 30 degrees a strap presses too little: block the case instead"] : [],
  compute: ({ mass, friction, strapAngle, way }) =>
    Math.max(
      0,
      ((slidingShares[way] - friction) * mass * standardGravity * lashingSafety[way]) /
        (2 * friction * Math.sin(strapAngle)),
    ),
});

/** A case that may tip under straps over it. */
export interface TieDownTilt {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** The height of the centre of gravity. */
  readonly height: Length;
  /** Centre of gravity to the edge it would tip over. */
  readonly toEdge: Length;
  /** The width of the case, the way it would tip: from one strap corner to the other. */
  readonly width: Length;
  /** The strap angle between strap and floor. */
  readonly strapAngle: Angle;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Tension of all straps together that keeps a case from tipping: (c d - b) m g f / (w sin(alpha)). Moments
 * about the tipping edge, both sides of the strap pulling alike; zero where it stands by itself.
 *
 * @source EN 12195-1:2010, tie-down lashing against tilting; moments
 * @throws Refusal unless mass, lengths and angle are positive
 * @example tieDownTilt(tieDownTilt.read({ mass: "100 kg", height: "1 m", toEdge: "0.3 m", width: "0.6 m", strapAngle: "90 deg", way: "sideways" })) // 539.4 N
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
    ...strapSymbols,
  },
  result: { symbol: "n F_T", kind: Force, meaning: "tension of all straps together" },
  source: [cite("en-12195", "tie-down lashing, tilting"), cite("statics", "moments about the tipping edge")],
  validity: "One case by itself; straps across the way it would tip.",
  compute: ({ mass, height, toEdge, width, strapAngle, way }) =>
    Math.max(
      0,
      ((tiltingShares[way] * height - toEdge) * mass * standardGravity * lashingSafety[way]) /
        (width * Math.sin(strapAngle)),
    ),
});

/** Straps over a case at the tension that their label names. */
export interface TightStraps {
  /** How many run over it. */
  readonly straps: number;
  /** Standard tension of one, STF on its label. */
  readonly tension: Force;
  /** The strap angle between strap and floor. */
  readonly strapAngle: Angle;
}

/**
 * What straps over a case press it down with: 2 n S sin(alpha), both legs of each pulling alike.
 *
 * @source EN 12195-1, tie-down lashing: the vertical part of the tension; statics
 * @throws Refusal for no strap, a negative tension or an angle that is not above 0 and at most 90 degrees
 * @example strapPress({ straps: 2, tension: newton(2500), strapAngle: degree(90) }) // 10 kN
 */
export const strapPress: Formula<TightStraps, Force> = formula({
  id: "lashing.press",
  title: "What straps press a case down with",
  equation: String.raw`P=2\,n\,S_{TF}\,\sin\alpha`,
  inputs: {
    straps: { symbol: "n", kind: Count, meaning: "straps over it", min: 1 },
    tension: { symbol: "S_{TF}", kind: Force, meaning: "tension of one", min: 0 },
    strapAngle: strapSymbols.strapAngle,
  },
  result: { symbol: "P", kind: Force, meaning: "pressed down with" },
  source: [
    cite("en-12195", "tie-down lashing, vertical part of the tension"),
    cite("statics", "components of a force"),
  ],
  validity: "Both legs at the tension of the label; friction at the edges leaves the far leg slacker.",
  compute: ({ straps, tension, strapAngle }) => 2 * straps * tension * Math.sin(strapAngle),
});

/**
 * Friction to reckon with from the slope at which a thing starts to slide: 0.925 of its tangent.
 *
 * @source EN 12195-1:2010, annex B: the tilt test
 * @throws Refusal for a negative friction
 * @example tiltedFriction({ tangent: ratio(1) }) // 0.925
 */
export const tiltedFriction: Formula<{ readonly tangent: Ratio }, Ratio> = formula({
  id: "lashing.friction",
  title: "Friction to reckon with from a tilt test",
  equation: String.raw`\mu=0.925\,\tan\varphi`,
  inputs: {
    tangent: {
      symbol: String.raw`\tan\varphi`,
      kind: Ratio,
      meaning: "rise over run as it starts to slide",
      min: 0,
    },
  },
  result: { symbol: String.raw`\mu`, kind: Ratio, meaning: "friction to reckon with" },
  source: [cite("en-12195", "annex B, tilt test: 0.925 of the tangent, mean of the middle three of five")],
  validity:
    "The very surfaces, swept and in the state they travel in; five tests, the highest and lowest left out.",
  compute: ({ tangent }) => 0.925 * tangent,
});

/** A load against a bulkhead. */
export interface BlockedLoad {
  /** The mass of the load. */
  readonly mass: Mass;
  /** The friction under the load. */
  readonly friction: Ratio;
  /** Which way the road pushes. */
  readonly way: RideWay;
}

/**
 * Force on what a case leans against: (c - mu) m g. Zero where friction alone holds it.
 *
 * @source EN 12195-1:2010, blocking
 * @throws Refusal unless the mass is positive and friction from 0 to 1
 * @example blockingForce(blockingForce.read({ mass: "500 kg", friction: 0.3, way: "forward" })) // 2.452 kN
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
  compute: ({ mass, friction, way }) => Math.max(0, (slidingShares[way] - friction) * mass * standardGravity),
});

/** Straps to share a tension. */
export interface StrapSet {
  /** The tension of all straps together. */
  readonly tension: Force;
  /** Standard tension of one, STF on its label. */
  readonly each: Force;
}

/**
 * How many straps a tension takes, whole ones.
 *
 * @source EN 12195-1:2010, number of lashings
 * @throws Refusal for a negative tension, or a strap without one
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
