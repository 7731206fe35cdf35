/** Whether a pane breaks under somebody who leans on it or steps on it. */
import type { PanePart } from "../../design/index.js";
import type { WorkedLine } from "../../formula.js";
import { clearPlasticStrength, isotropicStiffness } from "../../material/index.js";
import { hingedPlatePatch, plateBendingStress } from "../../mechanics/index.js";
import type { ReviewInput } from "../../model/index.js";
import { type PersonWay, personLoad } from "../../moving/index.js";
import { Force, Length, PlateMoment, Pressure, Ratio } from "../../quantity/index.js";
import type { MissingMeasurement } from "../../refusal.js";
import { cite } from "../../source.js";
import { amount, styleOf } from "../amount.js";
import { paneFigure } from "../figures/panel-figures.js";
import { type Question, question } from "../question.js";
import { each, known } from "../subjects.js";

/** Bending strength of a pane, and the line that gives it where its maker does not. */
interface PaneStrength {
  /** Of the sheet, for a moment. */
  readonly strength: Pressure;
  /** The worked line of a published value. */
  readonly because: readonly WorkedLine[];
}

function strengthOf({ stock: { name, plastic, strength } }: PanePart): PaneStrength | MissingMeasurement {
  if (strength !== undefined) return { strength, because: [] };
  if (plastic === undefined)
    return {
      measure: `the bending strength of ${name}`,
      how: 'take it off its data sheet into pane-stock.csv, column "strength", or say there which plastic it is',
    };
  const line = clearPlasticStrength.worked({ plastic });
  return { strength: line.value, because: [line] };
}

function wayOn({ panel }: PanePart, { case: { demands }, parts }: ReviewInput): PersonWay {
  const face = parts.panels.find(({ id }) => id === panel)?.face;
  return face === "top" ? (demands.topBears ?? "stands") : "leans";
}

const doing: Readonly<Record<PersonWay, string>> = {
  stands: "stands on it",
  kneels: "kneels on it",
  sits: "sits on it",
  leans: "falls or leans against it",
};

/** Whether each pane holds somebody. */
export const panesBreak: Question = question({
  id: "strength.pane",
  about: each(
    ({ parts }) => parts.panes,
    ({ id }) => id,
  ),
  ask: (pane, input) => `Does ${pane.id} bear somebody who ${doing[wayOn(pane, input)]}?`,
  tier: "safety",
  cautions: [
    "A pane that breaks cuts whoever leans on it: plastic or safety glass only, and a cracked one comes out before the next trip.",
  ],
  assumes: [
    "A pane is held all round its rim and free to turn there. One in an opening that is no rectangle counts as the rectangle around it.",
    "Plastic bent for long crazes at a tenth of its strength, and holes near its rim take half of it.",
  ],
  needs: { given: known((_, pane: PanePart) => strengthOf(pane)) },
  answer: (input, { given }, pane) => {
    const { stock, clearWidth: length, clearHeight: width } = pane;
    const load = personLoad.worked({ way: wayOn(pane, input) });
    const { force, side } = load.value;
    const { thickness, modulus, poisson: poissonRatio } = stock;
    const stiffness = isotropicStiffness.worked({ thickness, modulus, poissonRatio });
    const plate = hingedPlatePatch.worked({
      ...{ length, width, stiffness: stiffness.value, force },
      patchX: Length.si(length / 2),
      patchY: Length.si(width / 2),
      patchLength: Length.si(Math.min(side, length)),
      patchWidth: Length.si(Math.min(side, width)),
    });
    const moment = PlateMoment.si(Math.max(plate.value.momentX, plate.value.momentY));
    const stress = plateBendingStress.worked({ moment, thickness });
    const { safetyFactor } = input.case.demands;
    const allowed = Pressure.si(given.strength / safetyFactor);
    const style = styleOf(input.case);
    return {
      demand: amount(Pressure, "stress in its middle", stress.value),
      capacity: amount(Pressure, "strength over the case's safety factor", allowed),
      facts: `${Force.show(force, style)} in its middle stress it with ${Pressure.show(stress.value, style)}; with a safety factor of ${Ratio.show(safetyFactor)} ${stock.name} stands ${Pressure.show(allowed, style)}.`,
      remedies: [{ words: "Use a thicker pane or a tougher plastic, or put a bar across the opening." }],
      assumed:
        given.because.length > 0
          ? [`The strength of ${stock.name} is a published one of its plastic, not its maker's.`]
          : [],
      because: [...given.because, load, stiffness, plate, stress],
      limit: cite("plastic-data", "flexural strength, over the safety factor of the case file"),
      sources: [cite("asce-7", "4.5, infill of guards; table 4-1"), cite("plates-shells", "art. 34")],
    };
  },
  figure: (input, pane) => {
    const { force, side } = personLoad({ way: wayOn(pane, input) });
    const style = styleOf(input.case);
    const words = `${Force.show(force, style)} on ${Length.show(side, style)} square`;
    return paneFigure(input, pane, { side, words });
  },
});
