export * from "./beam.js";
export * from "./element-matrix.js";
export { nodeAreas, slopeMatrix } from "./integrals.js";
export * from "./shape.js";
export * from "./sheet.js";
