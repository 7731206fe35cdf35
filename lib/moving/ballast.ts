/** What keeps a case standing on its ground: ballast, outriggers. */
import { type Formula, formula } from "../formula.js";
import { Angle, Length, Mass } from "../quantity/index.js";
import { type Citation, cite } from "../source.js";

/** A case and a weight laid low. */
export interface BallastNeed {
  /** Case and all that is in it. */
  readonly mass: Mass;
  /** Centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** The height of the centre of gravity. */
  readonly height: Length;
  /** Lean to be borne. */
  readonly angle: Angle;
  /** Ballast to the same edge. */
  readonly ballastFromEdge: Length;
  /** The height of the ballast above the floor. */
  readonly ballastHeight: Length;
}

/**
 * Ballast that makes a case bear a lean: m (h tan(a) - b) / (b2 - h2 tan(a)); zero where it bears it already.
 *
 * @source moments about the tipping edge
 * @throws Refusal unless masses and heights fit, or where the ballast would itself fall over
 * @example ballastNeeded(ballastNeeded.read({ mass: "50 kg", halfBase: "0.1 m", height: "1 m",
 *   angle: "45 deg", ballastFromEdge: "0.5 m", ballastHeight: "0 m" })) // 90 kg
 */
export const ballastNeeded: Formula<BallastNeed, Mass> = formula({
  id: "tip.ballast",
  title: "Ballast that makes a case stand",
  equation: String.raw`m_b=\max\left(0,\ m\,\frac{h\tan\alpha-b}{b_b-h_b\tan\alpha}\right)`,
  inputs: {
    mass: { symbol: "m", kind: Mass, meaning: "case", above: 0 },
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the centre of gravity", above: 0 },
    angle: { symbol: String.raw`\alpha`, kind: Angle, meaning: "lean to bear", min: 0, below: Math.PI / 2 },
    ballastFromEdge: { symbol: "b_b", kind: Length, meaning: "ballast to the tipping edge", above: 0 },
    ballastHeight: { symbol: "h_b", kind: Length, meaning: "height of the ballast", min: 0 },
  },
  result: { symbol: "m_b", kind: Mass, meaning: "ballast" },
  source: [cite("statics", "moments about the tipping edge")],
  validity: "Ballast made fast inside; it counts in every lift.",
  refuse: ({ angle, ballastFromEdge, ballastHeight }) =>
    ballastFromEdge > ballastHeight * Math.tan(angle)
      ? []
      : ["ballast that high so near the edge tips the case instead"],
  compute: ({ mass, halfBase, height, angle, ballastFromEdge, ballastHeight }) => {
    const slope = Math.tan(angle);
    return Math.max(0, (mass * (height * slope - halfBase)) / (ballastFromEdge - ballastHeight * slope));
  },
});

/** How a case stands and should stand. */
export interface OutriggerNeed {
  /** Centre of gravity to the edge it would tip over now. */
  readonly halfBase: Length;
  /** The height of the centre of gravity. */
  readonly height: Length;
  /** Lean to be borne. */
  readonly angle: Angle;
}

/**
 * How far an outrigger must reach past the tipping edge: h tan(a) - b; zero where the base is wide enough.
 *
 * @source moments about the tipping edge
 * @throws Refusal unless lengths are positive and the lean from 0 to below 90 degrees
 * @example outriggerReach(outriggerReach.read({ halfBase: "0.2 m", height: "1 m", angle: "45 deg" })) // 800 mm
 */
export const outriggerReach: Formula<OutriggerNeed, Length> = formula({
  id: "tip.outrigger",
  title: "Reach of an outrigger",
  equation: String.raw`e=\max(0,\ h\tan\alpha-b)`,
  inputs: {
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the centre of gravity", above: 0 },
    angle: { symbol: String.raw`\alpha`, kind: Angle, meaning: "lean to bear", min: 0, below: Math.PI / 2 },
  },
  result: { symbol: "e", kind: Length, meaning: "reach past the edge" },
  source: [cite("statics", "moments about the tipping edge")],
  validity: "A stiff outrigger that touches the floor.",
  compute: ({ halfBase, height, angle }) => Math.max(0, height * Math.tan(angle) - halfBase),
});

/** A floor or ground that slopes: what a standing case should bear beside its own wobble. IEC 60601-1 asks 5 degrees. */
export const groundSlope: { readonly angle: Angle; readonly source: Citation } = {
  angle: Angle.of(5, "deg"),
  source: cite("iec-60601", "9.4.2, in any normal use"),
};
