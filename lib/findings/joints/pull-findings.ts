import type { Fastening } from "../../design/index.js";
import { groupStrength } from "../../fastening/index.js";
import {
  type FastenerStrength,
  fastenerStrength,
  isKnown,
  type ReviewInput,
  shelfMass,
  useInterval,
} from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, type Mass, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

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
    return jointFinding(input, question, groupsHolding(input, shelf.name), "shear", shelfMass(part), [
      shelfFalls,
    ]);
  });
}

const shelfFalls = "A shelf that comes down throws what stands on it: look at its screws before every trip.";

/** The fasteners that hold a shelf, a content or a second hold. */
export function groupsHolding({ parts }: ReviewInput, name: string): readonly Fastening[] {
  return parts.fastenings.filter(({ holds }) => holds === name);
}

/** Whether a joint holds a mass with a jolt, its fasteners sharing alike. */
export function jointFinding(
  input: ReviewInput,
  question: Question,
  groups: readonly Fastening[],
  direction: "pull" | "shear",
  mass: Mass,
  cautions: readonly string[],
): Finding {
  const [first] = groups;
  if (!first)
    return unknown(question, { measure: "its fasteners", how: "name them in the case file" }, cautions);
  const strength = fastenerStrength(first, direction, input);
  if (!isKnown(strength)) return unknown(question, strength, cautions);
  const count = groups.reduce((sum, group) => sum + group.count, 0);
  return guarded(
    question,
    () => ({ ...jointReply(input, count, direction, mass, strength), cautions }),
    cautions,
  );
}

function jointReply(
  input: ReviewInput,
  count: number,
  direction: "pull" | "shear",
  mass: Mass,
  known: FastenerStrength,
): Omit<Reply, "cautions"> {
  const { strength, because, from } = known;
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const load = handleForce.worked({ mass, handles: 1, dynamicFactor });
  const allowed = groupStrength.worked({ each: strength, count, safetyFactor });
  const used = ratio(load.value / allowed.value);
  const interval = useInterval(load.value, known, count / safetyFactor);
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
