export * from "./panel-sweep.js";
export * from "./progress-line.js";
