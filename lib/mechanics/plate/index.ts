export * from "./hinged-plate.js";
export * from "./line-buckling.js";
export * from "./open-plate.js";
export * from "./plate-inputs.js";
export * from "./plate-results.js";
export * from "./plate-stress.js";
export * from "./solid-plate.js";
export * from "./strip-buckling.js";
