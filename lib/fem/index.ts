export * from "./box/index.js";
export * from "./element/index.js";
export * from "./mesh/index.js";
export * from "./panel/index.js";
export * from "./panel-formula.js";
export * from "./panel-moments.js";
export * from "./solve/index.js";
