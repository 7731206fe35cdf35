import type { CaseBody } from "../case.js";
import { type CasePlan, planCase } from "../derive/plan.js";
import type { Ruler } from "../ruler.js";
import { rulerOf } from "../ruler.js";
import type { Stock } from "../stock.js";
import { checkDrawers } from "./check-drawers.js";
import { checkBars, checkFasteners, checkInserts, checkJoints, checkSetBacks } from "./check-fasteners.js";
import { checkHardware } from "./check-hardware.js";
import { checkContents, checkShelves } from "./check-inside.js";
import { checkNames, strangersIn, type Unsure, withoutStrangers } from "./check-names.js";
import { checkOpenings } from "./check-openings.js";
import { checkStiffeners } from "./check-stiffeners.js";
import type { Fault } from "./fault.js";

/** What a check of a case gave. */
export interface CheckedCase {
  /** Every fault of names, sizes and places. */
  readonly faults: readonly Fault[];
  /** As much of the case as can be laid out: the case itself where every name leads somewhere. */
  readonly sound: CaseBody;
  /** The rows that it is laid out with: a stand-in for each adhesive whose own row has a problem. */
  readonly stock: Stock;
}

/**
 * Every fault of a case: names, and the sizes and places of all whose names lead somewhere.
 *
 * @param stock rows without a problem
 * @param unsure what could not be read, to which a name may lead without a fault
 */
export function checkCase(description: CaseBody, stock: Stock, unsure: Unsure): CheckedCase {
  const named = withStandIns(description, stock);
  const sound = withoutStrangers(description, named, unsure);
  return {
    faults: [...checkNames(description, stock, unsure), ...checkPlaces(sound, named)],
    sound,
    stock: named,
  };
}

/** The stock with a stand-in for every adhesive that leads nowhere: where parts lie does not rest on what glues them. */
function withStandIns(description: CaseBody, stock: Stock): Stock {
  const [any] = stock.adhesives;
  const lost = strangersIn(description, stock, "adhesives");
  if (!any || lost.length === 0) return stock;
  return { ...stock, adhesives: [...stock.adhesives, ...lost.map((name) => ({ ...any, name }))] };
}

function checkPlaces(description: CaseBody, stock: Stock): Fault[] {
  const plan: CasePlan = planCase(description, stock);
  const ruler: Ruler = rulerOf(description);
  return [
    ...plan.layouts.flatMap((layout) => checkOpenings(layout, ruler)),
    ...plan.bars.flatMap((bar) => checkBars(bar, ruler)),
    ...plan.joints.flatMap((joint) => checkJoints(joint, ruler)),
    ...plan.corners.flatMap((corner) => checkSetBacks(corner, plan.bars, ruler)),
    ...checkHardware(plan, ruler),
    ...checkFasteners(plan, stock, ruler),
    ...checkInserts(description, plan, stock, ruler),
    ...checkStiffeners(plan, stock, ruler),
    ...checkShelves(description, plan, stock, ruler),
    ...checkContents(description, stock, ruler),
    ...checkDrawers(description, plan, stock, ruler),
  ];
}
