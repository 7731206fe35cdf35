export { metByBox } from "./met-by-box.js";
export { findOverlaps, middleOfOverlap, type Overlap, overlapsBetween } from "./overlap.js";
export { reachOfSolid, type SolidReach } from "./placed.js";
export { arcTolerance } from "./region.js";
export { overlapsOnWay, turnTolerance, type Way } from "./way.js";
