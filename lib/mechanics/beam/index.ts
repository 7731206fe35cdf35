export * from "./beam-cases.js";
export * from "./sag.js";
export * from "./section.js";
