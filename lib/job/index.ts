export { carriedOver, type ReadFiles } from "./carried-over.js";
export * from "./job-name.js";
export * from "./open-job.js";
export * from "./recipe-of.js";
