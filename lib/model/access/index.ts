export * from "./content-ways.js";
export * from "./fastener-reach.js";
export * from "./glue-reach.js";
