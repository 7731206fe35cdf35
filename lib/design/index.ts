export * from "./case.js";
export * from "./derive/derive-parts.js";
export * from "./parts.js";
export * from "./place.js";
export * from "./read/read-design.js";
export type { TableTexts } from "./read/read-tables.js";
export * from "./services.js";
export * from "./stock.js";
export * from "./table-files.js";
