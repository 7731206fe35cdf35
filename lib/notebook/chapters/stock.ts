/** What the chapter on measuring your stock shows. */
export { bendModulus, bentStrips, monteCarlo, propagate } from "../../measure/index.js";
export { brokenStripTable } from "../tables/broken-strips.js";
export { barSectionTable } from "../tables/material.js";
export {
  kerfTable,
  massIntervalTable,
  measuringAnswer,
  mostUsed,
  nextMeasurement,
  oddReadings,
  oddTable,
  scatterShares,
  spreadTable,
  weightTable,
} from "../tables/measuring.js";
export {
  bendPoints,
  bendResiduals,
  facingModulusTable,
  moduliTable,
  pieceTimes,
  strengthTable,
  stripModuli,
  tiltTable,
  twistResiduals,
  twistTable,
  twoSpanTable,
  warmUpTable,
} from "../tables/trials.js";
