/** Whether the case stands with a lid of its top open. */
import { footprint, lidsOf, placedWithOpen } from "../../model/index.js";
import { steadyTilt, tipWays } from "../../moving/index.js";
import { Angle } from "../../quantity/index.js";
import { amount } from "../amount.js";
import { leaningFigure } from "../figures/standing-figures.js";
import { lidCaution } from "../joints/lids.js";
import { type Question, question } from "../question.js";
import { caseWords, each, mostOf } from "../subjects.js";

/** Whether the case stands with each lid of its top open. */
export const openLid: Question = question({
  id: "travel.lid",
  about: each(
    (input) => lidsOf(input).filter(({ isTop }) => isTop),
    ({ panel }) => panel.id,
  ),
  ask: ({ panel }, input) => `Does the ${caseWords(input)} stand with ${panel.id} open?`,
  tier: "safety",
  cautions: [lidCaution],
  answer: (input, _, lid) => {
    const standing = footprint(input, placedWithOpen(lid, input));
    const { balance, edges } = standing;
    const limit = steadyTilt.source;
    const remedies = [{ words: "Open it less far, put weight low in the case, or hold the case." }];
    if (!edges.every(({ arm }) => arm > 0)) {
      const facts = `Open, ${lid.panel.id} tips the case over by its own weight.`;
      return { plainNo: true, facts, remedies, because: [balance], limit };
    }
    const { way, worked } = mostOf(tipWays(standing), (one) => -one.worked.value, "lid: no way to fall");
    return {
      demand: amount(Angle, "lean to be borne", steadyTilt.angle),
      capacity: amount(Angle, `lean at which it tips to the ${way}`, worked.value),
      facts: `With ${lid.panel.id} open it tips to the ${way} at ${Angle.show(worked.value, { digits: 2 })}; ${Angle.show(steadyTilt.angle)} is asked for.`,
      remedies,
      because: [balance, worked],
      limit,
    };
  },
  figure: (input, lid) => leaningFigure(input, footprint(input, placedWithOpen(lid, input))),
});
