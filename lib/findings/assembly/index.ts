/** Every question about whether a case goes together. */
import type { Question } from "../question.js";
import { order, reach, wayIn } from "./access.js";
import { sizeAsBuilt, thicknessAsBuilt, weightAsBuilt } from "./as-built.js";
import { glueReach } from "./glue.js";
import { meetContents, meetHeads, meetInside, meetParts, stackGap, ways } from "./overlaps.js";
import { points, slidesOnWalls } from "./screws.js";

/** In the order in which they are told. */
export const assemblyQuestions: readonly Question[] = [
  meetInside,
  meetHeads,
  meetContents,
  meetParts,
  points,
  slidesOnWalls,
  stackGap,
  ways,
  wayIn,
  reach,
  glueReach,
  order,
  thicknessAsBuilt,
  sizeAsBuilt,
  weightAsBuilt,
];
