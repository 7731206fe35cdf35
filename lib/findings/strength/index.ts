/** Every question about whether sheets, stiffeners and panes break. */
import type { Question } from "../question.js";
import { drawerBottoms } from "./drawers.js";
import { panelsBend, shelvesBend } from "./panels.js";
import { panesBreak } from "./panes.js";
import { leaning, standing } from "./person.js";
import { stiffenersBend } from "./stiffeners.js";
import { storedOn } from "./stored.js";
import { strapsOnWalls } from "./straps.js";
import { thrownAtLatch, thrownThings } from "./thrown.js";

/** In the order in which they are told. */
export const strengthQuestions: readonly Question[] = [
  ...[standing, leaning, panesBreak, thrownThings, thrownAtLatch],
  ...[panelsBend, shelvesBend, drawerBottoms, stiffenersBend, storedOn, strapsOnWalls],
];
