/** What the chapter on adhesives and laminates shows. */
export { styleOf } from "../../findings/index.js";
export { faceOptions } from "../../plan/index.js";
export {
  areaOf,
  faceCostParts,
  facePoints,
  faceTable,
  facingAnswer,
  unfacedNote,
} from "../tables/face-options.js";
export {
  adhesiveLines,
  adhesiveTable,
  durationTable,
  facingCautions,
  facingStressTable,
  gluePlanTable,
  movementAnswer,
  movementTable,
  woodClimateTable,
} from "../tables/material.js";
