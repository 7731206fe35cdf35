export * from "./long-term-sag.js";
export * from "./point-beam.js";
export * from "./section.js";
export * from "./shear-sag.js";
export * from "./uniform-beam.js";
