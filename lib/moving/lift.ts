/** A whole lift: its limit where it begins and where it ends, and the index of the worse of the two. */
import { type Formula, formula, type WorkedLine } from "../formula.js";
import { type Angle, Length, Mass, Ratio } from "../quantity/index.js";
import { cite } from "../source.js";
import { type Grip, type LiftDuration, type LiftLimit, type LiftRate, liftLimit } from "./lift-limit.js";

/** What is lifted, and what may be. */
export interface LoadAndLimit {
  /** The heaviest load lifted. */
  readonly load: Mass;
  /** The lower of the limits at the two ends of the lift. */
  readonly limit: Mass;
}

/**
 * The lifting index LI = load / recommended weight limit. Up to 1 is the aim for every lift; above 1 some
 * people are at more risk of a hurt back, above 3 nearly all are.
 *
 * @source NIOSH 94-110 (2021), 1.1.2 and 1.4
 * @throws Refusal where the limit is nothing, for a negative load
 * @example liftIndex({ load: kg(20), limit: kg(16) }) // 1.25
 */
export const liftIndex: Formula<LoadAndLimit, Ratio> = formula({
  id: "lift.index",
  title: "Lifting index",
  equation: String.raw`\mathrm{LI} = \frac{L}{\mathrm{RWL}}`,
  inputs: {
    load: { symbol: "L", kind: Mass, meaning: "load", min: 0 },
    limit: { symbol: String.raw`\mathrm{RWL}`, kind: Mass, meaning: "recommended weight limit", above: 0 },
  },
  result: { symbol: String.raw`\mathrm{LI}`, kind: Ratio, meaning: "lifting index" },
  source: [cite("niosh-lifting", "1.1.2 and 1.4")],
  validity: "As the limit it is compared with.",
  compute: ({ load, limit }) => load / limit,
});

/** Where the hands are at one end of a lift. */
export interface HandsAt {
  /** The distance from the middle between the ankles to the middle between the hands, along the floor. */
  readonly reach: Length;
  /** The height of the hands above the floor. */
  readonly height: Length;
  /** How far to the side of straight ahead. */
  readonly twist: Angle;
}

/** One lift by one person with both hands. */
export interface Lift {
  /** Where the load is taken up. */
  readonly start: HandsAt;
  /** Where it is set down. */
  readonly end: HandsAt;
  /** Averaged over a quarter of an hour. */
  readonly rate: LiftRate;
  /** The duration of the lifting in a day. */
  readonly duration: LiftDuration;
  /** How well the hands hold on. */
  readonly grip: Grip;
}

/** What the equation says of a lift. */
export interface LiftVerdict {
  /** The limit where the load is taken up. */
  readonly atStart: WorkedLine & { readonly value: LiftLimit };
  /** The limit where it is set down. */
  readonly atEnd: WorkedLine & { readonly value: LiftLimit };
  /** The load as a share of the lower of the two limits. */
  readonly index: WorkedLine & { readonly value: Ratio };
  /** The caution to be shown with any of these figures. */
  readonly caution: string;
}

/** Holds for every use of the equation. */
export const liftCaution: string =
  "The equation holds for one healthy adult lifting with both hands, standing, on a sound floor; it protects most people, not everyone. Follow the rules that apply where you work, and get help or a machine when in doubt.";

/** The limits at both ends of a lift, whatever is lifted; nothing at all where nobody may lift so. */
export function liftLimits({
  start,
  end,
  rate,
  duration,
  grip,
}: Lift): Pick<LiftVerdict, "atStart" | "atEnd"> {
  const travel = Length.si(Math.abs(end.height - start.height));
  const limitAt = (hands: HandsAt): LiftVerdict["atStart"] =>
    liftLimit.worked({ ...hands, startHeight: start.height, travel, rate, duration, grip });
  return { atStart: limitAt(start), atEnd: limitAt(end) };
}

/**
 * Judges a lift at both ends, since a case is set down with care, and compares the load with the lower
 * limit.
 *
 * @source NIOSH 94-110 (2021), 2.3: significant control at the destination
 * @throws Refusal where the hands are out of the equation's range, or the lifting so frequent that it
 * allows nothing
 * @example judgeLift(kg(18), { start: { reach: mm(350), height: mm(400), twist: degree(0) }, end: { reach: mm(350), height: mm(900), twist: degree(0) }, rate: LiftRate.of(0.2, "lifts/min"), duration: "up to 1 h", grip: "good" }).index.value // 1.345
 */
export function judgeLift(load: Mass, lift: Lift): LiftVerdict {
  const { atStart, atEnd } = liftLimits(lift);
  const limit = Mass.si(Math.min(atStart.value.limit, atEnd.value.limit));
  return { atStart, atEnd, index: liftIndex.worked({ load, limit }), caution: liftCaution };
}
