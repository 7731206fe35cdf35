export { doorwaysIn } from "./doorways.js";
export { type HandWay, handWays, nearestWay, type ReachRoom } from "./hand-ways.js";
export { solidsOnLine } from "./on-line.js";
