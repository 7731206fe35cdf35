import type { HardwarePart } from "../../design/index.js";
import { handleForce } from "../../moving/index.js";
import { Force, Mass, Ratio, ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import type { Finding } from "../finding.js";
import { guarded, type Question, unknown } from "../guarded.js";
import type { ReviewInput } from "../review-input.js";
import { lowestSection, sectionBalance } from "../travel/balance.js";
import { verdictOf } from "../verdict.js";

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
  const rated = parts[0]?.stock.rated;
  // Keepers are listed as hardware of their own, opposite their latches.
  const latches = parts.filter(({ section }) => section === parts[0]?.section);
  if (rated === undefined) {
    return unknown(question, {
      measure: `the load rating of ${name}`,
      how: 'ask its maker, or pull one slowly on an offcut with a lever and a luggage scale, standing clear; put it in hardware.csv, column "rated"',
    });
  }
  return guarded(question, () => {
    const lower = lowestSection(input).name;
    const balance = sectionBalance(input, lower);
    const force = handleForce.worked({
      mass: balance.value.mass,
      handles: latches.length,
      dynamicFactor: input.case.demands.jerk,
    });
    const used = ratio(force.value / rated);
    const style = styleOf(input.case);
    return {
      verdict: verdictOf(used),
      answer: `Each of ${latches.length} must take ${Force.show(force.value, style)} of its rated ${Force.show(rated, style)} (${Ratio.show(used, { unit: "%", digits: 2 })}), with ${Mass.show(balance.value.mass, style)} hanging and a jerk.`,
      demand: amount(Force, "on one latch", force.value),
      capacity: amount(Force, "rated", rated),
      ratio: used,
      because: [balance, force],
      cautions: ["Lift the sections apart where you can; never stand under a joined case."],
      source: [cite("statics", "weight shared by the latches")],
    };
  });
}
