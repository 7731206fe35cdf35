/** The ramp, up and down. */

import { footprint, type ReviewInput, resistanceOf } from "../../model/index.js";
import { rampHold, rampSlope, rollingPush, rollingShares } from "../../moving/index.js";
import { Angle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import type { Finding } from "../finding.js";
import type { Reply } from "../guarded.js";
import { asked, need } from "./asked.js";
import { pushedReply } from "./pushed.js";

const rampCaution =
  "Two people on any ramp and never one below the case: it weighs more than both can hold once it runs. Stop at the foot, look, go straight up; a winch or an empty case is no shame.";

const rampRemedy =
  "Take the load out or the sections apart, use a longer ramp, or a winch with somebody at its brake.";

/** Whether two people can push the case up the ramp, and hold it on the way down. */
export function rampFindings(input: ReviewInput): readonly Finding[] {
  const { ramp, rampSize } = input.case.journey;
  const missing = [
    need(
      ramp ?? rampSize,
      "the slope of the ramp",
      '"ramp: 10 deg", or "ramp size: { rise: 24, length: 138 }"',
    ),
  ];
  return [
    asked(
      input,
      "ramp",
      "Can two people push the stacked case up the ramp?",
      [rampCaution],
      missing,
      upReply,
    ),
    asked(
      input,
      "ramp-down",
      "Can two people hold the stacked case on its way down the ramp?",
      [rampCaution],
      missing,
      downReply,
    ),
  ];
}

/** Measured as an angle, or reckoned from rise and length. */
function rampOf({ case: { journey } }: ReviewInput): {
  readonly slope: Angle;
  readonly because: Reply["because"];
} {
  if (!journey.rampSize) return { slope: journey.ramp ?? Angle.si(0), because: [] };
  const line = rampSlope.worked(journey.rampSize);
  return { slope: line.value, because: [line] };
}

function upReply(input: ReviewInput): Reply {
  const { balance } = footprint(input);
  const { slope, because } = rampOf(input);
  const resistance = resistanceOf(input);
  const push = rollingPush.worked({ mass: balance.value.mass, resistance: resistance.share, slope });
  return pushedReply(input, {
    words: "push up the ramp",
    push: push.value,
    facts: `The ramp rises ${Angle.show(slope, { digits: 2 })}, on ${resistance.words}.`,
    remedy: rampRemedy,
    because: [balance, ...because, ...resistance.because, push],
    caution: rampCaution,
    source: resistance.source,
  });
}

/** The best casters hold least back. */
function downReply(input: ReviewInput): Reply {
  const { balance } = footprint(input);
  const { slope, because } = rampOf(input);
  const hold = rampHold.worked({
    mass: balance.value.mass,
    resistance: rollingShares.good.share,
    slope,
  });
  return pushedReply(input, {
    words: "pull that holds it on the way down",
    push: hold.value,
    facts: "Reckoned with wheels that roll easily, which hold back least.",
    remedy: rampRemedy,
    because: [balance, ...because, hold],
    caution: rampCaution,
    source: cite("statics", "weight along a slope"),
  });
}
