/** Runs published lists of bars: the fewest bars, proven. */
import { type BarJob, mm, money, planBars } from "../../index.js";
import {
  casesOf,
  type FileCase,
  knownOf,
  listIn,
  nameOf,
  numberOf,
  recordIn,
  withSeconds,
} from "./cutting-values.js";
import type { ReferenceOutcome } from "./outcome.js";

/** One row a case: bars bought against the fewest, and whether ours are proven. */
export function barOutcomes(content: unknown): readonly ReferenceOutcome[] {
  return casesOf(content).map((one) => {
    const fewest = numberOf(recordIn(one, "expect"), "bars");
    const { done: plan, seconds } = withSeconds(() => planBars(barJobOf(one)));
    const { length: bars } = plan.bars;
    return {
      item: nameOf(one),
      result: "bars",
      expected: String(fewest),
      ours: `${bars}, ${plan.proof.proven ? "proven" : `at least ${plan.bound.count}`}, ${seconds}`,
      error: String(bars - fewest),
      tolerance: "0",
      holds: bars === fewest && plan.proof.proven,
      known: knownOf(one),
    };
  });
}

/** A case as a job; lengths without a unit are taken as millimetres, prices without a currency as one. */
export function barJobOf(one: FileCase): BarJob {
  return {
    pieces: listIn(one, "pieces").map((piece, i) => ({
      name: `piece ${i}`,
      length: mm(numberOf(piece, "length")),
      count: numberOf(piece, "count"),
    })),
    stock: listIn(one, "stock").map((stock, i) => ({
      name: `stock ${i}`,
      length: mm(numberOf(stock, "length")),
      price: money(numberOf(stock, "price", 1), "XXX"),
      ...(stock.count === undefined || stock.count === null ? {} : { available: numberOf(stock, "count") }),
    })),
    kerf: mm(numberOf(one, "kerf", 0)),
    endTrim: mm(numberOf(one, "trim", 0)),
  };
}
