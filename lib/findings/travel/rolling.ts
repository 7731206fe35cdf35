/** What it takes to roll the stacked case: over floors, thresholds and gaps, up and down a ramp. */
import type { WorkedLine } from "../../formula.js";
import { footprint, type ReviewInput, resistanceOf } from "../../model/index.js";
import {
  gapDepth,
  pushGuides,
  rampHold,
  rampSlope,
  rollingPush,
  rollingShares,
  stepPush,
} from "../../moving/index.js";
import { Angle, degree, Force, Length, standardGravity } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { type Answer, type Question, question } from "../question.js";
import { ofJourney, stackedCase } from "../subjects.js";

const rollCaution =
  "Two people on any ramp, nobody below the case; push, do not pull, and look over the case or around it.";

/** Whether one person can keep the stacked case rolling on the floor of the journey. */
export const roll: Question = question({
  id: "travel.roll",
  about: stackedCase,
  ask: (_, { case: { journey } }) =>
    `Can one person roll the stacked case over ${journey.floor === "even" ? "an even" : "an uneven"} floor?`,
  tier: "handling",
  cautions: [rollCaution],
  answer: (input) => {
    const { balance } = footprint(input);
    const { share, because, source, words } = resistanceOf(input);
    const line = rollingPush.worked({ mass: balance.value.mass, resistance: share, slope: degree(0) });
    const guide = pushGuides.women;
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "push that keeps it rolling", line.value),
      capacity: amount(Force, "guide figure, the lower of the two published", guide.keepMoving),
      facts: `It takes about ${Force.show(line.value, style)} to keep it rolling, on ${words}; up to ${Force.show(guide.keepMoving, style)} needs no closer look.`,
      remedies: [
        { words: "Push it with two people, take the sections apart, or use larger and harder wheels." },
      ],
      because: [balance, ...because, line],
      limit: guide.source,
      sources: [source],
    };
  },
});

/** Two people may push twice the guide figure of one; the lower of the two published. */
const pushers = 2;
const guide: Force = Force.si(pushers * pushGuides.women.startOrStop);

/** A push of two people, and where its figure comes from. */
interface Push {
  /** What it does: "push over it". */
  readonly words: string;
  /** How much it takes. */
  readonly push: Force;
  /** What is said after the first sentence. */
  readonly facts?: string;
  /** What would help. */
  readonly remedy: string;
  /** How it was worked out. */
  readonly because: readonly WorkedLine[];
  /** What the push rests on. */
  readonly source: Citation;
}

/** Judges a push of two people by what they may push without a closer look. */
function pushedBy(input: ReviewInput, { words, push, facts, remedy, because, source }: Push): Answer {
  const style = styleOf(input.case);
  return {
    demand: amount(Force, words, push),
    capacity: amount(Force, `guide figure for ${pushers} people`, guide),
    facts: `It takes about ${Force.show(push, style)}; ${pushers} people may push ${Force.show(guide, style)} without a closer look.${facts ? ` ${facts}` : ""}`,
    remedies: [{ words: remedy }],
    because,
    limit: pushGuides.women.source,
    sources: [source],
  };
}

const stepCaution =
  "A wheel that stops dead throws the case over its front. Lift wheel by wheel over a step, one hand above, one low, feet clear.";

/** Common practice, no source: starting takes about twice what rolling takes. */
const startFactor = 2;

/** Whether two people can start it. */
export const start: Question = question({
  id: "travel.start",
  about: stackedCase,
  ask: "Can two people start the stacked case rolling?",
  tier: "handling",
  cautions: [stepCaution],
  answer: (input) => {
    const { balance } = footprint(input);
    const { share, because, source, words } = resistanceOf(input);
    const push = rollingPush.worked({ mass: balance.value.mass, resistance: share, slope: Angle.si(0) });
    return pushedBy(input, {
      words: "push that starts it",
      push: Force.si(startFactor * push.value),
      facts: `That is twice what keeps it rolling, on ${words}.`,
      remedy: "Take the load out or the sections apart, or use larger and harder wheels.",
      because: [balance, ...because, push],
      source,
    });
  },
});

const wheel = ofJourney(({ wheel: size }) => size, "the diameter of a caster wheel", '"wheel: 4"');

/** Whether it gets over the highest threshold. */
export const threshold: Question = question({
  id: "travel.threshold",
  about: stackedCase,
  ask: "Does it get over the highest threshold?",
  tier: "handling",
  cautions: [stepCaution],
  needs: {
    step: ofJourney((journey) => journey.threshold, "the highest step on the way", '"threshold: 5/8"'),
    wheel,
  },
  answer: (input, given) => {
    const style = styleOf(input.case);
    if (given.step < given.wheel / 2) return climbed(input, given.step, given.wheel, []);
    const axle = Length.show(Length.si(given.wheel / 2), style);
    return stopped(
      `The step, ${Length.show(given.step, style)}, reaches up to the axle of the wheels, ${axle} above the floor: no push gets over it.`,
      cite("statics", "moments about the edge of the step"),
    );
  },
});

