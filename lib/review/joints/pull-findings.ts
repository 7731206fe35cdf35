import type { ContentPart, Fastening, ShelfPart } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import { monteCarlo, type Uncertainty } from "../../measure/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Mass, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding, RatioInterval } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { verdictOf } from "../verdict.js";
import { type FastenerStrength, fastenerStrength, isKnown } from "./fastener-strength.js";

/** Whether shelves stay on their joints, loaded and jolted. */
export function shelfJointFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.shelves.map((part) => {
    const { shelf } = part;
    const question: Question = {
      id: `joints.shelf.${shelf.name}`,
      topic: "joints",
      subject: shelf.name,
      question: `Do the joints of the ${shelf.name} hold what stands on it, with a jolt?`,
    };
    return jointFinding(input, question, groupsHolding(input, shelf.name), "shear", shelfMass(part), []);
  });
}

/** Whether what hangs overhead stays up, and has a second hold. */
export function hungFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.contents.flatMap((part) => {
    const { name, held } = part.content;
    if (held.by !== "hung") return [];
    const question: Question = {
      id: `joints.hung.${name}`,
      topic: "joints",
      subject: name,
      question: `Does the ${name} stay up, and does a second hold catch it?`,
    };
    const finding = jointFinding(input, question, groupsHolding(input, name), "pull", part.content.mass, [
      overhead,
    ]);
    return [held.secondHold ? finding : withoutSecondHold(finding, part)];
  });
}

const overhead =
  "Anything overhead can fall on somebody: give it a second, independent hold that bears the whole weight, and check both before every show. Follow local rules for things hung over people.";

function groupsHolding({ parts }: ReviewInput, name: string): readonly Fastening[] {
  return parts.fastenings.filter(({ holds }) => holds === name);
}

/** The shelf's own mass and all it carries. */
function shelfMass({ panel, carries }: ShelfPart): Mass {
  const own = panel.netArea * panel.sheet.thickness * panel.sheet.density;
  return Mass.si(carries.reduce((sum, { content }) => sum + content.mass, own));
}

function jointFinding(
  input: ReviewInput,
  question: Question,
  groups: readonly Fastening[],
  direction: "pull" | "shear",
  mass: Mass,
  cautions: readonly string[],
): Finding {
  const [first] = groups;
  if (!first) return unknown(question, { measure: "its fasteners", how: "name them in the case file" });
  const strength = fastenerStrength(first, direction, input);
  if (!isKnown(strength)) return { ...unknown(question, strength), cautions };
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  return guarded(question, () => ({ ...jointReply(input, count, direction, mass, strength), cautions }));
}

function jointReply(
  input: ReviewInput,
  count: number,
  direction: "pull" | "shear",
  mass: Mass,
  { strength, because, from, uncertainty }: FastenerStrength,
): Omit<Reply, "cautions"> {
  const { jerk, safetyFactor } = input.case.demands;
  const load = handleForce.worked({ mass, handles: 1, dynamicFactor: jerk });
  const allowed = groupStrength.worked({ each: strength, count, safetyFactor });
  const used = ratio(load.value / allowed.value);
  const interval = uncertainty && useInterval(load.value, strength, count / safetyFactor, uncertainty);
  const style = styleOf(input.case);
  const words = direction === "pull" ? "pulled" : "sheared";
  return {
    verdict: verdictOf(used, interval),
    answer: `${count} fasteners, ${words} with ${Force.show(load.value, style)}, may carry ${Force.show(allowed.value, style)} (${Ratio.show(used, { unit: "%", digits: 2 })} used); strength from ${from === "tests" ? "your own tests" : "a formula"}.`,
    demand: amount(Force, "load with a jolt", load.value),
    capacity: amount(Force, "the joint allows", allowed.value),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [load, ...because, allowed],
    source: [cite("statics", "equal shares"), cite("common-practice", "safety factor of the case file")],
  };
}

/** What the scatter of the tests leaves open about the use of a joint. */
function useInterval(
  load: Force,
  strength: Force,
  share: number,
  uncertainty: Uncertainty,
): RatioInterval | undefined {
  const use = ({ each }: { readonly each: Force }): Ratio => {
    if (each <= 0) throw new RangeError("a strength must be positive");
    return ratio(load / (each * share));
  };
  try {
    const { interval, shares } = monteCarlo(use, { each: strength }, { each: uncertainty });
    return {
      ...interval,
      shares: shares.map(({ share: part }) => ({ input: "your pull tests", share: part })),
    };
  } catch (error) {
    // Tests that scatter as much as their strength tell no interval; the value below stands on its safe side.
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}

function withoutSecondHold(finding: Finding, { content }: ContentPart): Finding {
  return {
    ...finding,
    verdict: "fails",
    answer: `The ${content.name} has no second hold. ${finding.answer}`,
  };
}
