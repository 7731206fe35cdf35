/** Whether the people of the journey can lift each section, each for himself and as a team, and carry it on stairs. */
import type { Content } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  type BalanceLine,
  endShares,
  enoughPeople,
  judgeShare,
  liftAxis,
  liftOf,
  limitOf,
  type ReviewInput,
  sectionBalance,
  teamLoad,
} from "../../model/index.js";
import {
  holdingDown,
  judgeLift,
  judgeTeamLift,
  type LiftVerdict,
  type LoadBetweenTwo,
  liftCaution,
  liftLimits,
  pairShares,
  teamCaution,
  teamLimit,
  tipsOver,
} from "../../moving/index.js";
import { type Angle, Count, Length, Mass, Ratio } from "../../quantity/index.js";
import { Refusal } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, capitalised, listed, styleOf } from "../amount.js";
import { liftedFigure, stairsFigure } from "../figures/carried-figures.js";
import type { Remedy } from "../finding.js";
import { type Answer, type Question, question, type Subjects } from "../question.js";
import { eachSection, known, measured, mostOf, says, where } from "../subjects.js";

/** Every section, where somebody lifts. */
const eachLiftedSection: Subjects<string> = where(says("journey"), eachSection);

const liftingGuide = cite("niosh-lifting", "recommended weight limit and lifting index");

/** A lift of which the equation allows nothing is no lift for anybody, whatever the load. */
function allowedAtAll(input: ReviewInput, answer: () => Answer): Answer {
  const { atStart, atEnd } = liftLimits(liftOf(input));
  if (limitOf({ atStart, atEnd }) > 0) return answer();
  return {
    plainNo: true,
    facts: "Nobody may lift so, whatever the load: the recommended weight limit is nothing.",
    remedies: [{ words: "Lift less often, for a shorter time, or at another height, or use a lift gate." }],
    because: [atStart, atEnd],
    limit: liftingGuide,
  };
}

/** What balances beyond its handles turns over in the hands, whoever lifts. */
function tipped(balance: BalanceLine, where: string): Answer {
  return {
    plainNo: true,
    facts: `It tips over ${where}: its centre of gravity lies beyond its handles, and one end would have to be held down.`,
    remedies: [{ words: "Move heavy things towards the middle, or set the handles further apart." }],
    because: [balance],
    limit: cite("statics", "moments about a handle"),
  };
}

/** What would bring a lift within its limit: things left out, the heaviest first, or more hands. */
function lighter(
  input: ReviewInput,
  section: string,
  excess: Mass,
  hands: number | undefined,
): readonly Remedy[] {
  const style = styleOf(input.case);
  const contents = input.case.contents.filter((one) => one.section === section);
  const heaviest = [...contents].sort((a, b) => b.mass - a.mass);
  const out = `take out about ${Mass.show(excess, style)}`;
  const left = amount(Mass, "to be taken out", excess);
  return hands === undefined
    ? [
        {
          words: `Use a ramp, a lift gate or a hoist, or ${out}.${firstOut(heaviest, excess)} Four people are not enough either.`,
          gives: [left],
        },
      ]
    : [
        {
          words: `Lift with ${hands} people, use a ramp or a lift gate, or ${out}.${firstOut(heaviest, excess)}`,
          gives: [left, amount(Count, "people of whom none carries too much", hands)],
        },
      ];
}

/** More names than these are no sentence. */
const mostNamed = 3;

/** The heaviest things that together are as much. */
function firstOut(contents: readonly Content[], excess: number): string {
  let out = 0;
  const names: string[] = [];
  for (const { name, mass } of contents) {
    if (out >= excess) break;
    out += mass;
    names.push(name);
  }
  if (names.length === 0) return "";
  const enough = out >= excess ? "" : " Even without all of that it is too heavy.";
  return ` Begin with ${listed(names.slice(0, mostNamed))}.${enough}`;
}

/** Whether the people of the journey can lift each section by its handles. */
export const lift: Question = question({
  id: "travel.lift",
  about: eachLiftedSection,
  ask: (section, { case: { journey } }) =>
    `Can ${journey.people} ${journey.people === 1 ? "person" : "people"} lift ${section}, loaded?`,
  tier: "handling",
  cautions: (_, { case: { journey } }) => [journey.people === 1 ? liftCaution : teamCaution],
  answer: (input, _, section) =>
    allowedAtAll(input, () => {
      const balance = sectionBalance(input, section);
      if (input.case.journey.people === 1) return liftedAlone(input, section, balance);
      return liftedTogether(input, section, balance);
    }),
  figure: liftedFigure,
});

function liftedAlone(input: ReviewInput, section: string, balance: BalanceLine): Answer {
  const { mass } = balance.value;
  const judged = judgeLift(mass, liftOf(input));
  return liftedBy(input, section, {
    balance,
    share: mass,
    judged,
    who: "one person",
    because: [],
    stand: "",
  });
}

