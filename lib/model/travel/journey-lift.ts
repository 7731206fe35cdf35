/** The lift of the journey, and one person's share against it. */
import type { Journey } from "../../design/index.js";
import { judgeLift, type Lift, type LiftDuration, LiftRate, type LiftVerdict } from "../../moving/index.js";
import { degree, hour, type Length, Mass } from "../../quantity/index.js";
import type { ReviewInput } from "../review-input.js";

/** How each person of the journey lifts. */
export function liftOf({
  case: {
    journey: { liftFrom, liftTo, reach, liftsPerMinute, liftingTime, grip },
  },
}: ReviewInput): Lift {
  const hands = (height: Length) => ({ reach, height, twist: degree(0) });
  return {
    start: hands(liftFrom),
    end: hands(liftTo),
    rate: LiftRate.of(liftsPerMinute, "lifts/min"),
    duration: durationOf(liftingTime),
    grip,
  };
}

function durationOf(time: Journey["liftingTime"]): LiftDuration {
  if (time <= hour(1)) return "up to 1 h";
  return time <= hour(2) ? "1 to 2 h" : "2 to 8 h";
}

/** One person's share of a load against the limit of the journey's lift. */
export function judgeShare(input: ReviewInput, share: Mass): LiftVerdict {
  return judgeLift(share, liftOf(input));
}

/** The lower of the limits at the two ends of a judged lift. */
export function limitOf({ atStart, atEnd }: LiftVerdict): Mass {
  return Mass.si(Math.min(atStart.value.limit, atEnd.value.limit));
}
