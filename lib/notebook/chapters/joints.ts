/** What the chapter on joints shows. */
export {
  fastenedPanels,
  fastenerKindTable,
  fastenerTable,
  fastenerTotalsTable,
  fastenerWaysLines,
  fastenerWaysTable,
  gripTable,
  hardwareRivets,
  jerkPoints,
  jointsAnswer,
  offMiddleTable,
  rivetNames,
  scheduleDrawing,
  scheduleTable,
  workOnFastenersTable,
} from "../tables/joints.js";
export { mostUsed } from "../tables/measuring.js";
