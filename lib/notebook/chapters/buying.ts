/** What the chapter on buying and cutting shows. */
export {
  barDrawings,
  boundReasons,
  buyingAnswer,
  cutSteps,
  cutStockTable,
  kerfPoints,
  offcutTable,
  pieceTable,
  rollTable,
  sawTables,
  setUpTable,
  sheetCosts,
  sheetDrawings,
  stopTables,
} from "../tables/buying.js";
export { chartLength, inCaseUnit, lengthUnit } from "../tables/chart-units.js";
