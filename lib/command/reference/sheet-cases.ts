/** Runs published lists of rectangles: the best value of a sheet, the fewest sheets, the shortest strip. */
import {
  bestValueSheet,
  type Length,
  mm,
  money,
  planSheets,
  type SheetJob,
  type SheetPiece,
  shortestStrip,
  Time,
} from "../../index.js";
import {
  casesOf,
  type FileCase,
  knownOf,
  listIn,
  nameOf,
  numberOf,
  recordIn,
  sizeIn,
  withSeconds,
} from "./cutting-values.js";
import type { ReferenceOutcome } from "./outcome.js";

/** What a task's row says besides the case's own name. */
type Answer = Omit<ReferenceOutcome, "item" | "known">;

const tasks: Readonly<Record<string, (one: FileCase) => Answer>> = {
  "best-value": bestValue,
  "fewest-sheets": fewestSheets,
  "shortest-strip": shortest,
};

/** One row a case. */
export function sheetOutcomes(content: unknown): readonly ReferenceOutcome[] {
  return casesOf(content).map((one) => {
    const run = tasks[String(one.task)];
    if (!run) {
      throw new TypeError(
        `${nameOf(one)}: expected a task among ${Object.keys(tasks).join(", ")}, got ${JSON.stringify(one.task)}`,
      );
    }
    return { item: nameOf(one), known: knownOf(one), ...run(one) };
  });
}

function bestValue(one: FileCase): Answer {
  const most = numberOf(recordIn(one, "expect"), "value");
  const pieces = listIn(one, "pieces").map((piece, i) => ({
    name: `piece ${i}`,
    ...sizeIn(piece, "size"),
    value: numberOf(piece, "value"),
    ...(typeof piece.max === "number" ? { max: piece.max } : {}),
  }));
  const { done, seconds } = withSeconds(() =>
    bestValueSheet({
      ...sizeIn(one, "sheet"),
      pieces,
      turn: one.rotate === true,
      cuts: cutsOf(one),
      timeLimit: limit,
    }),
  );
  return {
    result: "value",
    expected: String(most),
    ours: `${done.value}, ${done.proven ? "proven" : `at most ${done.bound}`}, ${seconds}`,
    error: String(done.value - most),
    tolerance: "0",
    holds: Math.abs(done.value - most) <= 1e-9 * most,
  };
}

const limit = Time.of(10, "s");
const sheetLimit = Time.of(10, "s");

function fewestSheets(one: FileCase): Answer {
  const { done: plan, seconds } = withSeconds(() => planSheets(sheetJobOf(one, sheetLimit)));
  const { length: sheets } = plan.sheets;
  return {
    result: "sheets",
    expected: `>= ${numberOf(recordIn(one, "expect"), "atLeast")}`,
    ours: `${sheets}, ${plan.proof.proven ? "proven" : `at least ${plan.bound.count}`}, ${seconds}`,
    error: `${sheets - plan.bound.count} over our bound`,
    tolerance: "1",
    holds: sheets - plan.bound.count <= 1,
  };
}

/** A case of fewest sheets as a job; sizes without a unit are taken as millimetres. */
export function sheetJobOf(one: FileCase, timeLimit: Time): SheetJob {
  return {
    pieces: piecesOf(one),
    stock: [{ name: "sheet", ...sizeIn(one, "sheet"), price: money(1, "XXX") }],
    kerf: mm(0),
    cuts: cutsOf(one),
    timeLimit,
  };
}

function shortest(one: FileCase): Answer {
  const best = numberOf(recordIn(one, "expect"), "length");
  const job = { pieces: piecesOf(one), width: mm(numberOf(one, "width")), timeLimit: limit };
  const { done, seconds } = withSeconds(() => shortestStrip({ ...job, cuts: cutsOf(one) }));
  const straight = shortestStrip({ ...job, cuts: "straight" });
  const inUnits = (length: Length): number => Math.round(length * 1e6) / 1e3;
  const over = inUnits(done.length) / best - 1;
  return {
    result: "length",
    expected: String(best),
    ours: `${inUnits(done.length)}, ${done.proven ? "proven" : `at least ${inUnits(done.bound)}`}, ${seconds}; straight cuts ${inUnits(straight.length)}`,
    error: `${(100 * over).toFixed(1)} %`,
    tolerance: "5 %",
    holds: over <= 0.05,
  };
}

function piecesOf(one: FileCase): SheetPiece[] {
  return listIn(one, "pieces").map((piece, i) => ({
    name: `piece ${i}`,
    ...sizeIn(piece, "size"),
    count: numberOf(piece, "count"),
    grain: one.rotate === true ? "free" : "along",
  }));
}

function cutsOf({ cuts }: FileCase): "straight" | "any shape" {
  return cuts === "free" ? "any shape" : "straight";
}
