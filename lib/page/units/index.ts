export * from "./chart-units.js";
export * from "./other-units.js";
export * from "./switch.js";
