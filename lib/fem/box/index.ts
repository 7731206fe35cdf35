export * from "./box-problem.js";
export * from "./box-results.js";
export * from "./box-structure.js";
export * from "./solve-box.js";
