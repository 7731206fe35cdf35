/** What it takes to roll the stacked case: over floors, thresholds and gaps, up and down a ramp. */
import type { Journey } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { type Footprint, footprint, type ReviewInput, resistanceOf } from "../../model/index.js";
import {
  gapDepth,
  pushGuides,
  rampHold,
  rampSlope,
  rollingPush,
  rollingShares,
  stepPush,
} from "../../moving/index.js";
import { Angle, degree, Force, Length, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { type Citation, cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { rampCaution } from "../cautions.js";
import type { Figure } from "../figures/figure.js";
import { obstacleFigure, rolledFigure, slopeFigure } from "../figures/rolling-figures.js";
import { type Answer, type Found, type Question, question } from "../question.js";
import { caseWords, mostOf, ofJourney, rolledCase } from "../subjects.js";

const rollCaution =
  "On the level push, do not pull, and look over the case or around it. On slopes and ramps nobody stands below it.";

const { women: guide } = pushGuides;

/** Makes the picture of a question about the whole case. */
type Pictured = (input: ReviewInput, subject: undefined, found: Found) => Figure;

/** A push that one person makes, and the figure up to which the guidance asks for no closer look. */
interface GuidedPush {
  /** What it does: "push over it". */
  readonly words: string;
  /** How much it takes. */
  readonly push: Force;
  /** The guide figure of its kind. */
  readonly upTo: Force;
}

/** What is pushed, and what that rests on. */
interface Pushing {
  /** To get it going, to keep it going, or both. */
  readonly pushes: readonly GuidedPush[];
  /** What is said after the first sentence. */
  readonly facts?: string;
  /** What would help. */
  readonly remedy: string;
  /** How it was worked out. */
  readonly because: readonly WorkedLine[];
  /** What the push rests on. */
  readonly source: Citation;
  /** Whether the floor of the journey is what resists. */
  readonly onFloor?: boolean;
}

/** Judges a push by what one person may push without a closer look; no sum for two is published. */
function pushedBy(input: ReviewInput, { pushes, facts, remedy, because, source, onFloor }: Pushing): Answer {
  const style = styleOf(input.case);
  const worst = mostOf(pushes, ({ push, upTo }) => push / upTo, "rolling: nothing is pushed");
  const { words, push, upTo } = worst;
  const uneven = onFloor === true && input.case.journey.floor === "uneven";
  const sent = uneven ? " The guidance sends an uneven floor to a fuller assessment." : "";
  return {
    demand: amount(Force, words, push),
    capacity: amount(Force, "guide figure for one person, the lower of the two published", upTo),
    facts: `The ${words} is about ${Force.show(push, style)}; one person may push ${Force.show(upTo, style)} without a closer look.${facts ? ` ${facts}` : ""}${sent}`,
    ...(uneven && push <= upTo ? { verdict: "close" as const } : {}),
    remedies: [{ words: remedy }],
    because,
    limit: guide.source,
    sources: [source],
  };
}

/** Whether one person can keep the stacked case rolling on the floor of the journey. */
export const roll: Question = question({
  id: "travel.roll",
  about: rolledCase,
  ask: (_, input) =>
    `Can one person roll the ${caseWords(input)} over ${input.case.journey.floor === "even" ? "an even" : "an uneven"} floor?`,
  tier: "handling",
  cautions: [rollCaution],
  answer: (input) => {
    const { balance } = footprint(input);
    const { share, because, source, words } = resistanceOf(input);
    const line = rollingPush.worked({ mass: balance.value.mass, resistance: share, slope: degree(0) });
    return pushedBy(input, {
      pushes: [{ words: "push that keeps it rolling", push: line.value, upTo: guide.keepMoving }],
      facts: `That is on ${words}.`,
      remedy: `Push it with two people, take the ${stacked(input) ? "sections apart" : "load out"}, or use larger and harder wheels.`,
      because: [balance, ...because, line],
      source,
      onFloor: true,
    });
  },
  figure: (input, _, { demand }) => rolledFigure(input, demand?.show(styleOf(input.case))),
});

const stepCaution =
  "A wheel that stops dead throws the case over its front. Lift it over a step wheel by wheel, with one hand high, one low, and both feet clear.";

/** Common practice, no source: starting takes about twice what rolling takes. */
const startFactor = 2;

/** Whether it can be started. */
export const start: Question = question({
  id: "travel.start",
  about: rolledCase,
  ask: (_, input) => `Can one person start the ${caseWords(input)} rolling?`,
  tier: "handling",
  cautions: [stepCaution],
  answer: (input) => {
    const { balance } = footprint(input);
    const { share, because, source, words } = resistanceOf(input);
    const push = rollingPush.worked({ mass: balance.value.mass, resistance: share, slope: Angle.si(0) });
    return pushedBy(input, {
      pushes: [
        { words: "push that starts it", push: Force.si(startFactor * push.value), upTo: guide.startOrStop },
      ],
      facts: `That is twice what keeps it rolling, on ${words}.`,
      remedy: `Take the load out${orApart(input)}, start it with two people, or use larger and harder wheels.`,
      because: [balance, ...because, push],
      source,
      onFloor: true,
    });
  },
  figure: (input, _, { demand }) => rolledFigure(input, demand?.show(styleOf(input.case))),
});

const wheel = ofJourney(({ wheel: size }) => size, "the diameter of a caster wheel", {
  inch: '"wheel: 4 in"',
  metric: '"wheel: 100 mm"',
});

/** Whether it gets over the highest threshold. */
export const threshold: Question = question({
  id: "travel.threshold",
  about: rolledCase,
  ask: "Does the case get over the highest threshold?",
  tier: "handling",
  cautions: [stepCaution],
  needs: {
    step: ofJourney((journey) => journey.threshold, "the highest step on the way", {
      inch: '"threshold: 5/8 in"',
      metric: '"threshold: 16 mm"',
    }),
    wheel,
  },
  answer: (input, given) => {
    const style = styleOf(input.case);
    if (given.step < given.wheel / 2) return climbed(input, "threshold", given, []);
    const axle = Length.show(Length.si(given.wheel / 2), style);
    return stopped(
      input,
      `The step, ${Length.show(given.step, style)}, reaches up to the axle of the wheels, ${axle} above the floor: no push gets over it.`,
      cite("statics", "moments about the edge of the step"),
    );
  },
  figure: obstructed("step", ({ threshold: size }) => size),
});

/** Whether it gets over the widest gap. */
export const gap: Question = question({
  id: "travel.gap",
  about: rolledCase,
  ask: "Does the case get over the widest gap?",
  tier: "handling",
  cautions: [stepCaution],
  needs: {
    gap: ofJourney((journey) => journey.gap, "the widest gap on the way", {
      inch: '"gap: 3/4 in"',
      metric: '"gap: 20 mm"',
    }),
    wheel,
  },
  answer: (input, given) => {
    const style = styleOf(input.case);
    if (given.gap >= given.wheel)
      return stopped(
        input,
        `The gap, ${Length.show(given.gap, style)}, is as wide as a wheel, ${Length.show(given.wheel, style)}: the wheel falls in.`,
        cite("geometry", "sagitta of a chord"),
      );
    const depth = gapDepth.worked({ diameter: given.wheel, gap: given.gap });
    return climbed(input, "gap", { ...given, step: depth.value }, [depth]);
  },
  figure: obstructed("gap", ({ gap: size }) => size),
});

/** The picture of what the wheels have to get over, where the journey says how large it is. */
function obstructed(kind: "step" | "gap", sizeOf: (journey: Journey) => Length | undefined): Pictured {
  return (input, _, { demand }) => {
    const style = styleOf(input.case);
    const size = sizeOf(input.case.journey);
    if (size === undefined) throw new Refusal(`picture of a ${kind}: its size is not known`);
    return obstacleFigure(input, { kind, size, words: Length.show(size, style) }, demand?.show(style));
  };
}

/** A way to make it lighter; a case of one section cannot be taken apart. */
function orApart(input: ReviewInput): string {
  return stacked(input) ? " or the sections apart" : "";
}

function stacked({ parts }: ReviewInput): boolean {
  return parts.sections.length > 1;
}

function overIt(input: ReviewInput): string {
  return `Take the load out${orApart(input)}, lay a plate or a short ramp over it, or use larger wheels.`;
}

function stopped(input: ReviewInput, facts: string, limit: Citation): Answer {
  return { plainNo: true, facts, remedies: [{ words: overIt(input) }], because: [], limit };
}

/** The wheels of the heavier side climb together. */
function climbed(
  input: ReviewInput,
  over: "threshold" | "gap",
  { step, wheel: diameter }: { readonly step: Length; readonly wheel: Length },
  before: readonly WorkedLine[],
): Answer {
  const standing = footprint(input);
  const share = ratio(worstAxle(standing));
  const load = Force.si(share * standing.balance.value.mass * standardGravity);
  const climb = stepPush.worked({ load, diameter, step });
  return pushedBy(input, {
    pushes: [{ words: `push over the ${over}`, push: climb.value, upTo: guide.startOrStop }],
    facts: `The heavier pair of wheels carries ${Ratio.show(share, { unit: "%", digits: 2 })} of it.`,
    remedy: overIt(input),
    because: [standing.balance, ...before, climb],
    source: cite("statics", "moments about the edge of the step"),
  });
}

/** The share of the weight on the most loaded pair of wheels: swivel casters lead with any side. */
function worstAxle({ baseWidth, baseDepth, fromLeft, fromFront }: Footprint): number {
  const [right, back] = [fromLeft / baseWidth, fromFront / baseDepth];
  return Math.max(right, 1 - right, back, 1 - back);
}

function rampRemedy(input: ReviewInput): string {
  return `Take the load out${orApart(input)}, or use a longer ramp or a winch at its top. Write the rated pull of a winch into the journey as "winch".`;
}

const rampNeed = {
  ramp: ofJourney(
    ({ ramp, rampSize }) => ramp ?? rampSize,
    "the slope of the ramp",
    '"ramp: 10 deg", or "ramp size" with rise and length',
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

/** The line of a winch at the top, where the journey has one. */
function winched(input: ReviewInput, winch: Force, { pushes, because, source, facts }: Pushing): Answer {
  const { push } = mostOf(pushes, (one) => one.push, "ramp: nothing is pulled");
  const style = styleOf(input.case);
  return {
    demand: amount(Force, "pull of the line", push),
    capacity: amount(Force, "rated pull of the winch", winch),
    facts:
      `The line pulls with ${Force.show(push, style)}; the winch is rated ${Force.show(winch, style)}. ${facts ?? ""}`.trim(),
    remedies: [{ words: "Use a stronger winch or a longer ramp, or empty the case first." }],
    because,
    limit: cite("common-practice", "rated pull that the maker of the winch states"),
    sources: [source],
  };
}

function onRamp(input: ReviewInput, pushing: Pushing): Answer {
  const { winch } = input.case.journey;
  return winch === undefined ? pushedBy(input, pushing) : winched(input, winch, pushing);
}

/** Whether the case gets up the ramp, by hand or by winch. */
export const rampUp: Question = question({
  id: "travel.ramp",
  about: rolledCase,
  ask: (_, input) =>
    input.case.journey.winch === undefined
      ? `Can the ${caseWords(input)} be pulled up the ramp by hand?`
      : `Does the winch pull the ${caseWords(input)} up the ramp?`,
  tier: "handling",
  cautions: [rampCaution],
  needs: rampNeed,
  answer: (input) => {
    const { balance } = footprint(input);
    const { mass } = balance.value;
    const { slope, because } = rampOf(input);
    const resistance = resistanceOf(input);
    const going = rollingPush.worked({ mass, resistance: resistance.share, slope });
    const starting = rollingPush.worked({ mass, resistance: ratio(startFactor * resistance.share), slope });
    return onRamp(input, {
      pushes: [
        { words: "push that keeps it going up", push: going.value, upTo: guide.keepMoving },
        { words: "push that starts it up the ramp", push: starting.value, upTo: guide.startOrStop },
      ],
      facts: `The ramp rises ${Angle.show(slope, { digits: 2 })}, on ${resistance.words}.`,
      remedy: rampRemedy(input),
      because: [balance, ...because, ...resistance.because, going, starting],
      source: resistance.source,
      onFloor: true,
    });
  },
  figure: onRampPicture("Up the ramp"),
});

/** The picture of the case on its ramp, with what pulls or holds it. */
function onRampPicture(title: string): Pictured {
  return (input, _, { demand }) => {
    const { slope } = rampOf(input);
    const ramp = { title, slope, words: Angle.show(slope, { digits: 2 }) };
    return slopeFigure(input, ramp, demand?.show(styleOf(input.case)));
  };
}

/** Whether it is held on the way down; the best casters hold least back. */
export const rampDown: Question = question({
  id: "travel.ramp-down",
  about: rolledCase,
  ask: (_, input) =>
    input.case.journey.winch === undefined
      ? `Can the ${caseWords(input)} be held by hand on its way down the ramp?`
      : `Does the winch hold the ${caseWords(input)} on its way down the ramp?`,
  tier: "safety",
  cautions: [rampCaution],
  needs: rampNeed,
  answer: (input) => {
    const { balance } = footprint(input);
    const { slope, because } = rampOf(input);
    const resistance = rollingShares.good.share;
    const hold = rampHold.worked({ mass: balance.value.mass, resistance, slope });
    return onRamp(input, {
      pushes: [{ words: "pull that holds it on the way down", push: hold.value, upTo: guide.keepMoving }],
      facts: "Wheels that roll easily are counted, as they hold back least.",
      remedy: rampRemedy(input),
      because: [balance, ...because, hold],
      source: cite("statics", "weight along a slope"),
    });
  },
  figure: onRampPicture("Down the ramp"),
});
