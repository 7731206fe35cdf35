export * from "./bar-bound.js";
export { firstFitBars } from "./bar-packing.js";
export * from "./bar-plan.js";
export { planBars } from "./bars.js";
export * from "./best-value.js";
export type { SearchTime } from "./patience.js";
export type { Buyable, PlanProof, Purchase, PurchaseBound } from "./purchase.js";
export * from "./saw-losses.js";
export {
  type BenchPart,
  benchStates,
  type SawStep,
  type StopSetting,
  sawSteps,
  stopSettings,
} from "./saw-steps.js";
export * from "./sheet-bound.js";
export * from "./sheet-plan.js";
export { planSheets } from "./sheets.js";
export * from "./strip.js";
