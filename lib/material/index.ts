export * from "./clear-plastic.js";
export * from "./composite-beam.js";
export * from "./laminate.js";
export * from "./moisture.js";
export * from "./plate-stiffness.js";
export * from "./plywood.js";
export * from "./plywood-strength.js";
export type { DrawnProfile, SectionProperties } from "./section-outline.js";
export { outlineSection } from "./section-outline.js";
export * from "./section-torsion.js";
export {
  angleWalls,
  ProfileWall,
  type WalledProfile,
  type WalledSection,
  walledSection,
} from "./section-walls.js";
export * from "./sheet-material.js";
export * from "./slipping-layer.js";
export * from "./species.js";
export * from "./timber-strength.js";
export * from "./wood-factors.js";
