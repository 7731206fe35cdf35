/** Whether a panel bears a person: who stands, kneels or sits on the top, or leans on a side. */
import type { PanelPart } from "../../design/index.js";
import {
  castersOf,
  holdOf,
  pressedSide,
  pressedWhereWeakest,
  type ReviewInput,
  sheetStrength,
} from "../../model/index.js";
import { type PersonWay, personLoad } from "../../moving/index.js";
import { Force, Length } from "../../quantity/index.js";
import { type Citation, cite } from "../../source.js";
import { styleOf } from "../amount.js";
import type { Figure } from "../figures/figure.js";
import { pressedPanelFigure } from "../figures/panel-figures.js";
import { type Answer, type Question, question, type Subjects } from "../question.js";
import { each, known } from "../subjects.js";
import { type JudgedLoad, type JudgedSheet, sheetAnswer, sheetAssumptions, worstOf } from "./sheet-answer.js";

/** What happens under a shoulder; only casters have a brake. */
function leanCaution(input: ReviewInput): string {
  const brake = castersOf(input).length > 0 ? "brake it, and " : "";
  return `A panel that breaks under a shoulder cuts, and a case that is leant on tips: ${brake}keep children from climbing.`;
}

/** What a case does under somebody long before it breaks. */
function standCaution(input: ReviewInput): string {
  const rolls = castersOf(input).length > 0;
  const stacked = input.parts.sections.length > 1;
  if (!rolls && !stacked) return "Who stands on the case keeps to its middle: near an edge it tips.";
  const when = [rolls ? "on casters" : "", stacked ? "stacked" : ""].filter(Boolean).join(" or ");
  const what = rolls ? "rolls or tips" : "tips";
  return `Nobody stands on the case while it is ${when}: it ${what} long before it breaks.`;
}

function eachPanelThat(chosen: (panel: PanelPart) => boolean): Subjects<PanelPart> {
  return each(
    ({ parts }) => parts.panels.filter(chosen),
    ({ id }) => id,
  );
}

function strengthNeeded() {
  return known((input, { sheet }: PanelPart) => sheetStrength(sheet, input.measurements));
}

/** What each says of somebody. */
const doing = { stands: "standing", kneels: "kneeling", sits: "sitting" } as const;
const doings = ["stands", "kneels", "sits"] as const;

/** Whether a top bears somebody. */
export const standing: Question = question({
  id: "strength.person",
  about: eachPanelThat(({ role, face }) => role === "face" && face === "top"),
  ask: ({ id }, { case: { demands } }) =>
    `Does ${id} bear somebody ${doing[demands.topBears ?? "stands"]} on it?`,
  tier: "safety",
  cautions: (_, input) => [standCaution(input)],
  assumes: sheetAssumptions,
  needs: { strength: strengthNeeded() },
  answer: (input, { strength }, panel) => {
    const sheet = { panel, strength };
    const asked = input.case.demands.topBears ?? "stands";
    const answer = sheetAnswer(input, sheet, pressed(input, sheet, asked));
    const others = doings
      .filter((way) => way !== asked)
      .map((way) => {
        const { worst } = pressed(input, sheet, way).use;
        return `${worst.stress <= worst.allowed ? "bears" : "does not bear"} somebody ${doing[way]}`;
      });
    return personAnswer(asked, {
      ...answer,
      facts: `${answer.facts} ${loadWords(input, asked, `Somebody ${doing[asked]}`)} It ${others.join(" and ")}.`,
      remedies: [
        {
          words:
            'Use a thicker top or put battens under it. Or write "top bears: sits" into the demands, and "NO STEP" on every top.',
        },
      ],
    });
  },
  figure: (input, panel) => personFigure(input, panel, input.case.demands.topBears ?? "stands"),
});

/** Whether an upright panel or a door bears somebody who leans on it. */
export const leaning: Question = question({
  id: "strength.lean",
  about: eachPanelThat(({ face }) => face !== undefined && face !== "top" && face !== "bottom"),
  ask: ({ id }) => `Does ${id} bear somebody who falls or leans against it?`,
  tier: "safety",
  cautions: (_, input) => [leanCaution(input)],
  assumes: sheetAssumptions,
  needs: { strength: strengthNeeded() },
  answer: (input, { strength }, panel) => {
    const sheet = { panel, strength };
    const answer = sheetAnswer(input, sheet, pressed(input, sheet, "leans"));
    return personAnswer("leans", {
      ...answer,
      facts: `${answer.facts} ${loadWords(input, "leans", "Somebody leaning on it")}`,
      remedies: [
        { words: "Use a thicker sheet, put a batten behind it, or a guard bar across the opening." },
      ],
    });
  },
  figure: (input, panel) => personFigure(input, panel, "leans"),
});

function pressed(input: ReviewInput, sheet: JudgedSheet, way: PersonWay): JudgedLoad {
  const { panel } = sheet;
  const line = personLoad.worked({ way });
  const { force, side } = line.value;
  const patch = { force, length: side, width: side };
  const { moments, because } =
    way === "leans"
      ? pressedSide(panel, patch, input).leant
      : pressedWhereWeakest(panel, holdOf(panel, input), patch, input);
  const what = "pressed where it gives most";
  return worstOf(input, sheet, [{ what, moments, because: [line, because], duration: "short" }]);
}

/** The square that somebody presses on, where the panel gives most. */
function personFigure(input: ReviewInput, panel: PanelPart, way: PersonWay): Figure {
  const { force, side } = personLoad({ way });
  const style = styleOf(input.case);
  const words = `${Force.show(force, style)} on ${Length.show(side, style)} square`;
  return pressedPanelFigure(input, panel, { length: side, width: side, words });
}

function loadWords(input: ReviewInput, way: PersonWay, who: string): string {
  const { force, side } = personLoad({ way });
  const style = styleOf(input.case);
  return `${who} counts as ${Force.show(force, style)} on a square of ${Length.show(side, style)}.`;
}

/** Where the load of each comes from. */
const loadSources: Readonly<Record<PersonWay, Citation>> = {
  stands: cite("asce-7", "table 4-1, stair treads"),
  kneels: cite("en-1022", "user of 110 kg, here on one knee"),
  sits: cite("en-1022", "user of 110 kg"),
  leans: cite("asce-7", "4.5, infill of guards"),
};

function personAnswer(way: PersonWay, answer: ReturnType<typeof sheetAnswer>): Answer {
  return { ...answer, limit: loadSources[way], sources: [answer.limit, ...(answer.sources ?? [])] };
}
