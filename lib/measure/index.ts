export * from "./bend-modulus.js";
export { type BendReading, sagOverLoad, soundHysteresis } from "./bend-reading.js";
export * from "./bend-test.js";
export * from "./column.js";
export * from "./csv.js";
export { studentFactor } from "./distributions.js";
export * from "./line-fit.js";
export * from "./linear-regression.js";
export * from "./mean.js";
export * from "./monte-carlo.js";
export {
  type Correlation,
  combinedUncertainty,
  propagate,
  type ScatterShare,
  type SpreadResult,
  type Uncertainties,
  type Uncertainty,
} from "./propagate.js";
export * from "./strength.js";
export {
  type ReadTable,
  readTable,
  type TableRow,
  type TableSchema,
  tableSchema,
} from "./table.js";
export * from "./trials.js";
export * from "./twist-test.js";
