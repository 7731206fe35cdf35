/** A whole lift: its limit where it begins and where it ends, and the index of the worse of the two. */
import type { WorkedLine } from "../formula.js";
import { type Angle, Length, Mass, type Ratio } from "../quantity/index.js";
import type { LiftDuration } from "./lift-frequency.js";
import { liftIndex } from "./lift-index.js";
import { type Grip, type LiftLimit, liftLimit } from "./lift-limit.js";
import type { LiftRate } from "./lift-rate.js";

/** Where the hands are at one end of a lift. */
export interface HandsAt {
  /** From the middle between the ankles to the middle between the hands, along the floor. */
  readonly reach: Length;
  /** Above the floor. */
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
  /** Of the lifting in a day. */
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
  /** Against the lower of the two limits. */
  readonly index: WorkedLine & { readonly value: Ratio };
  /** To be shown with any of these figures. */
  readonly caution: string;
}

/** Holds for every use of the equation. */
export const liftCaution: string =
  "The equation holds for one healthy adult lifting with both hands, standing, on a sound floor; it protects most people, not everyone. Follow the rules that apply where you work, and get help or a machine when in doubt.";

/**
 * Judges a lift at both ends, since a case is set down with care, and compares the load with the lower
 * limit.
 *
 * @source NIOSH 94-110 (2021), 2.3: significant control at the destination
 * @throws Refusal where the hands are out of the equation's range, or the lifting so frequent that it
 * allows nothing
 * @example judgeLift(kg(18), { start: { reach: mm(350), height: mm(400), twist: degree(0) }, end: { reach: mm(350), height: mm(900), twist: degree(0) }, rate: LiftRate.of(0.2, "lifts/min"), duration: "up to 1 h", grip: "good" }).index.value // 1.345
 */
export function judgeLift(load: Mass, { start, end, rate, duration, grip }: Lift): LiftVerdict {
  const travel = Length.si(Math.abs(end.height - start.height));
  const limitAt = (hands: HandsAt): LiftVerdict["atStart"] =>
    liftLimit.worked({ ...hands, startHeight: start.height, travel, rate, duration, grip });
  const [atStart, atEnd] = [limitAt(start), limitAt(end)];
  const limit = Mass.si(Math.min(atStart.value.limit, atEnd.value.limit));
  return { atStart, atEnd, index: liftIndex.worked({ load, limit }), caution: liftCaution };
}
