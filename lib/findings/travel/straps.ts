/** Whether straps hold each section and the stack in the vehicle, and what they press on at their labelled tension. */
import type { Lashing } from "../../design/index.js";
import {
  castersOf,
  type Footprint,
  floorGrip,
  type LashingWay,
  lashingWays,
  type ReviewInput,
  ridesOnBlocks,
  ridingFootprint,
  sectionFootprint,
  stackLashingWays,
} from "../../model/index.js";
import { blockingForce, type RideWay, strapPress } from "../../moving/index.js";
import { Count, Force, Ratio, type ShowStyle, standardGravity } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, counted, styleOf } from "../amount.js";
import { strapCaution } from "../cautions.js";
import type { Figure } from "../figures/figure.js";
import { type Strapped, strappedFigure } from "../figures/riding-figures.js";
import type { Amount } from "../finding.js";
import { type Answer, type Question, question } from "../question.js";
import { each, eachSection, known, mostOf, says, strapsGiven, theOne, where } from "../subjects.js";
import { ratedLoad } from "./ground.js";
import { roadWords } from "./road.js";
import { standingUp } from "./standing.js";

const crashCaution =
  "A case that comes loose in a crash kills the people in front of it. Have a bulkhead or a net behind the seats. Use straps with a readable label, none cut or knotted, over edge protectors, and tighten them again at the first stop. Follow the road rules where you drive; this does not cover a crash.";

/** How many wheels lock; nobody needs to know of what stands on its underside. */
function locks(onWheels: (input: ReviewInput, subject: string) => boolean) {
  return known((input, subject: string) =>
    input.case.journey.brakes !== undefined || !onWheels(input, subject)
      ? (input.case.journey.brakes ?? 0)
      : {
          measure: "how many casters have a brake",
          how: 'count them and write it into the journey as "brakes: 2"',
        },
  );
}

const hasCasters = (input: ReviewInput, section: string): boolean =>
  !ridesOnBlocks(input) && castersOf(input).some((one) => one.section === section);

/** Whether the straps hold each section, sections standing side by side: three ways, sliding and tipping. */
export const lashing: Question = question({
  id: "travel.lashing",
  about: where(says("journey"), eachSection),
  ask: (section, { case: { journey } }) =>
    `Do the straps hold ${section} in the ${journey.vehicle}, braking, turning and starting?`,
  tier: "safety",
  cautions: [crashCaution],
  assumes: [
    "The locked wheels carry their share of the weight, and the straps run over the middle of the section.",
  ],
  needs: { straps: strapsGiven, locked: locks(hasCasters) },
  answer: (input, { straps }, section) =>
    standingUp(input, sectionFootprint(input, section), (standing) =>
      lashed(input, standing, straps, {
        ways: lashingWays(input, section, straps),
        grip: floorGrip(input, straps, section),
      }),
    ),
  figure: (input, section, { demand }) =>
    strappedDown(input, { sections: [section], standing: sectionFootprint(input, section) }, demand),
});

/** Nothing to ask of one section, which is asked by itself. */
const stack = each(
  ({ parts }) => (parts.sections.length > 1 ? ["stack"] : []),
  (one) => one,
  () => "stacked case",
);

/** Whether the straps hold the stack, as a ramp rolls it into the vehicle. */
export const stackLashing: Question = question({
  id: "travel.lashing-stacked",
  about: where(says("journey"), { ...stack, id: () => undefined }),
  ask: (_, { case: { journey } }) =>
    `Do the straps hold the stacked case in the ${journey.vehicle}, braking, turning and starting?`,
  tier: "safety",
  cautions: [crashCaution],
  assumes: [
    "The locked wheels carry their share of the weight, and the straps run over the middle of the top.",
  ],
  needs: {
    straps: strapsGiven,
    locked: locks((input) => !ridesOnBlocks(input) && castersOf(input).length > 0),
  },
  answer: (input, { straps }) =>
    standingUp(input, ridingFootprint(input), (standing) =>
      lashed(input, standing, straps, {
        ways: stackLashingWays(input, straps),
        grip: floorGrip(input, straps),
      }),
    ),
  figure: (input, _, { demand }) =>
    strappedDown(
      input,
      { sections: input.parts.sections.map(({ name }) => name), standing: ridingFootprint(input) },
      demand,
    ),
});

/** The picture of what is strapped down, where the journey has straps. */
function strappedDown(
  input: ReviewInput,
  what: Omit<Strapped, "straps">,
  demand: Amount | undefined,
): Figure {
  const { lashing: straps } = input.case.journey;
  if (!straps) throw new Refusal("picture of straps: the journey has none");
  return strappedFigure(input, { ...what, straps }, demand?.show(styleOf(input.case)));
}

/** More straps over one case find no room; common practice, no source. */
const mostStraps = 6;

const strapRule = cite("en-12195", "tie-down lashing, sliding and tilting");

/** What the road asks, and what holds against it. */
interface Asked {
  /** Three ways of the road. */
  readonly ways: readonly LashingWay[];
  /** The friction under the case. */
  readonly grip: ReturnType<typeof floorGrip>;
}

