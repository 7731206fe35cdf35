export * from "./amount.js";
export * from "./finding.js";
export { glueAllows } from "./fit-out/shelves.js";
export { type JerkRow, jerkSweep } from "./joints/handles.js";
export * from "./measured-review.js";
export * from "./review.js";
export * from "./stiffness/remedies.js";
export { type LiftRow, liftSweep } from "./travel/lifting.js";
