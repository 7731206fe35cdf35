export * from "./asked-job.js";
export * from "./asked-panel.js";
export * from "./asked-section.js";
export * from "./asked-things.js";
export type { AskedSize, Topic } from "./asking.js";
export { type Answered, type Sweep, type SweepChart, sweep, sweepChart, type Tried } from "./sweep.js";
export { table } from "./table.js";
