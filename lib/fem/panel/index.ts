export * from "./locate.js";
export * from "./mesh-convergence.js";
export * from "./panel-forces.js";
export * from "./panel-modes.js";
export * from "./panel-problem.js";
export * from "./panel-results.js";
export { rimWidth, sheetAt } from "./panel-structure.js";
export * from "./solve-panel.js";
export * from "./strain-field.js";
