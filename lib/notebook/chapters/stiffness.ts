/** What the chapter on stiff panels and boxes shows. */
export { bendingDrawing, remedyTable } from "../tables/bending.js";
export { lengthUnit } from "../tables/chart-units.js";
export {
  battenPoints,
  loadCaseTable,
  meshNote,
  mostCutPanel,
  rackedDrawing,
  sagChart,
  sagPoints,
  scalesToTry,
  stiffnessAnswer,
  stiffnessTable,
  thicknessesToTry,
} from "../tables/stiffness.js";
