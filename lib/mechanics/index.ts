export * from "./beam/index.js";
export * from "./plate/index.js";
export type { EdgeSupport } from "./series/index.js";
