/** Every question about whether sheets break. */
import type { Question } from "../question.js";
import { panelsBend, shelvesBend } from "./panels.js";
import { leaning, standing } from "./person.js";
import { thrownAtLatch, thrownThings } from "./thrown.js";

/** In the order in which they are told. */
export const strengthQuestions: readonly Question[] = [
  ...[standing, leaning, thrownThings, thrownAtLatch],
  ...[panelsBend, shelvesBend],
];
