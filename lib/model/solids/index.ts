export * from "./case-solid.js";
export * from "./case-solids.js";
export * from "./overlaps.js";
export * from "./screw-ends.js";
