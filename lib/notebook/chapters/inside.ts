/** What the chapter on what rides inside shows. */
export { lengthUnit } from "../tables/chart-units.js";
export { dayLimits, dayRows, degreeUnit, heatTable, warmUpChart } from "../tables/heat.js";
export {
  bracketRows,
  contentsTable,
  cushionChart,
  glueSentence,
  insideAnswer,
  loadsTable,
  nothingInside,
  platformLines,
  protectedTable,
  runRows,
} from "../tables/inside.js";
