export * from "./panel-sweep.js";
