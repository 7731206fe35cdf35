export * from "./first-page.js";
export * from "./first-page-html.js";
export * from "./first-page-styles.js";
