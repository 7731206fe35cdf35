export * from "./makers.js";
export * from "./moved.js";
export * from "./outline-kind.js";
export * from "./pieces.js";
export * from "./point.js";
export * from "./seen.js";
export * from "./shape.js";
export * from "./side.js";
