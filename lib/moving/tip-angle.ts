/** The lean at which a case tips: one way, the four ways, and every direction. */
import { type Formula, formula, type WorkedLine } from "../formula.js";
import { Angle, degree, Length } from "../quantity/index.js";
import { Refusal } from "../refusal.js";
import { type Citation, cite } from "../source.js";
import { armTowards, type TippingEdge, type TipWay, tippingEdges } from "./tipping-edges.js";

/** A case on its feet or casters, seen from the side. */
export interface Stance {
  /** The distance along the floor from below the centre of gravity to the edge it would tip over. */
  readonly halfBase: Length;
  /** The height of the centre of gravity above the floor. */
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
  /** The height of the centre of gravity above the floor. */
  readonly height: Length;
  /** The lean to be borne without tipping. */
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

/** The base a case stands on and where it balances, from the base's front left corner at floor level. */
export interface StandingCase {
  /** The lines it can tip over, where they are not the four sides of that base. */
  readonly edges?: readonly TippingEdge[];
  /** Left to right, between the outermost points that touch the floor. */
  readonly baseWidth: Length;
  /** Front to back, between the same. */
  readonly baseDepth: Length;
  /** The distance from the left edge of the base to the centre of gravity. */
  readonly fromLeft: Length;
  /** The distance from the front edge of the base to the centre of gravity. */
  readonly fromFront: Length;
  /** The height of the centre of gravity above the floor. */
  readonly height: Length;
}

/** One way with its worked line. */
export interface TipOver {
  /** The side it falls to. */
  readonly way: TipWay;
  /** The tip angle that way. */
  readonly worked: WorkedLine & { readonly value: Angle };
}

/** The lines a case can tip over, the nearest first. */
export function edgesOf({
  edges,
  baseWidth,
  baseDepth,
  fromLeft,
  fromFront,
}: StandingCase): readonly TippingEdge[] {
  if (edges) return edges;
  const fixed = Length.si(0);
  const feet = [
    { x: fixed, y: fixed, offset: fixed },
    { x: baseWidth, y: fixed, offset: fixed },
    { x: fixed, y: baseDepth, offset: fixed },
    { x: baseWidth, y: baseDepth, offset: fixed },
  ];
  return tippingEdges(feet, { x: fromLeft, y: fromFront });
}

/**
 * The tip angle over each edge of the base, the least first.
 *
 * @throws Refusal where the centre of gravity does not stand over the base
 * @example tipWays({ baseWidth: mm(600), baseDepth: mm(500), fromLeft: mm(300), fromFront: mm(200), height: mm(700) })[0]?.way // front
 */
export function tipWays(standing: StandingCase): TipOver[] {
  const edges = edgesOf(standing);
  const outside = edges.find(({ arm }) => !(arm > 0));
  if (outside)
    throw new Refusal(
      `tip angle: the centre of gravity does not stand over the base, it falls to the ${outside.way}`,
    );
  return edges.map(({ way, arm }) => ({
    way,
    worked: tipAngle.worked({ halfBase: arm, height: standing.height }),
  }));
}

/** Lean in one direction. */
export interface ToppleDirection {
  /** The angle from the right, anticlockwise seen from above: 90 degrees is the back. */
  readonly heading: Angle;
  /** Lean at which it tips that way. */
  readonly lean: Angle;
}

/**
 * The tip angle in every direction: how far the centre of gravity is from the edge of the base that way.
 *
 * @param steps directions, evenly round
 * @throws Refusal where the centre of gravity does not stand over the base
 */
export function toppleDirections(standing: StandingCase, steps: number): readonly ToppleDirection[] {
  const edges = edgesOf(standing);
  if (edges.some(({ arm }) => !(arm > 0)))
    throw new Refusal("tip directions: the centre of gravity does not stand over the base");
  return Array.from({ length: steps }, (_, i) => {
    const heading = Angle.si((2 * Math.PI * i) / steps);
    return { heading, lean: Angle.si(Math.atan2(armTowards(edges, heading), standing.height)) };
  });
}
