export * from "./amount.js";
export * from "./buying/purchase-list.js";
export * from "./finding.js";
export * from "./review-input.js";
export * from "./verdict.js";
