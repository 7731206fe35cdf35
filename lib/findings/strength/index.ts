/** Every question about whether sheets break. */
import type { Question } from "../question.js";
import { panelsBend, shelvesBend } from "./panels.js";

/** In the order in which they are told. */
export const strengthQuestions: readonly Question[] = [panelsBend, shelvesBend];
