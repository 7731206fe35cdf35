/** Whether every glued face can be pressed while its glue is open. */
import { type GluedFace, gluedFaces, type ReviewInput, rollerReach } from "../../model/index.js";
import { caseOrder, stepKeyOf } from "../../plan/index.js";
import { cite } from "../../source.js";
import { capitalised, counted, fineAmount, showFine, styleOf } from "../amount.js";
import { type Answer, type Question, question } from "../question.js";
import { stackedCase, where } from "../subjects.js";

/** Faces of laminate, stiffeners and glued edges. */
export const glueReach: Question = question({
  id: "assembly.glue",
  about: where((input) => gluedFaces(input).length > 0, stackedCase),
  ask: "Does a hand with a roller or a clamp get to every glued face?",
  tier: "strength",
  cautions: ["Solvent and glue want fresh air, no flame, gloves, and what the can says."],
  assumes: ["Somebody goes round the bench, and reaches from the nearest edge as far as an arm does."],
  answer: glueAnswer,
});

function glueAnswer(input: ReviewInput): Answer {
  const faces = gluedFaces(input);
  const late = faces.filter((face) => isShutIn(face, input));
  const told = {
    because: [],
    limit: cite("en-547", "part 3: reach from the shortest arm, from memory"),
    rests: "the reach of an arm, as usual or as in tools.csv",
  };
  const [first] = late;
  if (first)
    return {
      ...told,
      plainNo: true,
      facts: `${capitalised(first.words)} would be glued when its section stands already.`,
      remedies: [{ words: "Glue it while its panel lies flat, before the section is stood up." }],
    };
  const [farthest] = faces;
  if (!farthest) return { ...told, facts: "Nothing is glued.", ratio: 0 };
  const style = styleOf(input.case);
  return {
    ...told,
    demand: fineAmount("farthest from an edge", farthest.far),
    capacity: fineAmount("reach of the arm", rollerReach(input)),
    facts: `The farthest glued place is ${showFine(farthest.far, style)} away from an edge; an arm reaches ${showFine(rollerReach(input), style)}. That place is on ${farthest.words}. ${counted(faces.length, "face is", "faces are")} glued, each while it lies flat or from outside.`,
  };
}

/** Whether a stiffener is put on after its panel stands, in the order that was found; one that closes lies flat longer. */
function isShutIn({ part }: GluedFace, input: ReviewInput): boolean {
  const { order, choices } = caseOrder(input);
  const stiffener = input.parts.stiffeners.find(({ id }) => id === part);
  if (order.kind !== "found" || !stiffener) return false;
  const { id, section, panel } = stiffener;
  const at = (key: string): number => order.steps.findIndex((step) => step.key === key);
  const stands = choices.get(section)?.last === panel ? stepKeyOf.close : stepKeyOf.box;
  return at(stepKeyOf.stiffen(id)) > at(stands(section));
}
