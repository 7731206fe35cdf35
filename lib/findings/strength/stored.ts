/** Whether a top bears, for months, what stands on it in storage. */
import type { PanelPart } from "../../design/index.js";
import { holdOf, momentsUnder, sheetStrength, storedLoad } from "../../model/index.js";
import { Mass } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import { storageCaution } from "../cautions.js";
import { loadedPanelFigure } from "../figures/panel-figures.js";
import { type Question, question } from "../question.js";
import { known, storedTops } from "../subjects.js";
import { sheetAnswer, sheetAssumptions, worstOf } from "./sheet-answer.js";

/** Whether each top holds what is stacked on it in storage. */
export const storedOn: Question = question({
  id: "strength.stored",
  about: storedTops,
  ask: ({ panel: { id }, mass }, input) =>
    `Does ${id} bear ${Mass.show(mass, styleOf(input.case))} on it in storage without breaking?`,
  tier: "strength",
  cautions: [storageCaution],
  assumes: [...sheetAssumptions, "What stands on it is spread over it; feet of a stack want a board."],
  needs: {
    strength: known((input, { panel }: { readonly panel: PanelPart }) =>
      sheetStrength(panel.sheet, input.measurements),
    ),
  },
  answer: (input, { strength }, { panel, mass }) => {
    const sheet = { panel, strength };
    const { pressure } = storedLoad(panel, mass);
    const { moments, because } = momentsUnder(panel, holdOf(panel, input), pressure, input);
    const what = "under what stands on it for years";
    const load = { what, moments, because: [because], duration: "permanent" } as const;
    return {
      ...sheetAnswer(input, sheet, worstOf(input, sheet, [load])),
      remedies: [
        {
          words:
            "Store it on top of the stack, or lay a stiff board from wall to wall under what stands on it.",
        },
      ],
    };
  },
  figure: (input, { panel, mass }) =>
    loadedPanelFigure(input, panel, [{ on: "all", words: Mass.show(mass, styleOf(input.case)) }]),
});
