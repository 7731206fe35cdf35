import { gapDepth, pushGuides, rollingPush, rollingShares, stepPush } from "../../moving/index.js";
import { Angle, Force, Length, standardGravity } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding } from "../finding.js";
import type { Reply } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { asked, need } from "./asked.js";
import { standOf } from "./stand.js";

const rampCaution =
  "Two people on any ramp and never one below the case: it weighs more than both can hold once it runs. Stop at the foot, look, go straight up; a winch or an empty case is no shame.";
const stepCaution =
  "A wheel that stops dead throws the case over its front. Lift wheel by wheel over a step, one hand above, one low, feet clear.";

/** Whether two people can start it, get it over thresholds and gaps, and up a ramp. */
export function pushFindings(input: ReviewInput): readonly Finding[] {
  const { threshold, gap, ramp, wheel } = input.case.journey;
  const size = need(wheel, "the diameter of a caster wheel", '"wheel: 4"');
  return [
    asked(input, "start", "Can two people start the stacked case rolling?", [stepCaution], [], startReply),
    asked(
      input,
      "threshold",
      "Does it get over the highest threshold?",
      [stepCaution],
      [need(threshold, "the highest step on the way", '"threshold: 5/8"'), size],
      stepReply,
    ),
    asked(
      input,
      "gap",
      "Does it get over the widest gap?",
      [stepCaution],
      [need(gap, "the widest gap on the way", '"gap: 3/4"'), size],
      gapReply,
    ),
    asked(
      input,
      "ramp",
      "Can two people push the stacked case up the ramp, and hold it?",
      [rampCaution],
      [need(ramp, "the slope of the ramp", '"ramp: 10 deg"')],
      rampReply,
    ),
  ];
}

/** Two people may push twice the guide figure of one; the lower of the two published. */
const pushers = 2;
const guideOf = (which: "startOrStop" | "keepMoving"): Force => Force.si(pushers * pushGuides.women[which]);

/** Common practice, no source: starting takes about twice what rolling takes. */
const startFactor = 2;

function startReply(input: ReviewInput): Reply {
  const { balance } = standOf(input);
  const { share, source } = input.case.journey.floor === "even" ? rollingShares.good : rollingShares.uneven;
  const push = rollingPush.worked({ mass: balance.value.mass, resistance: share, slope: Angle.si(0) });
  const start = Force.si(startFactor * push.value);
  return pushed(input, start, "startOrStop", "push that starts it", [balance, push], [source, stepCaution]);
}

function stepReply(input: ReviewInput): Reply {
  const { threshold, wheel } = input.case.journey;
  return climbReply(input, threshold ?? Length.si(0), wheel ?? Length.si(0), []);
}

function gapReply(input: ReviewInput): Reply {
  const { gap, wheel } = input.case.journey;
  const depth = gapDepth.worked({ diameter: wheel ?? Length.si(0), gap: gap ?? Length.si(0) });
  return climbReply(input, depth.value, wheel ?? Length.si(0), [depth]);
}

/** The two leading wheels climb together and carry half the case. */
function climbReply(input: ReviewInput, step: Length, diameter: Length, before: Reply["because"]): Reply {
  const { balance } = standOf(input);
  const load = Force.si((balance.value.mass * standardGravity) / 2);
  const climb = stepPush.worked({ load, diameter, step });
  return pushed(
    input,
    climb.value,
    "startOrStop",
    "push over it",
    [balance, ...before, climb],
    [cite("statics", "moments about the edge of the step"), stepCaution],
  );
}

function rampReply(input: ReviewInput): Reply {
  const { floor, ramp } = input.case.journey;
  const { balance } = standOf(input);
  const { share, source } = floor === "even" ? rollingShares.good : rollingShares.uneven;
  const push = rollingPush.worked({
    mass: balance.value.mass,
    resistance: share,
    slope: ramp ?? Angle.si(0),
  });
  const weight = balance.value.mass * standardGravity;
  const back = Force.si(Math.max(0, weight * (Math.sin(ramp ?? 0) - share * Math.cos(ramp ?? 0))));
  const reply = pushed(
    input,
    push.value,
    "startOrStop",
    "push up the ramp",
    [balance, push],
    [source, rampCaution],
  );
  const down = `On the way down it pulls with ${Force.show(back, styleOf(input.case))}.`;
  return { ...reply, answer: `${reply.answer} ${down}` };
}

function pushed(
  input: ReviewInput,
  push: Force,
  guide: "startOrStop" | "keepMoving",
  words: string,
  because: Reply["because"],
  [source, caution]: readonly [Citation, string],
): Reply {
  const style = styleOf(input.case);
  return compared({
    kind: Force,
    asked: [words, push],
    there: [`guide figure for ${pushers} people`, guideOf(guide)],
    facts: `It takes about ${Force.show(push, style)}; ${pushers} people may push ${Force.show(guideOf(guide), style)} without a closer look.`,
    remedy: "Take the load out or the sections apart, lay a ramp over the step, or use a winch.",
    because,
    cautions: [caution],
    source: [pushGuides.women.source, source],
  });
}
