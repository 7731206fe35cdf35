export * from "./adhesive.js";
export * from "./edge-stress.js";
export * from "./finished-face.js";
export * from "./work-plan.js";