/** Whether it gets over the widest gap. */
export const gap: Question = question({
  id: "travel.gap",
  about: stackedCase,
  ask: "Does it get over the widest gap?",
  tier: "handling",
  cautions: [stepCaution],
  needs: {
    gap: ofJourney((journey) => journey.gap, "the widest gap on the way", '"gap: 3/4"'),
    wheel,
  },
  answer: (input, given) => {
    const style = styleOf(input.case);
    if (given.gap >= given.wheel)
      return stopped(
        `The gap, ${Length.show(given.gap, style)}, is as wide as a wheel, ${Length.show(given.wheel, style)}: the wheel falls in.`,
        cite("geometry", "sagitta of a chord"),
      );
    const depth = gapDepth.worked({ diameter: given.wheel, gap: given.gap });
    return climbed(input, depth.value, given.wheel, [depth]);
  },
});

const overIt =
  "Take the load out or the sections apart, lay a plate or a short ramp over it, or use larger wheels.";

function stopped(facts: string, limit: Citation): Answer {
  return { plainNo: true, facts, remedies: [{ words: overIt }], because: [], limit };
}

/** The two leading wheels climb together and carry half the case. */
function climbed(input: ReviewInput, step: Length, diameter: Length, before: readonly WorkedLine[]): Answer {
  const { balance } = footprint(input);
  const load = Force.si((balance.value.mass * standardGravity) / 2);
  const climb = stepPush.worked({ load, diameter, step });
  return pushedBy(input, {
    words: "push over it",
    push: climb.value,
    remedy: overIt,
    because: [balance, ...before, climb],
    source: cite("statics", "moments about the edge of the step"),
  });
}

const rampCaution =
  "Two people on any ramp and nobody below the case: it weighs more than both can hold once it runs. Stop at the foot, look, go straight up; a winch or an empty case is no shame.";

const rampRemedy =
  "Take the load out or the sections apart, use a longer ramp, or a winch with somebody at its brake.";

const rampNeed = {
  ramp: ofJourney(
    ({ ramp, rampSize }) => ramp ?? rampSize,
    "the slope of the ramp",
    '"ramp: 10 deg", or "ramp size: { rise: 24, length: 138 }"',
  ),
};

/** A slope with what it was worked out by. */
interface Ramp {
  /** Of the ramp against the level. */
  readonly slope: Angle;
  /** Empty for a slope measured as an angle. */
  readonly because: readonly WorkedLine[];
}

/** Measured as an angle, or reckoned from rise and length. */
function rampOf({ case: { journey } }: ReviewInput): Ramp {
  if (!journey.rampSize) return { slope: journey.ramp ?? Angle.si(0), because: [] };
  const line = rampSlope.worked(journey.rampSize);
  return { slope: line.value, because: [line] };
}

/** Whether two people can push the case up the ramp. */
export const rampUp: Question = question({
  id: "travel.ramp",
  about: stackedCase,
  ask: "Can two people push the stacked case up the ramp?",
  tier: "handling",
  cautions: [rampCaution],
  needs: rampNeed,
  answer: (input) => {
    const { balance } = footprint(input);
    const { slope, because } = rampOf(input);
    const resistance = resistanceOf(input);
    const push = rollingPush.worked({ mass: balance.value.mass, resistance: resistance.share, slope });
    return pushedBy(input, {
      words: "push up the ramp",
      push: push.value,
      facts: `The ramp rises ${Angle.show(slope, { digits: 2 })}, on ${resistance.words}.`,
      remedy: rampRemedy,
      because: [balance, ...because, ...resistance.because, push],
      source: resistance.source,
    });
  },
});

/** Whether two people can hold it on the way down; the best casters hold least back. */
export const rampDown: Question = question({
  id: "travel.ramp-down",
  about: stackedCase,
  ask: "Can two people hold the stacked case on its way down the ramp?",
  tier: "safety",
  cautions: [rampCaution],
  needs: rampNeed,
  answer: (input) => {
    const { balance } = footprint(input);
    const { slope, because } = rampOf(input);
    const resistance = rollingShares.good.share;
    const hold = rampHold.worked({ mass: balance.value.mass, resistance, slope });
    return pushedBy(input, {
      words: "pull that holds it on the way down",
      push: hold.value,
      facts: "Reckoned with wheels that roll easily, which hold back least.",
      remedy: rampRemedy,
      because: [balance, ...because, hold],
      source: cite("statics", "weight along a slope"),
    });
  },
});
