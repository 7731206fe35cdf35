export * from "./composite-beam.js";
export * from "./duration.js";
export * from "./elastic-ratios.js";
export * from "./expansion.js";
export * from "./grain-angle.js";
export * from "./laminate.js";
export * from "./laminate-stiffness.js";
export * from "./layer.js";
export * from "./moisture.js";
export * from "./plate-stiffness.js";
export * from "./plywood.js";
export type { DrawnProfile, OutlinePoint, SectionProperties } from "./section-outline.js";
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
export * from "./sheet-thickness.js";
export * from "./sourced.js";
export * from "./species.js";
export * from "./temperature.js";
export * from "./torsion-forms.js";
export * from "./wood.js";
