export * from "./adhesive-kind.js";
export * from "./adhesive-need.js";
export * from "./finished-face-cost.js";
export * from "./finished-face-mass.js";
export * from "./oversize.js";
export * from "./solvent.js";
export type { CoverageInputs, OwnRateInputs } from "./spread-rate.js";
export { ownRate, rateFromCoverage } from "./spread-rate.js";
