export * from "./dissection.js";
export * from "./eigen.js";
export * from "./factor.js";
export * from "./half-moved.js";
export * from "./piece.js";
export * from "./substitute.js";
