export * from "./other-units.js";
