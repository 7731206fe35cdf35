/** What hangs overhead: its own fasteners, and the second hold that catches it when they let go. */
import { type ContentPart, type SecondHold, secondHoldOf } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import {
  fastenerStrength,
  isKnown,
  type KnownStrength,
  type ReviewInput,
  strengthInterval,
} from "../../model/index.js";
import { handleForce, snatchFactor } from "../../moving/index.js";
import { Force, Length, Ratio, ratio, standardGravity } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, showFine, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import { groupsHolding, jointFinding } from "./pull-findings.js";

const overhead =
  "Anything overhead can fall on somebody: give it a second, independent hold that bears the whole weight, and check both before every show. Follow local rules for things hung over people.";

const caught = "A hold that has caught a fall once is spent: replace it, and whatever let go.";

/** Whether what hangs overhead stays up, and whether its second hold catches it. */
export function hungFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.contents.flatMap((part) => {
    const { held } = part.content;
    if (held.by !== "hung") return [];
    const firstHold = hungFinding(input, part);
    return held.secondHold === false
      ? [withoutSecondHold(firstHold, part)]
      : [firstHold, secondHoldFinding(input, part, held.secondHold)];
  });
}

function hungFinding(input: ReviewInput, { content: { name, mass } }: ContentPart): Finding {
  const question: Question = {
    id: `joints.hung.${name}`,
    topic: "joints",
    subject: name,
    question: `Does the ${name} stay up, with a jolt?`,
  };
  return jointFinding(input, question, groupsHolding(input, name), "pull", mass, [overhead]);
}

function withoutSecondHold(finding: Finding, { content }: ContentPart): Finding {
  return {
    ...finding,
    verdict: "fails",
    answer: `The ${content.name} has no second hold. ${finding.answer}`,
  };
}

function secondHoldFinding(input: ReviewInput, part: ContentPart, hold: true | SecondHold): Finding {
  const { name } = part.content;
  const question: Question = {
    id: `joints.second-hold.${name}`,
    topic: "joints",
    subject: secondHoldOf(name),
    question: `Does the second hold catch the ${name} when the first lets go?`,
  };
  const [fastening] = groupsHolding(input, secondHoldOf(name));
  if (hold === true || !fastening) return unknown(question, describeIt(name), [overhead]);
  const each = fastenerStrength(fastening, "pull", input);
  if (!isKnown(each)) return unknown(question, each, [overhead]);
  return guarded(question, () => caughtReply(input, part, hold, each), [overhead]);
}

function describeIt(name: string): NonNullable<Finding["missing"]> {
  return {
    measure: `what the second hold of the ${name} bears, and how far it lets it fall`,
    how: 'in its block held write "second hold: { fastener, count, rated, slack, give }": the load on its label, the slack left when it hangs on its first hold, and how far a weight of the rated load stretches it',
  };
}

/** The falling weight stretches the hold until its energy is spent: more than the weight, most of all on a stiff hold. */
function caughtReply(
  input: ReviewInput,
  { content }: ContentPart,
  { rated, slack, give, count }: SecondHold,
  each: KnownStrength,
): Reply {
  const { safetyFactor } = input.case.demands;
  const weight = content.mass * standardGravity;
  const snatch = snatchFactor.worked({ slack, give: Length.si((give * weight) / rated) });
  const load = handleForce.worked({ mass: content.mass, handles: 1, dynamicFactor: snatch.value });
  const allowed = groupStrength.worked({ each: each.strength, count, safetyFactor });
  const useOf = (strength: Force): number =>
    Math.max(load.value / rated, load.value / ((strength * count) / safetyFactor));
  const used = ratio(useOf(each.strength));
  const interval = strengthInterval({ each }, (now) => useOf(now.each));
  const style = styleOf(input.case);
  const itself = load.value / rated >= load.value / allowed.value;
  return {
    verdict: verdictOf(used, interval),
    answer: `Falling ${showFine(slack, style)}, the ${content.name} pulls on its second hold with ${Force.show(load.value, style)}, ${Ratio.show(snatch.value, { digits: 2 })} times its weight; ${itself ? "the hold itself allows" : "its fasteners allow"} ${Force.show(Force.si(load.value / used), style)} (${Ratio.show(used, { unit: "%", digits: 2 })}).${used > 1 ? " Take up the slack, or take a hold that gives more." : ""}`,
    demand: amount(Force, "when it is caught", load.value),
    capacity: amount(
      Force,
      itself ? "the hold itself allows" : "its fasteners allow",
      Force.si(load.value / used),
    ),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [snatch, load, ...each.because, allowed],
    cautions: [overhead, caught],
    source: [
      cite("strength-of-materials", "weight falling on a spring"),
      cite("common-practice", "a second hold bears the fall alone"),
    ],
  };
}
