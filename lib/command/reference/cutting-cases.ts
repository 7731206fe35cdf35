/** Runs published cutting cases: bars, and lists of rectangles. */
import {
  type BarJob,
  bestValueSheet,
  type Length,
  mm,
  money,
  planBars,
  planSheets,
  type SheetJob,
  type SheetPiece,
  shortestStrip,
  Time,
} from "../../index.js";
import type { ReferenceOutcome } from "./outcome.js";

/** A case as it stands in a file. */
export type FileCase = Readonly<Record<string, unknown>>;

/**
 * The cases of a file.
 *
 * @throws TypeError when there is no list of cases
 */
export function casesOf(content: unknown): readonly FileCase[] {
  const { cases } = (content ?? {}) as { readonly cases?: unknown };
  if (!Array.isArray(cases)) throw new TypeError('expected { "cases": [...] }');
  return cases as readonly FileCase[];
}

/**
 * A number of a case, or what to take where it is missing.
 *
 * @throws TypeError naming case and field when it is no number
 */
export function numberOf(one: FileCase, field: string, otherwise?: number): number {
  const value = one[field] ?? otherwise;
  if (typeof value !== "number" || !Number.isFinite(value)) {
    throw new TypeError(`${nameOf(one)}: expected a number in "${field}", got ${JSON.stringify(value)}`);
  }
  return value;
}

/**
 * A list of records of a case.
 *
 * @throws TypeError naming case and field when it is no list
 */
function listIn(one: FileCase, field: string): readonly FileCase[] {
  const value = one[field];
  if (!Array.isArray(value)) {
    throw new TypeError(`${nameOf(one)}: expected a list in "${field}", got ${JSON.stringify(value)}`);
  }
  return value as readonly FileCase[];
}

/**
 * A record of a case.
 *
 * @throws TypeError naming case and field when it is no record
 */
function recordIn(one: FileCase, field: string): FileCase {
  const value = one[field];
  if (typeof value !== "object" || value === null) {
    throw new TypeError(`${nameOf(one)}: expected a record in "${field}", got ${JSON.stringify(value)}`);
  }
  return value as FileCase;
}

/**
 * Two sizes of a case, taken as millimetres.
 *
 * @throws TypeError naming case and field when it is no pair of numbers
 */
function sizeIn(one: FileCase, field: string): { readonly length: Length; readonly width: Length } {
  const [length, width] = listIn(one, field) as unknown as readonly unknown[];
  if (typeof length !== "number" || typeof width !== "number") {
    throw new TypeError(
      `${nameOf(one)}: expected two numbers in "${field}", got ${JSON.stringify(one[field])}`,
    );
  }
  return { length: mm(length), width: mm(width) };
}

/** The name of a case, for messages and tables. */
export function nameOf(one: FileCase): string {
  return typeof one.name === "string" ? one.name : "case";
}

/** How the expected value of a case is known. */
function knownOf(one: FileCase): string {
  return typeof one.known === "string" ? one.known : "";
}

/** A piece of work with the time it took. */
function withSeconds<T>(work: () => T): { readonly done: T; readonly seconds: string } {
  const start = performance.now();
  const done = work();
  return { done, seconds: `${((performance.now() - start) / 1000).toFixed(2)} s` };
}

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

/** What a task's row says besides the case's own name. */
type Answer = Omit<ReferenceOutcome, "item" | "known">;

const tasks: Readonly<Record<string, (one: FileCase) => Answer>> = {
  "best-value": bestValue,
  "fewest-sheets": fewestSheets,
  "shortest-strip": shortest,
};

/**
 * One row a case.
 *
 * @throws TypeError for a task that is not known
 */
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
