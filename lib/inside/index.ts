export * from "./air.js";
export * from "./kinds.js";
export * from "./mount.js";
export * from "./power.js";
export * from "./rattle.js";
export * from "./warmth.js";
