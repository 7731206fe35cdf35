export * from "./case.js";
export * from "./derive/derive-parts.js";
export * from "./parts.js";
export * from "./place.js";
export * from "./stock.js";
