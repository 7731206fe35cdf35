export * from "./formula.js";
export * from "./problem.js";
export * from "./published-check.js";
export * from "./quantity/index.js";
export * from "./source.js";
