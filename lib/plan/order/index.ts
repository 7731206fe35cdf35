export * from "./case-order.js";
export * from "./hardware-stage.js";
export { reachOf } from "./section-needs.js";
export { keyOf as stepKeyOf } from "./section-steps.js";
export { type TimedRow, timedRows } from "./step-times.js";
export { plannedDays, type Stint, sharedWork } from "./work-days.js";
export type { StageName, WorkStep } from "./work-step.js";
