/** What the chapter on what rides inside shows. */
export { lengthUnit } from "../tables/chart-units.js";
export { dayLimits, dayRows, degreeUnit, heatTable, nothingWarms, warmUpChart } from "../tables/heat.js";
export {
  bracketRows,
  contentsTable,
  cushionChart,
  glueSentence,
  hasPlatform,
  insideAnswer,
  loadsTable,
  nothingInside,
  platformLines,
  protectedTable,
  runRows,
} from "../tables/inside.js";
