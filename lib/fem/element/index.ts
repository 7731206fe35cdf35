export * from "./batten.js";
export * from "./beam.js";
export * from "./element-matrix.js";
export * from "./gauss.js";
export * from "./layers.js";
export * from "./plate-element.js";
export * from "./shape.js";
export * from "./sheet.js";