/** Everyone's share from the real centre of gravity and the places of the hands. */
function liftedTogether(input: ReviewInput, section: string, balance: BalanceLine): Answer {
  const load = teamLoad(input, section, balance, input.case.journey.people);
  if (holdingDown(load).length > 0) return tipped(balance, "in the hands");
  const { shares, who, worst } = judgeTeamLift(load, liftOf(input));
  const places = load.people.map(({ name }) => name).join("; ");
  return liftedBy(input, section, {
    balance,
    share: shares.value.greatest,
    judged: worst,
    who: `the person at the ${who}`,
    because: [shares],
    stand: load.people.length > 2 ? ` They stand at the ${places}.` : "",
  });
}

/** The most loaded person, and how the load came to be shared. */
interface MostLoaded {
  /** The section with what is in it. */
  readonly balance: BalanceLine;
  /** What this person carries. */
  readonly share: Mass;
  /** The share against the limit of the lift. */
  readonly judged: LiftVerdict;
  /** The person, by place. */
  readonly who: string;
  /** How the shares were worked out. */
  readonly because: readonly WorkedLine[];
  /** Where everybody stands, as a sentence; empty for one or two. */
  readonly stand: string;
}

function liftedBy(
  input: ReviewInput,
  section: string,
  { balance, share, judged, who, because, stand }: MostLoaded,
): Answer {
  const { atStart, atEnd, index } = judged;
  const limit = limitOf(judged);
  const style = styleOf(input.case);
  const comparison = index.value <= 1 ? "within" : "above";
  const excess = Mass.si(balance.value.mass * (1 - limit / share));
  return {
    demand: amount(Mass, `carried by ${who}`, share),
    capacity: amount(Mass, "recommended weight limit", limit),
    facts: `${capitalised(who)} carries ${Mass.show(share, style)}, ${comparison} the recommended ${Mass.show(limit, style)}: the lifting index is ${Ratio.show(index.value, { digits: 2 })}.${stand}`,
    remedies: lighter(input, section, excess, enoughPeople(input, section, balance, limit)),
    because: [balance, ...because, atStart, atEnd, index],
    limit: liftingGuide,
  };
}

/** The guide says of larger teams only that they are unlikely to work. */
const largestTeam = 4;

/** Whether each section is within what a guide allows a team; nothing to ask of one person. */
export const team: Question = question({
  id: "travel.team",
  about: where(({ case: { journey } }) => journey.people > 1, eachLiftedSection),
  ask: (section, { case: { journey } }) =>
    `Is ${section} within what ${journey.people} people lift as a team?`,
  tier: "handling",
  cautions: [teamCaution],
  needs: {
    people: known(({ case: { journey } }) =>
      journey.people <= largestTeam
        ? journey.people
        : {
            measure: `a way to lift it with ${largestTeam} people at most`,
            how: "larger teams seldom lift together: take the load out, or use a ramp, a lift gate or a hoist",
          },
    ),
  },
  answer: (input, { people }, section) => allowedAtAll(input, () => liftedAsTeam(input, section, people)),
  figure: liftedFigure,
});

function liftedAsTeam(input: ReviewInput, section: string, people: number): Answer {
  const balance = sectionBalance(input, section);
  const { mass } = balance.value;
  const own = limitOf(judgeShare(input, mass));
  const together = teamLimit.worked({ each: own, people });
  const style = styleOf(input.case);
  const hands = [2, 3, 4].find((more) => teamLimit({ each: own, people: more }) >= mass);
  return {
    demand: amount(Mass, `mass of ${section}`, mass),
    capacity: amount(Mass, `what ${people} people lift as a team`, together.value),
    facts: `Loaded, ${section} weighs ${Mass.show(mass, style)}; ${people} people may lift ${Mass.show(together.value, style)} as a team. Each may lift ${Mass.show(own, style)} alone, and nobody lifts at quite the same moment.`,
    remedies: lighter(input, section, Mass.si(mass - together.value), hands),
    because: [balance, together],
    limit: cite("hse-manual-handling", "team handling"),
    sources: [cite("niosh-lifting", "recommended weight limit")],
  };
}

const stairCaution =
  "On stairs the person below cannot let go, and carries more where the case balances above its handles. Go down backwards one step at a time, with a third person free to steady and nobody in the line of fall. Use a stair climber or a lift where there is one.";

const stairGuide = cite("niosh-lifting", "recommended weight limit, used for a share of a team's load");

