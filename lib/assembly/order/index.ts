export type { Conflict } from "./conflict.js";
export type { AssemblyStep, OrderNeed } from "./need.js";
export { brokenNeeds, findOrder, hasOrder, type WorkOrder } from "./order.js";
