export * from "./order/index.js";
export * from "./overlap/index.js";
export * from "./passage/index.js";
export * from "./reach/index.js";
export * from "./solid.js";