/** Whether each section can be carried up and down the stairs. */
export const stairs: Question = question({
  id: "travel.stairs",
  about: eachLiftedSection,
  ask: (section, { case: { journey } }) =>
    `Can ${journey.people} ${journey.people === 1 ? "person" : "people"} carry ${section} on the stairs?`,
  tier: "handling",
  cautions: [stairCaution],
  needs: {
    incline: measured(
      ({ case: { journey } }) => journey.stairs,
      "the slope of the stairs",
      'measure rise and run of a step, and write the slope into the journey as "stairs: 32 deg"',
    ),
  },
  answer: (input, { incline }, section) =>
    input.case.journey.people < 2
      ? {
          plainNo: true,
          facts: "Nobody carries a case on stairs alone.",
          remedies: [{ words: "Find a second person for the other end, or a way without stairs." }],
          because: [],
          limit: cite("common-practice", "two people at least for a case on stairs"),
        }
      : allowedAtAll(input, () => carried(input, section, incline)),
  figure: (input, section) => stairsFigure(input, section, input.case.journey.stairs),
});

/** The larger half of the people walks below; whichever end leads, the way round that is worse for somebody. */
function carried(input: ReviewInput, section: string, incline: Angle): Answer {
  const balance = sectionBalance(input, section);
  const load = endShares(input, section, balance, balance.value.mass);
  const leaning = { ...load, incline };
  const turned = { ...leaning, toCentre: Length.si(load.span - load.toCentre) };
  if (tipsOver(leaning) || tipsOver(turned)) return tipped(balance, "on the stairs");
  const { people } = input.case.journey;
  const ways = [leaning, turned].map((way) => sharedOnStairs(way, people));
  const { line, share, who } = mostOf(ways, (way) => way.share, "stairs: no way round was found");
  const judged = judgeShare(input, share);
  const style = styleOf(input.case);
  return {
    demand: amount(Mass, `carried by ${who}`, share),
    capacity: amount(Mass, "recommended weight limit", limitOf(judged)),
    facts: `${capitalised(who)} on the stairs carries ${Mass.show(share, style)} of ${section}; ${Mass.show(limitOf(judged), style)} is recommended. The lower end takes ${Mass.show(line.value.first, style)}, the upper ${Mass.show(line.value.second, style)}.`,
    remedies: [
      { words: "Carry it empty, take the heaviest things out first, or find a way without stairs." },
    ],
    because: [balance, line, judged.atStart, judged.atEnd],
    limit: stairGuide,
  };
}

/** A load on stairs among the people at its two ends. */
interface SharedOnStairs {
  /** What each end takes. */
  readonly line: ReturnType<typeof pairShares.worked>;
  /** What the most loaded person takes. */
  readonly share: Mass;
  /** The most loaded person, by place. */
  readonly who: string;
}

function sharedOnStairs(load: LoadBetweenTwo, people: number): SharedOnStairs {
  const line = pairShares.worked(load);
  const [below, above] = [Math.ceil(people / 2), Math.floor(people / 2)];
  const each = { below: line.value.first / below, above: line.value.second / above };
  const worse = each.below >= each.above ? "below" : "above";
  const many = { below, above }[worse];
  const who = many === 1 ? `the person ${worse}` : `each of ${many} ${worse}`;
  return { line, share: Mass.si(each[worse]), who };
}

/** The lifting index of a section with one content moved. */
export interface LiftRow {
  /** How far the content stands from the wall at the first end: left, or front. */
  readonly from: Length;
  /** The index of the heavier end, a plain number. */
  readonly index: number;
}

/**
 * How moving one content from one end of its section to the other changes the lift.
 *
 * @param name of the content
 * @param steps places to try, at least two; those where the lift cannot be judged are left out
 * @throws Refusal when there is no such content, or its section has no handle at each end
 */
export function liftSweep(input: ReviewInput, name: string, steps: number): readonly LiftRow[] {
  const part = input.parts.contents.find(({ content }) => content.name === name);
  const section = input.parts.sections.find((one) => one.name === part?.content.section);
  if (!part || !section) throw new Refusal(`lift sweep: no content "${name}"`);
  const axis = liftAxis(input, section.name);
  const inside = input.case.sections.find((one) => one.name === section.name)?.inside;
  const room = (axis === "x" ? inside?.width : inside?.depth) ?? Length.si(0);
  const free = Math.max(0, room - part.content.size[axis]);
  return Array.from({ length: steps }, (_, i) => i).flatMap((i) => {
    const from = Length.si((free * i) / (steps - 1));
    const place = Length.si(section.insideLow[axis] + from + part.content.size[axis] / 2);
    const contents = input.parts.contents.map((one) =>
      one === part ? { ...one, centre: { ...one.centre, [axis]: place } } : one,
    );
    const findings = lift({ ...input, parts: { ...input.parts, contents } });
    const ratio = findings.find(({ subject }) => subject === section.name)?.ratio;
    return ratio === undefined ? [] : [{ from, index: ratio }];
  });
}
