export * from "./by-content.js";
export * from "./hand-over.js";
export * from "./last.js";
export * from "./memoize.js";
export * from "./share.js";
