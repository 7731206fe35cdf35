export * from "./box-problem.js";
export * from "./box-results.js";
export {
  type BoxStructure,
  boxFreedoms,
  boxStructure,
  type MeshedFace,
  piecesOf,
  usualBoxSize,
} from "./box-structure.js";
export * from "./fitting.js";
export * from "./free-part.js";
export * from "./joined-parts.js";
export { distance } from "./line-sides.js";
export * from "./out-of-square.js";
export * from "./seam-flow.js";
export { edgeBetween } from "./seam-springs.js";
export * from "./solve-box.js";
export * from "./solve-joined.js";
export * from "./weight-load.js";
