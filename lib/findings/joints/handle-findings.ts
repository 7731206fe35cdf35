import type { HardwarePart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import {
  endShares,
  type FastenedHardware,
  fastenerStrength,
  hardwareStrength,
  isKnown,
  liftHandles,
  type ReviewInput,
  sectionBalance,
  useAlongPanel,
} from "../../model/index.js";
import { handleForce, pairShares } from "../../moving/index.js";
import { Force, Mass, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

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
    dynamicFactor: input.case.demands.dynamicFactor,
  });
  return { force: line.value, because: [balance, shares, line] };
}

function lonePull(input: ReviewInput, section: string): HandlePull {
  const balance = sectionBalance(input, section);
  const line = handleForce.worked({ mass: balance.value.mass, handles: 1, dynamicFactor: ratio(1) });
  return { force: line.value, because: [balance, line] };
}

const letsGo =
  "A handle that lets go drops a corner on a foot: look at the rivets before every lift, and replace a loose one.";

function handleFinding(
  input: ReviewInput,
  handle: HardwarePart,
  question: Question,
  pull: () => HandlePull,
): Finding {
  const own = hardwareStrength(handle, input);
  if (!isKnown(own)) return unknown(question, own, [letsGo]);
  const fastening = input.parts.fastenings.find(({ holds }) => holds === handle.id);
  if (!fastening) {
    const missing = {
      measure: `what fastens ${handle.stock.name}`,
      how: "name its fastener in hardware.csv",
    };
    return unknown(question, missing, [letsGo]);
  }
  const each = fastenerStrength(fastening, "shear", input);
  if (!isKnown(each)) return unknown(question, each, [letsGo]);
  return guarded(question, () => handleReply(input, pull(), { part: handle, fastening, own, each }), [
    letsGo,
  ]);
}

function handleReply(input: ReviewInput, { force, because }: HandlePull, handle: FastenedHardware): Reply {
  const {
    used,
    limit,
    interval,
    because: behind,
  } = useAlongPanel(handle, force, input.case.demands.safetyFactor);
  const style = styleOf(input.case);
  const itself = limit === "itself";
  return {
    verdict: verdictOf(used, interval),
    answer: `A handle must take ${Force.show(force, style)}; ${itself ? "the handle itself sets" : "its rivets set"} the limit at ${Ratio.show(used, { unit: "%", digits: 2 })}.`,
    demand: amount(Force, "on one handle", force),
    capacity: amount(Force, itself ? "the handle itself allows" : "its rivets allow", Force.si(force / used)),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [...because, ...behind],
    cautions: [letsGo],
    source: [cite("common-practice", "one handle carries all for a moment"), cite("machine-design", "8-12")],
  };
}

/** Handles are placed alike at both ends. */
function handlesAtEnd(input: ReviewInput, section: string): number {
  return Math.max(1, Math.floor(liftHandles(input, section).length / 2));
}
