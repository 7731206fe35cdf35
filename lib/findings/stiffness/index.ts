/** Every question about how stiff the case is. */
import type { Question } from "../question.js";
import type { BoxedInput } from "../subjects.js";
import { doors, racking } from "./boxes.js";
import { paneSags } from "./panes.js";
import { panelSags, shelfSags } from "./sag.js";
import { storedSags } from "./stored.js";

/** In the order in which they are told. */
export const stiffnessQuestions: readonly Question<BoxedInput>[] = [
  panelSags,
  racking,
  doors,
  shelfSags,
  paneSags,
  storedSags,
];
