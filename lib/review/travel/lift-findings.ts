import type { Content, HardwarePart, Journey } from "../../design/index.js";
import {
  type Balance,
  judgeLift,
  judgePairLift,
  type Lift,
  type LiftDuration,
  LiftRate,
  type LiftVerdict,
  type LoadBetweenTwo,
  liftCaution,
  pairCaution,
} from "../../moving/index.js";
import { degree, hour, Length, Mass, Ratio, type ShowStyle } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { criterionWords, marginWords } from "../compared.js";
import type { Finding } from "../finding.js";
import { guarded, type Reply } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { verdictOf } from "../verdict.js";
import { type BalanceLine, sectionBalance } from "./balance.js";
import { contentsOf, lighter } from "./lift-advice.js";

/** Whether the people of the journey can lift each section by its handles. */
export function liftFindings(input: ReviewInput): readonly Finding[] {
  const { people } = input.case.journey;
  return input.parts.sections.map(({ name }) =>
    guarded(
      {
        id: `travel.lift.${name}`,
        topic: "travel",
        subject: name,
        question: `Can ${people} ${people === 1 ? "person" : "people"} lift ${name}, loaded?`,
      },
      () => liftReply(input, name),
    ),
  );
}

function liftReply(input: ReviewInput, section: string): Reply {
  const { journey } = input.case;
  const balance = sectionBalance(input, section);
  const lift = liftOf(journey);
  return journey.people === 1
    ? loneReply(balance, judgeLift(balance.value.mass, lift), styleOf(input.case), contentsOf(input, section))
    : teamReply(input, section, balance, lift);
}

function loneReply(
  balance: BalanceLine,
  judged: LiftVerdict,
  style: ShowStyle,
  contents: readonly Content[],
): Reply {
  return replyOf([balance], balance.value.mass, judged, [liftCaution], "one person", {
    people: 1,
    style,
    contents,
  });
}

/** How a section's weight is shared between its two ends. */
export function endShares(
  input: ReviewInput,
  section: string,
  balance: BalanceLine,
  mass: Mass,
): LoadBetweenTwo {
  const line = handleLine(input, section);
  return {
    mass,
    span: line.span,
    toCentre: Length.si(balance.value[line.axis] - line.from),
    rise: Length.si(balance.value.z - line.height),
    incline: degree(0),
  };
}

/** With more than two, each end is shared by half of them. */
function teamReply(input: ReviewInput, section: string, balance: BalanceLine, lift: Lift): Reply {
  const { people } = input.case.journey;
  const load = endShares(input, section, balance, teamMass(balance.value, people));
  const pair = judgePairLift(load, { first: lift, second: lift });
  const { first, second } = pair.shares.value;
  const [worse, share] = first >= second ? [pair.first, first] : [pair.second, second];
  const words = people === 2 ? "the heavier end" : `each of ${people} people, heavier end`;
  return replyOf([balance, pair.shares], share, worse, [pairCaution], words, {
    people,
    style: styleOf(input.case),
    contents: contentsOf(input, section),
  });
}

function teamMass({ mass }: Balance, people: number): Mass {
  return Mass.si((2 * mass) / people);
}

const liftSource = cite("niosh-lifting", "recommended weight limit and lifting index");

function replyOf(
  lines: Reply["because"],
  share: Mass,
  judged: LiftVerdict,
  cautions: readonly string[],
  who: string,
  { people, style, contents }: Lifters,
): Reply {
  const { atStart, atEnd, index } = judged;
  const limit = Mass.si(Math.min(atStart.value.limit, atEnd.value.limit));
  const advice = index.value <= 1 ? "" : ` ${lighter(contents, people, share, limit, style)}`;
  const comparison = index.value <= 1 ? "within" : "above";
  return {
    verdict: verdictOf(index.value),
    answer: `${Mass.show(share, style)} for ${who}, ${comparison} the recommended ${Mass.show(limit, style)}: lifting index ${Ratio.show(index.value, { digits: 2 })}.${advice} ${marginWords(index.value)} ${criterionWords(liftSource)}`,
    demand: amount(Mass, `carried by ${who}`, share),
    capacity: amount(Mass, "recommended weight limit", limit),
    ratio: index.value,
    because: [...lines, atStart, atEnd, index],
    cautions,
    source: [liftSource],
  };
}

/** Who lifts, and what could be taken out. */
interface Lifters {
  readonly people: number;
  readonly style: ShowStyle;
  readonly contents: readonly Content[];
}

/** One person's share of a load against the limit of the journey's lift. */
export function judgeShare({ case: { journey } }: ReviewInput, share: Mass): LiftVerdict {
  return judgeLift(share, liftOf(journey));
}

function liftOf({ liftFrom, liftTo, reach, liftsPerMinute, liftingTime, grip }: Journey): Lift {
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

interface HandleLine {
  /** The direction from one end to the other. */
  readonly axis: "x" | "y";
  readonly from: Length;
  readonly span: Length;
  readonly height: Length;
}

/** Which way the two ends of a section lie: left to right, or front to back. */
export function liftAxis(input: ReviewInput, section: string): "x" | "y" {
  return handleLine(input, section).axis;
}

/** From the handles at one end of a section to those at the other, left to right or front to back. */
function handleLine(input: ReviewInput, section: string): HandleLine {
  const centres = liftHandles(input, section).map(({ centre }) => centre);
  const reach = (axis: "x" | "y"): number => {
    const places = centres.map((centre) => centre[axis]);
    return Math.max(...places) - Math.min(...places);
  };
  const axis = reach("x") >= reach("y") ? "x" : "y";
  const span = reach(axis);
  if (!(span > 0)) {
    throw new RangeError(`${section} needs a handle at each end to be lifted by more than one person`);
  }
  const height = centres.reduce((sum, { z }) => sum + z, 0) / centres.length;
  const from = Math.min(...centres.map((centre) => centre[axis]));
  return { axis, from: Length.si(from), span: Length.si(span), height: Length.si(height) };
}

/** The handles a section is lifted by. */
export function liftHandles({ parts }: ReviewInput, section: string): readonly HardwarePart[] {
  return parts.hardware.filter((part) => part.section === section && part.item.duty === "lift");
}
