/** What each chapter of the book shows, made for a job: tables, rows of charts, drawings, answers. */
export * as buying from "./buying.js";
export * as facing from "./facing.js";
export * as inside from "./inside.js";
export * as joints from "./joints.js";
export * as money from "./money.js";
export * as moving from "./moving.js";
export * as recipe from "./recipe.js";
export * as stiffness from "./stiffness.js";
export * as stock from "./stock.js";
