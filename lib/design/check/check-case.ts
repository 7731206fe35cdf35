import type { Case } from "../case.js";
import type { Stock } from "../stock.js";
import { checkNames } from "./check-names.js";
import type { Fault } from "./fault.js";

/** Every fault of a case: names first, then, when all of them lead somewhere, sizes and places. */
export function checkCase(description: Case, stock: Stock): Fault[] {
  return checkNames(description, stock);
}
