/** Whether the bottom of a drawer breaks under what lies in it. */
import type { DrawerPart, PanelPart } from "../../design/index.js";
import { jolted, momentsUnder, type PanelHold, type ReviewInput, sheetStrength } from "../../model/index.js";
import { Mass, Pressure, standardGravity } from "../../quantity/index.js";
import { styleOf } from "../amount.js";
import { panelUnder } from "../figures/panel-figures.js";
import { type Question, question } from "../question.js";
import { each, known, theOne } from "../subjects.js";
import { sheetAnswer, sheetAssumptions, worstOf } from "./sheet-answer.js";

function bottomOf({ drawer, panels }: DrawerPart): PanelPart {
  return theOne(panels, ({ id }) => id.endsWith(".bottom"), `bottom of the drawer ${drawer.name}`);
}

/** Screwed on below its four walls, free to turn there. */
const onFourWalls: PanelHold = {
  edges: { left: "hinged", right: "hinged", bottom: "hinged", top: "hinged" },
  points: [],
};

function loadsOf(part: DrawerPart, input: ReviewInput) {
  const { width, height } = bottomOf(part);
  const still = Pressure.si((part.drawer.load * standardGravity) / (width * height));
  return jolted("what lies in it", still, input);
}

/** Whether each drawer that something lies in keeps its bottom. */
export const drawerBottoms: Question = question({
  id: "strength.drawer",
  about: each(
    ({ parts }) => parts.drawers.filter(({ drawer }) => drawer.load > 0),
    ({ drawer }) => drawer.name,
  ),
  ask: ({ drawer: { name, load } }, input) =>
    `Does the bottom of the ${name} bear ${Mass.show(load, styleOf(input.case))}, with a jolt and for years?`,
  tier: "strength",
  cautions: ["A bottom that falls out drops its load on feet: look at its screws whenever it is emptied."],
  assumes: [
    ...sheetAssumptions,
    "What lies in a drawer is spread over its bottom, which its screws hold up.",
  ],
  needs: {
    strength: known((input, part: DrawerPart) => sheetStrength(bottomOf(part).sheet, input.measurements)),
  },
  answer: (input, { strength }, part) => {
    const panel = bottomOf(part);
    const sheet = { panel, strength };
    const tried = loadsOf(part, input).map(({ what, pressure, duration }) => {
      const { moments, because } = momentsUnder(panel, onFourWalls, pressure, input);
      return { what: `under ${what}`, moments, because: [because], duration };
    });
    return {
      ...sheetAnswer(input, sheet, worstOf(input, sheet, tried)),
      remedies: [{ words: "Use a thicker bottom, or put a rail under its middle." }],
    };
  },
  figure: (input, part) => {
    const words = Mass.show(part.drawer.load, styleOf(input.case));
    return panelUnder(input, bottomOf(part), onFourWalls, [{ on: "all", words }]);
  },
});
