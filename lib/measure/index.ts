export * from "./column.js";
export * from "./table.js";
