/**
 * What a notebook of one's own imports from "casewright": a job to ask, quantities, formulas by trade, and what shows
 * them. Everything else is in "casewright/all". At most 60 names, so that a list of them can be read.
 */
export { add, remove, rename, set } from "./design/index.js";
export type { Finding } from "./findings/index.js";
export { type AskedJob, type Sweep, sweep, table } from "./notebook/ask/index.js";
export * as chapters from "./notebook/chapters/index.js";
export * as charts from "./notebook/chart.js";
export { chart, openJob } from "./notebook/open-job.js";
export { showHere as show, showIn } from "./notebook/show.js";
export { answer, cautions, folded, list } from "./page/index.js";
export {
  degree,
  foot,
  gram,
  hour,
  inch,
  kg,
  kgf,
  lbf,
  megapascal,
  metre,
  mil,
  minute,
  mm,
  newton,
  pascal,
  pound,
  psi,
  ratio,
  squareMetre,
} from "./quantity/given-units.js";
export { kinds } from "./quantity/kinds-with-units.js";
export {
  bars,
  beam,
  cost,
  cut,
  drop,
  glue,
  heat,
  lift,
  plate,
  ride,
  rivet,
  roll,
  screw,
  seam,
  tip,
  trial,
  wire,
  wood,
} from "./trades/index.js";
