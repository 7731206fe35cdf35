/** How to read the papers: words, marks, the corner that everything is measured from. */
import { list } from "../../page/index.js";
import { flowingSection, type RecipeSection, when } from "../recipe.js";
import type { Workshop } from "../workshop.js";
import { stepsAndDays } from "./days.js";

/** The section on words and marks, with the days of the work. */
export function wordsAndMarks(workshop: Workshop): RecipeSection {
  const {
    parts,
    case: { units },
    times = [],
  } = workshop;
  const fastened = parts.fastenings.length > 0;
  return flowingSection(
    "Words and marks",
    list([
      "A part is named by its section and its face: section.face. Left and right are as seen facing the front.",
      "On every panel, drawing and table 0 is the bottom left corner of the OUTSIDE face. Mark it first.",
      "The top is seen from above, the bottom from below, both with the front edge towards you.",
      "Codes such as P1 stand on the pieces, in the tables and on the drawings: the cover says which letter is what.",
      "M and a number, such as M12, is a line to fill in. Write down what you measure, also when it is right.",
      "Tick ☐ when it is done. Broken lines are bars and hardware that come later. What is hatched or white is cut out.",
      ...when(
        fastened,
        () => "A pilot hole is a thin one that the screw cuts into. Other bits let the fastener through.",
      ),
      units === "inch"
        ? "Lengths are in inches, to 1/32. Small ones are decimals."
        : "Lengths are in millimetres.",
    ]),
    ...when(times.length > 0, () => stepsAndDays(workshop)),
  );
}
