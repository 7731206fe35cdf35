/** Whether a top stays straight, for months, under what stands on it in storage. */
import { longTermSag } from "../../mechanics/index.js";
import {
  allowedSag,
  allowedSagSource,
  creepOf,
  hingedEdges,
  panelSag,
  sagCaseOf,
  sagSpan,
  storedLoad,
} from "../../model/index.js";
import { Length, Mass, Ratio } from "../../quantity/index.js";
import { cite } from "../../source.js";
import { fineAmount, showFine, styleOf, withinMesh } from "../amount.js";
import { storageCaution } from "../cautions.js";
import { sagFigure } from "../figures/panel-figures.js";
import { type Question, question } from "../question.js";
import { storedTops } from "../subjects.js";

/** Whether each top stays straight under what is stacked on it. */
export const storedSags: Question = question({
  id: "stiffness.stored",
  about: storedTops,
  ask: ({ panel: { id }, mass }, input) =>
    `Does ${id} stay straight under ${Mass.show(mass, styleOf(input.case))} in storage, for years?`,
  tier: "feel",
  cautions: [storageCaution],
  assumes: ["What stands on it is spread over it, and its edges may turn."],
  answer: (input, _, { panel, mass }) => {
    const { pressure } = storedLoad(panel, mass);
    const first = panelSag(sagCaseOf(panel, pressure, "hinged", input));
    const creep = creepOf(input);
    const later = longTermSag.worked({
      lasting: first.sag,
      passing: Length.si(0),
      creepFactor: creep.factor,
    });
    const allowed = allowedSag(input, sagSpan(panel));
    const style = styleOf(input.case);
    return {
      demand: fineAmount("sag after years", later.value),
      capacity: fineAmount("allowed sag", allowed),
      facts: `It sags ${showFine(first.sag, style)} at once and ${showFine(later.value, style)} after years; ${showFine(allowed, style)} is allowed. Creep makes it ${Ratio.show(creep.factor)} times as far. The first is ${withinMesh(first.meshError)} by the mesh.`,
      remedies: [
        {
          words: "Lay a board from wall to wall under the stack, put a batten under the top, or use a rack.",
        },
      ],
      because: [...first.because, ...creep.because, later],
      limit: allowedSagSource,
      sources: [cite("nds", "3.5.2"), cite("en-1995", "table 3.2")],
    };
  },
  figure: (input, { panel, mass }) => {
    const { pressure } = storedLoad(panel, mass);
    const words = Mass.show(mass, styleOf(input.case));
    return sagFigure(input, sagCaseOf(panel, pressure, "hinged", input), hingedEdges(panel), words);
  },
});
