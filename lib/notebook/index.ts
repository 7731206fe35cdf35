export * from "./chart.js";
export * from "./show.js";