function lashed(input: ReviewInput, standing: Footprint, given: Lashing, asked: Asked): Answer {
  const { ways, grip } = asked;
  const lines = [standing.balance, ...standing.swivel, ...grip.because];
  const rolls = ways.some(({ tension }) => tension === undefined);
  if (rolls || given.straps === 0)
    return {
      plainNo: true,
      facts: rolls
        ? `None of its ${grip.wheels} wheels is locked: straps over the top do not keep it from rolling.`
        : "There is no strap.",
      remedies: [
        {
          words:
            "Use casters with brakes, stand it on blocks, or set it hard against a bulkhead and strap it there.",
        },
      ],
      because: lines,
      limit: strapRule,
    };
  return held(input, standing, given, asked);
}

function held(input: ReviewInput, standing: Footprint, given: Lashing, { ways, grip }: Asked): Answer {
  const { mass } = standing.balance.value;
  const worst = mostOf(ways, ({ tension = 0 }) => tension, "lashing: no way was found");
  const braking = theOne(ways, ({ way }) => way === "forward", "way forward");
  const { tension, straps } = worst;
  if (tension === undefined || straps === undefined) throw new Refusal("lashing: its wheels roll");
  const blocked = blockingForce.worked({ mass, friction: grip.friction, way: "forward" });
  const style = styleOf(input.case);
  const tips = Ratio.show(Ratio.si(braking.loose.value / standardGravity), { digits: 2 });
  const wheels =
    grip.wheels > 0 ? ` ${grip.locked} of its ${grip.wheels} wheels lock, and they alone grip.` : "";
  return {
    demand:
      tension > given.tension
        ? amount(Force, `tension needed, ${worst.way}`, tension)
        : amount(Force, "tension of one strap, which is the least", given.tension),
    capacity: amount(
      Force,
      given.straps === 1 ? "tension of the strap" : `tension of ${given.straps} straps`,
      Force.si(given.straps * given.tension),
    ),
    facts: `${tensionWords(worst.way, tension, given, style)}${wheels} Loose, it would tip forward at ${tips} g. Against a bulkhead it would press ${Force.show(blocked.value, style)}.`,
    remedies: [moreStraps(straps.value)],
    because: [
      standing.balance,
      ...standing.swivel,
      ...grip.because,
      ...ways.flatMap(({ slide, tilt }) => [...(slide ? [slide] : []), tilt]),
      straps,
      braking.loose,
      blocked,
    ],
    limit: strapRule,
    sources: [
      cite("ctu-code", "annex 7"),
      cite("common-practice", "no friction counts under a wheel that rolls"),
    ],
  };
}

function tensionWords(
  way: RideWay,
  tension: Force,
  { straps, tension: each }: Lashing,
  style: ShowStyle,
): string {
  if (tension === 0)
    return `Friction and weight hold it by the figures; 1 strap is the least all the same, and it has ${straps}.`;
  const asked = `${roadWords[way]} asks for ${Force.show(tension, style)} of tension`;
  if (tension > each)
    return `${asked}; its ${counted(straps, "strap has", "straps have")} ${Force.show(Force.si(straps * each), style)}.`;
  return straps === 1
    ? `${asked}, which its 1 strap gives.`
    : `${asked}, which 1 of its ${straps} straps gives.`;
}

function moreStraps(count: number) {
  const others = "an anti-slip mat under it on blocks, or set it hard against a bulkhead";
  return count > mostStraps
    ? { words: `Lock more wheels, lash it directly to four corners, use ${others}.` }
    : {
        words: `Use ${count} ${count === 1 ? "strap" : "straps"}, ${others}.`,
        gives: [amount(Count, "straps that would be enough", count)],
      };
}

/** The section with casters, and its straps tightened as their label allows. */
export const strapsOnCasters: Question = question({
  id: "travel.strap-press",
  about: each(
    (input) => input.parts.sections.map(({ name }) => name).filter((name) => hasCasters(input, name)),
    (name) => name,
  ),
  ask: (section) => `Do the casters of ${section} stand straps at the tension of their label?`,
  tier: "strength",
  cautions: [strapCaution],
  needs: { straps: strapsGiven, rated: ratedLoad },
  answer: (input, { straps, rated }, section) => {
    const count = castersOf(input).filter((one) => one.section === section).length;
    const { balance } = sectionFootprint(input, section);
    const { tension, angle: strapAngle } = straps;
    const press = strapPress.worked({ straps: Math.max(1, straps.straps), tension, strapAngle });
    const each = Force.si((press.value + balance.value.mass * standardGravity) / count);
    const style = styleOf(input.case);
    return {
      demand: amount(Force, "on each caster", each),
      capacity: amount(Force, "rated", rated),
      facts: `Tightened to their label the straps press with ${Force.show(press.value, style)}: ${Force.show(each, style)} on each of ${count} casters, rated ${Force.show(rated, style)}.`,
      remedies: [
        {
          words:
            "Stand it on blocks under its lower edges before the straps are tightened, or tighten by hand only as far as the road needs.",
        },
      ],
      because: [balance, press],
      limit: cite("common-practice", "load that the maker of the casters states"),
      sources: [cite("en-12195", "standard tension of a strap")],
    };
  },
  figure: (input, section, { demand }) =>
    strappedDown(input, { sections: [section], standing: sectionFootprint(input, section) }, demand),
});
