export * from "./case-solid.js";
export * from "./case-solids.js";
export { fastenerPieces, type SetPiece } from "./fastener-solids.js";
export * from "./overlaps.js";
export * from "./screw-ends.js";
