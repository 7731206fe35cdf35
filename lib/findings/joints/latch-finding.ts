import type { HardwarePart } from "../../design/index.js";
import {
  type FastenedHardware,
  fastenerStrength,
  fasteningsOf,
  hardwareStrength,
  isKnown,
  lowestSection,
  type ReviewInput,
  sectionBalance,
  useAlongPanel,
} from "../../model/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Mass, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { verdictOf } from "../finding.js";
import { guarded, type Question, type Reply, unknown } from "../guarded.js";

/** Whether the latches that join the sections carry the lower one when the case is lifted by the upper. */
export function latchFindings(input: ReviewInput): readonly Finding[] {
  const latches = input.parts.hardware.filter(
    ({ item, stock }) => item.duty === "join-sections" && stock.kind === "latch",
  );
  const items = [...new Set(latches.map(({ stock }) => stock.name))];
  return items.map((name) =>
    latchFinding(
      input,
      name,
      latches.filter(({ stock }) => stock.name === name),
    ),
  );
}

function latchFinding(input: ReviewInput, name: string, parts: readonly HardwarePart[]): Finding {
  const question: Question = {
    id: `joints.latches.${name}`,
    topic: "joints",
    subject: name,
    question: `Does each ${name} hold when somebody lifts the joined case by its upper handles?`,
  };
  // Keepers are listed as hardware of their own, opposite their latches.
  const latches = parts.filter(({ section }) => section === parts[0]?.section);
  const [part] = latches;
  const fastening = part && fasteningsOf(part, input)[0];
  if (!fastening) {
    const missing = { measure: `what fastens ${name}`, how: "name its fastener in hardware.csv" };
    return unknown(question, missing, [underIt]);
  }
  const own = hardwareStrength(part, input);
  if (!isKnown(own)) return unknown(question, own, [underIt]);
  const each = fastenerStrength(fastening, "shear", input);
  if (!isKnown(each)) return unknown(question, each, [underIt]);
  return guarded(question, () => latchReply(input, latches.length, { part, fastening, own, each }), [
    underIt,
  ]);
}

const underIt = "Lift the sections apart where you can; never stand under a joined case.";

function latchReply(input: ReviewInput, latches: number, latch: FastenedHardware): Reply {
  const { dynamicFactor, safetyFactor } = input.case.demands;
  const balance = sectionBalance(input, lowestSection(input).name);
  const hung = handleForce.worked({ mass: balance.value.mass, handles: latches, dynamicFactor });
  const { used, limit, interval, because } = useAlongPanel(latch, hung.value, safetyFactor);
  const style = styleOf(input.case);
  const itself = limit === "itself";
  return {
    verdict: verdictOf(used, interval),
    answer: `Each of ${latches} must take ${Force.show(hung.value, style)}, with ${Mass.show(balance.value.mass, style)} hanging and a jerk; ${itself ? "the latch itself sets" : "its fasteners set"} the limit at ${Ratio.show(used, { unit: "%", digits: 2 })}.`,
    demand: amount(Force, "on one latch", hung.value),
    capacity: amount(
      Force,
      itself ? "the latch itself allows" : "its fasteners allow",
      Force.si(hung.value / used),
    ),
    ratio: used,
    ...(interval ? { interval } : {}),
    because: [balance, hung, ...because],
    cautions: [underIt],
    source: [cite("statics", "weight shared by the latches"), cite("machine-design", "8-12")],
  };
}
