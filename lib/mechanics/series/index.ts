export * from "./navier.js";
export * from "./opening-layout.js";
export * from "./plate-field.js";
export * from "./plate-series.js";
export * from "./strip-functions.js";
