export * from "./case.js";
export {
  add,
  applyChange,
  type Change,
  type Changed,
  remove,
  rename,
  set,
} from "./change.js";
export * from "./derive/derive-parts.js";
export { secondHoldOf } from "./derive/fastenings.js";
export { withOutline } from "./derive/openings.js";
export * from "./measured.js";
export * from "./offers.js";
export * from "./parts.js";
export * from "./place.js";
export * from "./read-design.js";
export * from "./stock.js";
export type { TableTexts } from "./tables.js";
export { tableFiles } from "./tables.js";
export { usedTables } from "./used-tables.js";
