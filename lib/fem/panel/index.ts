export * from "./buckling.js";
export * from "./contour.js";
export * from "./panel-problem.js";
export * from "./panel-results.js";
export { sheetAt } from "./panel-structure.js";
export * from "./solve-panel.js";
export * from "./strain-field.js";
export * from "./twice.js";
export * from "./vibration.js";
