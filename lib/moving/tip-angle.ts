import { type Formula, formula } from "../formula.js";
import { Angle, degree, Length } from "../quantity/index.js";
import { type Citation, cite } from "../source.js";

/** A case on its feet or casters, seen from the side. */
export interface Stance {
  /** Along the floor, from below the centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** Of the centre of gravity above the floor. */
  readonly height: Length;
}

/** What a free-standing case should bear before it tips. */
export interface TiltCriterion {
  /** Without tipping, in every direction. */
  readonly angle: Angle;
  /** Who asks for it. */
  readonly source: Citation;
}

/** Ten degrees in every direction. IEC 62368-1 ed. 3, 8.6. */
export const steadyTilt: TiltCriterion = { angle: degree(10), source: cite("iec-62368", "8.6.2") };

/**
 * How far a case leans before it tips over an edge: arctan(half base / height of the centre of gravity).
 *
 * @source plain statics: the centre of gravity stands over the edge
 * @throws Refusal unless half base and height are positive
 * @example tipAngle({ halfBase: mm(300), height: mm(700) }) // 23.2°
 */
export const tipAngle: Formula<Stance, Angle> = formula({
  id: "tip.angle",
  title: "Tip angle",
  equation: String.raw`\alpha = \arctan\frac{b}{h}`,
  inputs: {
    halfBase: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge", above: 0 },
    height: { symbol: "h", kind: Length, meaning: "height of the centre of gravity", above: 0 },
  },
  result: { symbol: String.raw`\alpha`, kind: Angle, meaning: "lean at which it tips" },
  source: [cite("statics", "moments about the tipping edge")],
  validity:
    "A stiff case, doors shut, nothing shifting inside. On casters the edge joins two wheels, at their worst swivel.",
  compute: ({ halfBase, height }) => Math.atan2(halfBase, height),
});

/** A height and a lean to bear. */
export interface LeanToBear {
  /** Of the centre of gravity above the floor. */
  readonly height: Length;
  /** To be borne without tipping. */
  readonly angle: Angle;
}

/**
 * The half base a case needs to bear a lean: height x tan(angle).
 *
 * @source plain statics; IEC 62368-1, 8.6 for the ten degrees
 * @throws Refusal for a height that is not positive, an angle that is not from 0 to below 90 degrees
 * @example halfBaseNeeded({ height: mm(700), angle: degree(10) }) // 123.4 mm
 */
export const halfBaseNeeded: Formula<LeanToBear, Length> = formula({
  id: "tip.base.needed",
  title: "Half base needed to bear a lean",
  equation: String.raw`b = h \tan\alpha`,
  inputs: {
    height: { symbol: "h", kind: Length, meaning: "height of the centre of gravity", above: 0 },
    angle: { symbol: String.raw`\alpha`, kind: Angle, meaning: "lean to bear", min: 0, below: Math.PI / 2 },
  },
  result: { symbol: "b", kind: Length, meaning: "centre of gravity to the tipping edge, at least" },
  source: [cite("statics", "moments about the tipping edge"), steadyTilt.source],
  validity: "As the tip angle.",
  compute: ({ height, angle }) => height * Math.tan(angle),
});
