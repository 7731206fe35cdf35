export * from "./annuity.js";
export * from "./bill.js";
export * from "./make-or-buy.js";
export * from "./never.js";
export * from "./packs.js";
export * from "./payback.js";
export * from "./payback-chance.js";
export * from "./price-breaks.js";
