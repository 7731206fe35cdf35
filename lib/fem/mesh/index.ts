export * from "./grid-corners.js";
export * from "./outline.js";
export { cutCircle, cutRectangle, outlineFaults } from "./outline-faults.js";
export * from "./panel-mesh.js";
export * from "./quad-mesh.js";
export { divided, gradedAlong, type MeshBox, type MeshGuides, onNearSides, sharpCorners } from "./size.js";
