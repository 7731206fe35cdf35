/** Whether panels, leaves and shelves break under what they have to bear. */
import type { PanelPart, ShelfPart } from "../../design/index.js";
import {
  faceLoads,
  holdOf,
  type LoadOnPanel,
  momentsUnder,
  type PanelHold,
  type ReviewInput,
  sheetStrength,
  shelfHold,
  shelfLoads,
} from "../../model/index.js";
import { Pressure } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import { shelfCaution } from "../cautions.js";
import { loadedPanelFigure, shelfFigure } from "../figures/panel-figures.js";
import { type Answer, type Question, question } from "../question.js";
import { each, eachShelf, known } from "../subjects.js";
import { type JudgedSheet, sheetAnswer, sheetAssumptions, worstOf } from "./sheet-answer.js";

/** A face or a leaf with what presses on it. */
interface LoadedPanel {
  /** The panel. */
  readonly panel: PanelPart;
  /** What presses on it, at least one. */
  readonly loads: readonly LoadOnPanel[];
}

/** Whether a face or the leaf of a door breaks. */
export const panelsBend: Question = question({
  id: "strength.panel",
  about: each(
    (input): readonly LoadedPanel[] =>
      input.parts.panels
        .map((panel) => ({ panel, loads: faceLoads(panel, input) }))
        .filter(({ loads }) => loads.length > 0),
    ({ panel }) => panel.id,
  ),
  ask: ({ panel, loads }, input) => {
    const most = Math.max(...loads.map(({ pressure }) => pressure));
    return `Does ${panel.id} bear ${Pressure.show(Pressure.si(most), styleOf(input.case))} without breaking?`;
  },
  tier: "strength",
  cautions: [
    "A panel that gives way lets an arm through onto splinters: nobody leans on one that is cracked or rotten.",
  ],
  assumes: sheetAssumptions,
  needs: {
    strength: known((input, { panel }: LoadedPanel) => sheetStrength(panel.sheet, input.measurements)),
  },
  answer: (input, { strength }, { panel, loads }) =>
    underLoads(input, { panel, strength }, holdOf(panel, input), loads),
  figure: (input, { panel, loads }) => {
    const most = Pressure.si(Math.max(...loads.map(({ pressure }) => pressure)));
    return loadedPanelFigure(input, panel, [{ on: "all", words: Pressure.show(most, styleOf(input.case)) }]);
  },
});

/** Whether a shelf breaks, in bending or by rolling of its veneers. */
export const shelvesBend: Question = question({
  id: "strength.shelf",
  about: eachShelf,
  ask: ({ shelf }) =>
    `Does the ${shelf.name} bear what it carries, with a jolt and for years, without breaking?`,
  tier: "strength",
  cautions: [shelfCaution],
  assumes: sheetAssumptions,
  needs: {
    strength: known((input, { panel }: ShelfPart) => sheetStrength(panel.sheet, input.measurements)),
  },
  answer: (input, { strength }, part) =>
    underLoads(input, { panel: part.panel, strength }, shelfHold(part), shelfLoads(part, input)),
  figure: shelfFigure,
});

function underLoads(
  input: ReviewInput,
  sheet: JudgedSheet,
  hold: PanelHold,
  loads: readonly LoadOnPanel[],
): Answer {
  const tried = loads.map(({ what, pressure, duration }) => {
    const { moments, because } = momentsUnder(sheet.panel, hold, pressure, input);
    return { what: `under ${what}`, moments, because: [because], duration };
  });
  const worst = worstOf(input, sheet, tried);
  return {
    ...sheetAnswer(input, sheet, worst),
    remedies: [{ words: "Use a thicker sheet, put a batten under it, or make an opening smaller." }],
  };
}
