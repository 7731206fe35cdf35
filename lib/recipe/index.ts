export * from "./recipe.js";
export * from "./recipe-input.js";
export * from "./recipe-markdown.js";
export * from "./recipe-page.js";
export * from "./recipe-views.js";
export * from "./write-recipe.js";
