export * from "./kind.js";
export * from "./kinds.js";
export * from "./money.js";
export * from "./number-text.js";
export * from "./quantity-kind.js";
export * from "./reach.js";
export * from "./unit-number.js";
export * from "./units.js";
