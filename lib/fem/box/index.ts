export * from "./box-problem.js";
export * from "./box-results.js";
export { boxStructure, usualBoxSize } from "./box-structure.js";
export * from "./fitting.js";
export * from "./joined-parts.js";
export { type BoxStructure, distance, type MeshedFace, piecesOf } from "./meshed-box.js";
export * from "./seam.js";
export * from "./solve-box.js";
export * from "./solve-joined.js";
