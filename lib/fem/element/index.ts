export * from "./batten.js";
export * from "./beam.js";
export * from "./element-matrix.js";
export * from "./gauss.js";
export { nodeAreas, slopeMatrix } from "./integrals.js";
export * from "./layers.js";
export * from "./like-elements.js";
export * from "./shape.js";
export * from "./sheet.js";
