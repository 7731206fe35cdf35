export type { NamedSight, Sight } from "./camera.js";
export type { MarkRequest } from "./marks.js";
export * from "./picture.js";
export type * from "./picture-view.js";
export { sizeOfSolids } from "./size-lines.js";
export * from "./svg.js";
