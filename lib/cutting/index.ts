export * from "./bar-bound.js";
export * from "./bar-count.js";
export * from "./bar-plan.js";
export * from "./bars.js";
export * from "./mitre-kerf.js";
export type { Buyable, PlanProof, Purchase, PurchaseBound } from "./purchase.js";
export * from "./sheet-bound.js";
export * from "./sheet-plan.js";
export * from "./sheets.js";
