/** Every question about whether sheets break. */
import type { Question } from "../question.js";
import { panelsBend, shelvesBend } from "./panels.js";
import { leaning, standing } from "./person.js";

/** In the order in which they are told. */
export const strengthQuestions: readonly Question[] = [standing, leaning, panelsBend, shelvesBend];
