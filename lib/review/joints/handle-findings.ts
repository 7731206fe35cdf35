import type { Fastening, HardwarePart } from "../../design/index.js";
import { groupShear, groupStrength, type Position } from "../../fastening/index.js";
import { handleForce, pairShares } from "../../moving/index.js";
import { Force, Mass, newton, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { sectionBalance } from "../travel/balance.js";
import { endShares, liftHandles } from "../travel/lift-findings.js";
import { verdictOf } from "../verdict.js";
import { type FastenerStrength, fastenerStrength, isKnown } from "./fastener-strength.js";

/** Whether the handles of each section and their rivets hold: two ends with a jerk, and one handle alone. */
export function handleFindings(input: ReviewInput): readonly Finding[] {
  return input.parts.sections.flatMap(({ name }) => {
    const [handle] = liftHandles(input, name);
    return handle ? [handleFinding(input, name, handle)] : [];
  });
}

function handleFinding(input: ReviewInput, section: string, handle: HardwarePart): Finding {
  const question: Question = {
    id: `joints.handles.${section}`,
    topic: "joints",
    subject: `handles of ${section}`,
    question: `Do the handles of ${section} and their rivets hold a jerk, and one handle alone?`,
  };
  const { rated, name } = handle.stock;
  if (rated === undefined) {
    return unknown(question, {
      measure: `the load rating of ${name}`,
      how: "ask its maker, or hang a slowly growing weight on one over sand, standing clear",
    });
  }
  const fastening = input.parts.fastenings.find(({ holds }) => holds === handle.id);
  if (!fastening)
    return unknown(question, { measure: `what fastens ${name}`, how: "name its fastener in hardware.csv" });
  const strength = fastenerStrength(fastening, "shear", input);
  if (!isKnown(strength)) return unknown(question, strength);
  return guarded(question, () => handleReply(input, section, handle, fastening, rated, strength));
}

function handleReply(
  input: ReviewInput,
  section: string,
  handle: HardwarePart,
  fastening: Fastening,
  rated: Force,
  { strength, because }: FastenerStrength,
): Reply {
  const { demands } = input.case;
  const balance = sectionBalance(input, section);
  const shares = pairShares.worked(endShares(input, section, balance, balance.value.mass));
  const heavier = Mass.si(Math.max(shares.value.first, shares.value.second));
  const jerked = handleForce.worked({
    mass: heavier,
    handles: handlesAtEnd(input, section),
    dynamicFactor: demands.jerk,
  });
  const alone = handleForce.worked({ mass: balance.value.mass, handles: 1, dynamicFactor: ratio(1) });
  const demand = Force.si(Math.max(jerked.value, alone.value));
  const group = groupShear.worked({
    positions: fastening.at.map(({ u, v }) => ({ x: u, y: v })),
    load: { x: newton(0), y: demand },
    at: gripOf(handle),
  });
  const allowed = groupStrength.worked({ each: strength, count: 1, safetyFactor: demands.safetyFactor });
  const rivetUse = group.value.largest / allowed.value;
  const handleUse = demand / rated;
  const used = ratio(Math.max(rivetUse, handleUse));
  const style = styleOf(input.case);
  const weak = handleUse >= rivetUse ? "the handle itself" : "its rivets";
  return {
    verdict: verdictOf(used),
    answer: `A handle must take ${Force.show(demand, style)} (${demand === jerked.value ? "its end with a jerk" : "the whole section for a moment"}); ${weak} set${weak === "its rivets" ? "" : "s"} the limit at ${Ratio.show(used, { unit: "%", digits: 2 })}.`,
    demand: amount(Force, "on one handle", demand),
    capacity: amount(
      Force,
      weak === "its rivets" ? "its rivets allow" : "the handle's rating",
      Force.si(demand / used),
    ),
    ratio: used,
    because: [balance, shares, jerked, alone, ...because, group, allowed],
    cautions: [
      "A handle that lets go drops a corner on a foot: look at the rivets before every lift, and replace a loose one.",
    ],
    source: [cite("common-practice", "one handle carries all for a moment"), cite("machine-design", "8-12")],
  };
}

/** Handles are placed alike at both ends. */
function handlesAtEnd(input: ReviewInput, section: string): number {
  return Math.max(1, Math.floor(liftHandles(input, section).length / 2));
}

/** The hand pulls in the middle of the handle. */
function gripOf({ id, on }: HardwarePart): Position {
  if (!on) throw new RangeError(`${id} must be placed on one panel to be lifted by`);
  return { x: on.u, y: on.v };
}
