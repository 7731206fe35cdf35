export { glueUsed, lengthAsBuilt } from "./as-built.js";
export * from "./case.js";
export {
  add,
  applyChange,
  type Change,
  type Changed,
  type Edit,
  remove,
  rename,
  set,
  type Texts,
} from "./change.js";
export { type CasePlace, placesOf } from "./change-case.js";
export type { CellPlace, NewRow, RowPlace } from "./change-table.js";
export type { ChangeValue, KindAt, PutAt } from "./change-value.js";
export { type Axis as CaseAxis, type FaceAxes, type FaceDirection, faceAxes } from "./derive/axes.js";
export * from "./derive/derive-parts.js";
export { secondHoldOf } from "./derive/fastenings.js";
export { frameOf, frameOn, outwards, type PieceFrame, pointIn, vectorOf } from "./derive/frames.js";
export { type Access, accessOf, lastPanel, openFaces } from "./derive/hands.js";
export { withOutline } from "./derive/openings.js";
export * from "./measured.js";
export * from "./offers.js";
export * from "./parts.js";
export * from "./place.js";
export type { Field, Form } from "./read/form.js";
export { caseForm } from "./read/read-case.js";
export * from "./read-design.js";
export { type Ruler, rulerOf } from "./ruler.js";
export * from "./stock.js";
export type { TableTexts } from "./tables.js";
export { tableFiles } from "./tables.js";
export { isUsual, type Limb, limbThrough, type Room, roomFor, type ToolUse } from "./tool-room.js";
export { usedTables } from "./used-tables.js";
