import type { CaseBuild } from "../case.js";
import { type CasePlan, planCase } from "../derive/plan.js";
import type { Ruler } from "../ruler.js";
import { rulerOf } from "../ruler.js";
import type { Stock } from "../stock.js";
import { checkBars, checkFasteners, checkInserts, checkSetBacks } from "./check-fasteners.js";
import { checkHardware } from "./check-hardware.js";
import { checkContents, checkShelves } from "./check-inside.js";
import { checkNames } from "./check-names.js";
import { checkOpenings } from "./check-openings.js";
import type { Fault } from "./fault.js";

/** Every fault of a case: names first, then, when all of them lead somewhere, sizes and places. */
export function checkCase(description: CaseBuild, stock: Stock): Fault[] {
  const names = checkNames(description, stock);
  if (names.length > 0) return names;
  const plan: CasePlan = planCase(description, stock);
  const ruler: Ruler = rulerOf(description);
  return [
    ...plan.layouts.flatMap((layout) => checkOpenings(layout, ruler)),
    ...plan.bars.flatMap((bar) => checkBars(bar, ruler)),
    ...plan.corners.flatMap((corner) => checkSetBacks(corner, plan.bars, ruler)),
    ...checkHardware(plan, ruler),
    ...checkFasteners(plan, stock, ruler),
    ...checkInserts(description, plan, stock, ruler),
    ...checkShelves(description, stock, ruler),
    ...checkContents(description, stock, ruler),
  ];
}
