/** Whether each pane stays stiff, and on its rim, under what presses on its panel. */
import type { PanePart } from "../../design/index.js";
import { isotropicStiffness } from "../../material/index.js";
import { hingedPlateUniform } from "../../mechanics/index.js";
import { allowedSag, allowedSagSource, type ReviewInput } from "../../model/index.js";
import { Length, Pressure } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf } from "../amount.js";
import { paneFigure } from "../figures/panel-figures.js";
import { type Question, question } from "../question.js";
import { each } from "../subjects.js";

/** What presses on a pane: what lies on a top, or somebody who leans on it. */
function pressureOn({ panel }: PanePart, { case: { demands }, parts }: ReviewInput): Pressure {
  const face = parts.panels.find(({ id }) => id === panel)?.face;
  return face === "top" ? demands.topPressure : demands.sidePressure;
}

/** Whether each pane stays stiff, held down on its rim and free to turn there. */
export const paneSags: Question = question({
  id: "stiffness.pane",
  about: each(
    ({ parts }) => parts.panes,
    ({ id }) => id,
  ),
  ask: (pane, input) =>
    `Will ${pane.id} stay stiff under ${Pressure.show(pressureOn(pane, input), styleOf(input.case))}?`,
  tier: "feel",
  cautions: [
    "A pane that breaks cuts: take plastic or safety glass where people are, break its sharp edges, and let it move in its rim.",
  ],
  assumes: ["A pane in an opening that is no rectangle counts as the rectangle around it, to the safe side."],
  answer: (input, _, pane) => {
    const { stock, clearWidth: length, clearHeight: width } = pane;
    const stiffness = isotropicStiffness.worked({
      thickness: stock.thickness,
      modulus: stock.modulus,
      poissonRatio: stock.poisson,
    });
    const plate = hingedPlateUniform.worked({
      length,
      width,
      stiffness: stiffness.value,
      pressure: pressureOn(pane, input),
    });
    const sag = plate.value.deflection;
    const allowed = allowedSag(input, Length.si(Math.min(length, width)));
    const style = styleOf(input.case);
    return {
      demand: fineAmount("sag in its middle", sag),
      capacity: fineAmount("allowed sag", allowed),
      facts: `The pane of ${stock.name} sags ${showFine(sag, style)} at the middle of the opening; ${showFine(allowed, style)} is allowed.`,
      remedies: [{ words: "Take a thicker sheet, or split the opening with a bar." }],
      because: [stiffness, plate],
      limit: allowedSagSource,
      sources: [cite("plates-shells", "art. 30, table 8")],
    };
  },
  figure: (input, pane) =>
    paneFigure(input, pane, { words: Pressure.show(pressureOn(pane, input), styleOf(input.case)) }),
});
