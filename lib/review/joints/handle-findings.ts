import type { Fastening, HardwarePart } from "../../design/index.js";
import { groupShear, groupStrength, type Position } from "../../fastening/index.js";
import type { WorkedLine } from "../../formula.js";
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

/** Whether the handles of each section and their rivets hold a jerk, carried by both ends. */
export function handleFindings(input: ReviewInput): readonly Finding[] {
  return ofEachSection(input, jerkedPull, (section) => ({
    id: `joints.handles.${section}`,
    topic: "joints",
    subject: `handles of ${section}`,
    question: `Do the handles of ${section} and their rivets hold a jerk?`,
  }));
}

/** Whether one handle alone holds its whole section for a moment, when the other hand slips. */
export function loneHandleFindings(input: ReviewInput): readonly Finding[] {
  return ofEachSection(input, lonePull, (section) => ({
    id: `joints.handle-alone.${section}`,
    topic: "joints",
    subject: `one handle of ${section} alone`,
    question: `Does one handle hold all of ${section} for a moment, when another hand slips?`,
  }));
}

/** What one handle is pulled with, and the working. */
interface HandlePull {
  readonly force: Force;
  readonly because: readonly WorkedLine[];
}

type PullOf = (input: ReviewInput, section: string) => HandlePull;

function ofEachSection(
  input: ReviewInput,
  pull: PullOf,
  question: (section: string) => Question,
): readonly Finding[] {
  return input.parts.sections.flatMap(({ name }) => {
    const [handle] = liftHandles(input, name);
    return handle ? [handleFinding(input, handle, question(name), () => pull(input, name))] : [];
  });
}

function jerkedPull(input: ReviewInput, section: string): HandlePull {
  const balance = sectionBalance(input, section);
  const shares = pairShares.worked(endShares(input, section, balance, balance.value.mass));
  const line = handleForce.worked({
    mass: Mass.si(Math.max(shares.value.first, shares.value.second)),
    handles: handlesAtEnd(input, section),
    dynamicFactor: input.case.demands.jerk,
  });
  return { force: line.value, because: [balance, shares, line] };
}

function lonePull(input: ReviewInput, section: string): HandlePull {
  const balance = sectionBalance(input, section);
  const line = handleForce.worked({ mass: balance.value.mass, handles: 1, dynamicFactor: ratio(1) });
  return { force: line.value, because: [balance, line] };
}

function handleFinding(
  input: ReviewInput,
  handle: HardwarePart,
  question: Question,
  pull: () => HandlePull,
): Finding {
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
  return guarded(question, () => handleReply(input, handle, fastening, pull(), { ...strength, rated }));
}

function handleReply(
  input: ReviewInput,
  handle: HardwarePart,
  fastening: Fastening,
  { force, because: pulled }: HandlePull,
  { strength, because, rated }: FastenerStrength & { readonly rated: Force },
): Reply {
  const group = groupShear.worked({
    positions: fastening.at.map(({ u, v }) => ({ x: u, y: v })),
    load: { x: newton(0), y: force },
    at: gripOf(handle),
  });
  const { safetyFactor } = input.case.demands;
  const allowed = groupStrength.worked({ each: strength, count: 1, safetyFactor });
  const rivetUse = group.value.largest / allowed.value;
  const handleUse = force / rated;
  const used = ratio(Math.max(rivetUse, handleUse));
  const style = styleOf(input.case);
  const itself = handleUse >= rivetUse;
  return {
    verdict: verdictOf(used),
    answer: `A handle must take ${Force.show(force, style)}; ${itself ? "the handle itself sets" : "its rivets set"} the limit at ${Ratio.show(used, { unit: "%", digits: 2 })}.`,
    demand: amount(Force, "on one handle", force),
    capacity: amount(Force, itself ? "the handle's rating" : "its rivets allow", Force.si(force / used)),
    ratio: used,
    because: [...pulled, ...because, group, allowed],
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
