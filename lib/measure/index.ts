export * from "../algebra/random.js";
export { type BendModulusInputs, bendModulus } from "./bend-modulus.js";
export type { BendReading } from "./bend-reading.js";
export * from "./bend-shear.js";
export * from "./bend-test.js";
export * from "./bend-two-spans.js";
export * from "./characteristic-strength.js";
export * from "./column.js";
export {
  type CombinedUncertainty,
  combinedUncertainty,
  type UncertaintyParts,
} from "./combined-uncertainty.js";
export type { Correlation } from "./correlation.js";
export * from "./facing-modulus.js";
export * from "./kerf.js";
export * from "./line-fit.js";
export * from "./linear-regression.js";
export * from "./mean.js";
export * from "./monte-carlo.js";
export * from "./pull-test.js";
export * from "./sheet-density.js";
export * from "./small-trials.js";
export type { ScatterShare, SpreadResult, Uncertainties, Uncertainty } from "./spread.js";
export { spread } from "./spread.js";
export * from "./spread-trial.js";
export * from "./student.js";
export * from "./table.js";
export * from "./tolerance-factor.js";
export * from "./twist-test.js";
