/** Which questions are answered at once, and in which order the others follow. */
import { assemblyQuestions, type ReviewStep } from "../findings/index.js";

/** Questions that ask of single panels and shelves by finite elements, in the order in which they are answered. */
const ofPanels: readonly string[] = [
  "stiffness.shelf",
  "fit-out.jolt",
  "fit-out.hold",
  "strength.shelf",
  "strength.drawer",
  "strength.strap",
  "strength.stored",
  "stiffness.stored",
  "strength.panel",
  "strength.person",
  "strength.lean",
  "strength.stiffener",
  "strength.pane",
  "stiffness.pane",
  "strength.thrown",
  "strength.latch",
  "travel.shelf",
  "fit-out.bounce",
];

/** Questions that ask of the case as joined boxes. */
const ofBoxes: readonly string[] = [
  "stiffness",
  "stiffness.box",
  "stiffness.door",
  "joints.handles",
  "joints.handle-out",
  "joints.hinges",
  "joints.seams",
  "joints.glue",
  "joints.box",
];

/** Questions that ask of the solids of the case, for whoever is done first. */
const ofSolids: readonly string[] = assemblyQuestions.map(({ id }) => id);

/** Questions of joints that draw many lots of fasteners at random: answered once the panels' own sags are told. */
const ofLots: readonly string[] = [
  "joints.handle-alone",
  "joints.handle-sideways",
  "joints.second-hold",
  "joints.inserts",
  "joints.latches",
];

/** What takes some time without finite elements: questions of lots, and of money, for which all cuts are planned. */
function isLater({ id }: ReviewStep): boolean {
  return ofLots.includes(id) || id.startsWith("money.");
}

const slow: readonly string[] = [...ofPanels, ...ofBoxes, ...ofSolids];

/** What is to be asked of a case, by who works it out. */
export interface Shared {
  /** What is answered at once; what nobody lists here is. */
  readonly quick: readonly ReviewStep[];
  /** What takes some time, by the same one once the first sags are told. */
  readonly later: readonly ReviewStep[];
  /** What asks of single panels, by the one who answered the quick ones. */
  readonly panels: readonly ReviewStep[];
  /** What asks of the case as joined boxes, by the other. */
  readonly boxes: readonly ReviewStep[];
  /** What is handed out, one at a time, to whoever is done. */
  readonly spare: readonly ReviewStep[];
}

/** The steps of a review by who works them out, each list in the order in which it is. */
export function shared(steps: readonly ReviewStep[]): Shared {
  const inOrder = (ids: readonly string[]): readonly ReviewStep[] =>
    ids.flatMap((id) => steps.filter((step) => step.id === id));
  return {
    quick: steps.filter((step) => !slow.includes(step.id) && !isLater(step)),
    later: steps.filter(isLater),
    panels: inOrder(ofPanels),
    boxes: inOrder(ofBoxes),
    spare: inOrder(ofSolids),
  };
}
