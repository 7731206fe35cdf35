export * from "./bill.js";
export * from "./currency.js";
export * from "./make-or-buy.js";
export * from "./packs.js";
export * from "./payback.js";
