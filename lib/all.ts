/**
 * Every name of the library: what "casewright" offers, and what notebooks import that were written when it offered all.
 * Where both have a name, the one that "casewright" offers counts: it can do whatever the other can.
 */

export * from "./face.js";
export {
  chart,
  degree,
  foot,
  gram,
  hour,
  inch,
  kg,
  kgf,
  lbf,
  megapascal,
  metre,
  mil,
  minute,
  mm,
  newton,
  openJob,
  pascal,
  pound,
  psi,
  ratio,
  show,
  squareMetre,
} from "./face.js";
export * from "./index.js";
export * from "./notebook/ask/index.js";
export type * from "./quantity/kinds-with-units.js";
export type * from "./trades/trade.js";
