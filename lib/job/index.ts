export * from "./job-name.js";
export * from "./open-job.js";
