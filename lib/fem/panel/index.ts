export * from "./buckling.js";
export * from "./panel-problem.js";
export * from "./panel-results.js";
export * from "./solve-panel.js";
export * from "./strain-field.js";
export * from "./vibration.js";
