/** Whether battens, ribs and frames break under their share of what presses on their panel. */
import { beamStiffeners, stiffenerLoads, stiffenerStrength, stiffenerUses } from "../../model/index.js";
import { Pressure } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { amount, shownPair, styleOf } from "../amount.js";
import { stiffenerFigure } from "../figures/panel-figures.js";
import { type Question, question } from "../question.js";
import { each, known, mostOf } from "../subjects.js";

/** A stiffener of a panel that something presses on. */
type Pressed = ReturnType<typeof beamStiffeners>[number];

/** Whether each stiffener holds, by itself. */
export const stiffenersBend: Question = question({
  id: "strength.stiffener",
  about: each(
    (input): readonly Pressed[] =>
      beamStiffeners(input).filter((one) => stiffenerLoads(one, input).length > 0),
    ({ stiffener }) => stiffener.id,
  ),
  ask: ({ stiffener }) => `Does ${stiffener.id} bear its share of its panel without breaking?`,
  tier: "strength",
  cautions: [
    "A knot in the middle of a strip takes away half of its strength: choose straight wood without one.",
  ],
  assumes: [
    "It bears half of its panel by itself, loose at its ends: the sheet beside it in truth bears a part.",
    "Loads count 1.5 times, as EN 1990 has it. What glues or screws it to the panel is taken to hold.",
  ],
  needs: { strength: known((input, one: Pressed) => stiffenerStrength(one, input)) },
  answer: (input, { strength }, one) => {
    const uses = stiffenerUses(one, strength, stiffenerLoads(one, input), input);
    const worst = mostOf(uses, ({ stress, allowed }) => stress / allowed, `${one.stiffener.id}: no load`);
    const style = styleOf(input.case);
    const { strip } = one.stiffener;
    const graded = strip?.strength !== undefined;
    return {
      demand: amount(Pressure, "stress in it, counted 1.5 times", worst.stress),
      capacity: amount(Pressure, "design strength", worst.allowed),
      facts: `The stress in it is ${shownPair(Pressure, worst.stress, worst.allowed, style).join(" of ")} allowed, under ${worst.what}.`,
      remedies: [{ words: "Use a deeper strip, set it on edge, or put two side by side." }],
      assumed:
        strip && !graded
          ? [`Nobody said the grade of ${strip.name}: that of the lowest class of softwood was taken.`]
          : [],
      because: worst.because,
      limit: cite("en-1995", "2.4.1 and table 3.1"),
      sources: strip ? [cite("en-338", "strength classes")] : [cite("finnish-plywood", "tables 3-1 and 3-2")],
    };
  },
  figure: (input, one) => {
    const most = Math.max(...stiffenerLoads(one, input).map(({ pressure }) => pressure));
    return stiffenerFigure(input, one, Pressure.show(Pressure.si(most), styleOf(input.case)));
  },
});
