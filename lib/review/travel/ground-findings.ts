import {
  brakedSlope,
  casterStands,
  floorPressure,
  gapDepth,
  groundSlope,
  pushGuides,
  rollingPush,
  rollingShares,
  stepPush,
} from "../../moving/index.js";
import { Angle, Force, Length, Pressure, ratio, standardGravity } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import { styleOf } from "../amount.js";
import { compared } from "../compared.js";
import type { Finding, MissingMeasurement } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { castersOf, standOf } from "./stand.js";

const rampCaution =
  "Two people on any ramp and never one below the case: it weighs more than both can hold once it runs. Stop at the foot, look, go straight up; a winch or an empty case is no shame.";
const stepCaution =
  "A wheel that stops dead throws the case over its front. Lift wheel by wheel over a step, one hand above, one low, feet clear.";
const brakeCaution = "Brakes hold a case on the level. Chock it on any slope, and never leave it on a ramp.";
const floorCaution =
  "Ask the owner of the floor; put boards under the casters of a case that stands for days.";

/** What the casters meet on the way, each with its own measurement. */
export function groundFindings(input: ReviewInput): readonly Finding[] {
  const { threshold, gap, ramp, brakes, wheel, wheelPrint } = input.case.journey;
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
    asked(
      input,
      "brakes",
      "Do the brakes hold it on sloping ground?",
      [brakeCaution],
      [need(brakes, "how many casters have a brake", '"brakes: 2"')],
      brakeReply,
    ),
    asked(
      input,
      "floor",
      "Do the casters mark the floor?",
      [floorCaution],
      [need(wheelPrint, "the print of a wheel, rolled over carbon paper", '"wheel print: 0.35 in2"')],
      floorReply,
    ),
  ];
}

function need(value: unknown, measure: string, example: string): MissingMeasurement | undefined {
  return value === undefined
    ? { measure, how: `measure it and write it into the journey as ${example}` }
    : undefined;
}

function asked(
  input: ReviewInput,
  name: string,
  question: string,
  cautions: readonly string[],
  missing: readonly (MissingMeasurement | undefined)[],
  reply: (input: ReviewInput) => Reply,
): Finding {
  const about: Question = { id: `travel.${name}`, topic: "travel", subject: "stacked case", question };
  const first = missing.find((one) => one !== undefined);
  return first ? unknown(about, first, cautions) : guarded(about, () => reply(input), cautions);
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

/** Common practice, no source: a braked polyurethane tread on a dry floor. */
const brakedTread = ratio(0.4);

function brakeReply(input: ReviewInput): Reply {
  const { slope, brakes } = input.case.journey;
  const count = castersOf(input).length;
  if (count === 0) throw new RangeError("brakes: the case has no casters");
  const hold = brakedSlope.worked({
    share: ratio(Math.min(1, (brakes ?? 0) / count)),
    friction: brakedTread,
  });
  const wanted =
    slope === undefined
      ? groundSlope
      : { angle: Angle.si(Math.max(slope, groundSlope.angle)), source: groundSlope.source };
  return compared({
    kind: Angle,
    asked: ["slope to hold on", wanted.angle],
    there: ["slope that the brakes hold", hold.value],
    facts: `${brakes ?? 0} of ${count} casters with brakes hold it on ${Angle.show(hold.value, { digits: 2 })}; ${Angle.show(wanted.angle, { digits: 2 })} is asked.`,
    remedy: "Brake all casters, or chock the wheels.",
    because: [hold],
    cautions: [brakeCaution],
    source: [wanted.source, cite("common-practice", "friction of a braked tread")],
  });
}

/** Static load limit of resilient flooring, 250 psi: ASTM F970, from memory; harder floors stand more. */
const floorLimit = Pressure.of(250, "psi");

function floorReply(input: ReviewInput): Reply {
  const { balance, baseWidth, baseDepth, fromLeft, fromFront } = standOf(input);
  const [worst] = casterStands({
    mass: balance.value.mass,
    across: baseWidth,
    deep: baseDepth,
    fromLeft,
    fromFront,
  });
  if (!worst) throw new RangeError("casters: no way to stand was found");
  const { wheelPrint } = input.case.journey;
  if (wheelPrint === undefined) throw new RangeError("floor pressure: the print of a wheel is missing");
  const line = floorPressure.worked({ load: worst.greatest, contact: wheelPrint });
  const style = styleOf(input.case);
  return compared({
    kind: Pressure,
    asked: ["under the most loaded caster", line.value],
    there: ["resilient flooring stands", floorLimit],
    facts: `The most loaded caster presses ${Pressure.show(line.value, style)}; soft flooring stands about ${Pressure.show(floorLimit, style)}.`,
    remedy: "Lay hardboard under the wheels, or take wider softer treads.",
    because: [worst.worked, line],
    cautions: [floorCaution],
    source: [cite("common-practice", "static load limit of resilient flooring, 250 psi")],
  });
}
