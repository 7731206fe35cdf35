import { footprint, type ReviewInput, resistanceOf } from "../../model/index.js";
import { gapDepth, rollingPush, stepPush } from "../../moving/index.js";
import { Angle, Force, Length, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import type { Finding } from "../finding.js";
import type { Reply } from "../guarded.js";
import { asked, need } from "./asked.js";
import { pushedReply } from "./pushed.js";

const stepCaution =
  "A wheel that stops dead throws the case over its front. Lift wheel by wheel over a step, one hand above, one low, feet clear.";

/** Whether two people can start it, and get it over thresholds and gaps. */
export function pushFindings(input: ReviewInput): readonly Finding[] {
  const { threshold, gap, wheel } = input.case.journey;
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
  ];
}

/** Common practice, no source: starting takes about twice what rolling takes. */
const startFactor = 2;

function startReply(input: ReviewInput): Reply {
  const { balance } = footprint(input);
  const { share, because, source, words } = resistanceOf(input);
  const push = rollingPush.worked({ mass: balance.value.mass, resistance: share, slope: Angle.si(0) });
  return pushedReply(input, {
    words: "push that starts it",
    push: Force.si(startFactor * push.value),
    facts: `That is twice what keeps it rolling, on ${words}.`,
    remedy: "Take the load out or the sections apart, or take larger and harder wheels.",
    because: [balance, ...because, push],
    caution: stepCaution,
    source,
  });
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
  const { balance } = footprint(input);
  const load = Force.si((balance.value.mass * standardGravity) / 2);
  const climb = stepPush.worked({ load, diameter, step });
  return pushedReply(input, {
    words: "push over it",
    push: climb.value,
    remedy:
      "Take the load out or the sections apart, lay a plate or a short ramp over it, or take larger wheels.",
    because: [balance, ...before, climb],
    caution: stepCaution,
    source: cite("statics", "moments about the edge of the step"),
  });
}
