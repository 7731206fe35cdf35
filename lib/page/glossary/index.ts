export * from "./glossary-html.js";
export * from "./link-terms.js";
export * from "./terms.js";
