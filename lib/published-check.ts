/** Tables of published checks: a row calls a formula by name and compares its result with a value from outside. */
import { type AnyFormula, formulaIndex, resultNamed, resultSymbols } from "./formula.js";
import { messageOf, type ShowStyle } from "./quantity/index.js";
import type { Known } from "./source.js";

/** A table as it stands in a file. */
export interface CheckTable {
  /** What the table checks. */
  readonly kind: "formula";
  /** The work the values come from. */
  readonly source: string;
  /** The published values, one a row. */
  readonly rows: readonly CheckRow[];
}

/** One published value. */
export interface CheckRow {
  /** The id of the formula. */
  readonly formula: string;
  /** Text with a unit, or bare numbers for what has none. */
  readonly inputs: Readonly<Record<string, unknown>>;
  /** One value, or values by result name. */
  readonly expect: string | number | Readonly<Record<string, string | number>>;
  /** The error allowed, as a share of the expected value. */
  readonly tolerance: number;
  /** Table, equation, page; why the tolerance is as wide as it is. */
  readonly where: string;
  /** How the expected value is known. */
  readonly known: Known;
}

/** One value compared. */
export interface CheckOutcome {
  /** The id of the formula. */
  readonly formula: string;
  /** The name of the result that is compared. */
  readonly result: string;
  /** The published value, as the table writes it. */
  readonly expected: string;
  /** Our value, in the unit of the published one. */
  readonly ours: string;
  /** The error as a share of the expected value; absolute where zero is expected. */
  readonly error: number;
  /** The largest error that is allowed. */
  readonly tolerance: number;
  /** Whether the error is within the tolerance. */
  readonly holds: boolean;
  /** The work the value comes from. */
  readonly source: string;
  /** The place in that work. */
  readonly where: string;
  /** How the published value is known. */
  readonly known: Known;
}

/**
 * Runs every row of a table.
 *
 * @throws RangeError naming the row when it calls a formula or a result that does not exist
 */
export function runChecks(table: CheckTable): CheckOutcome[] {
  return table.rows.flatMap((row, i) => {
    try {
      return runRow(table, row);
    } catch (error) {
      throw new RangeError(`row ${i + 1} (${row.formula}): ${messageOf(error)}`);
    }
  });
}

function runRow(table: CheckTable, row: CheckRow): CheckOutcome[] {
  const called = formulaIndex().get(row.formula);
  if (!called) throw new RangeError(`no formula of that name among ${formulaIndex().size}`);
  const result: unknown = called(called.read(row.inputs));
  return expectations(called, row).map(([name, expected]) =>
    compare(table, row, called, name, expected, result),
  );
}

function expectations(called: AnyFormula, { expect }: CheckRow): [string, string | number][] {
  if (typeof expect === "object") return Object.entries(expect);
  const [name = "value", ...others] = resultSymbols(called.declaration).map(([result]) => result);
  if (others.length > 0) throw new RangeError(`expected values by result: ${[name, ...others].join(", ")}`);
  return [[name, expect]];
}

function compare(
  table: CheckTable,
  row: CheckRow,
  called: AnyFormula,
  name: string,
  text: string | number,
  result: unknown,
): CheckOutcome {
  const kind = resultSymbols(called.declaration).find(([known]) => known === name)?.[1].kind;
  if (!kind) throw new RangeError(`no result "${name}"`);
  const ours = resultNamed(name, result);
  const expected = kind.read(text);
  const error = kind.measure
    ? relativeError(kind.measure(ours), kind.measure(expected))
    : Number(JSON.stringify(ours) !== JSON.stringify(expected));
  return {
    formula: row.formula,
    result: name,
    expected: String(text),
    ours: kind.show(ours, styleOf(text)),
    error,
    tolerance: row.tolerance,
    holds: error <= row.tolerance,
    source: table.source,
    where: row.where,
    known: row.known,
  };
}

const leadingNumber = /^\s*[+-]?(?:(?:\d+[\s-]+)?\d+\/\d+|(?:\d[\d.]*|\.\d+)(?:e[+-]?\d+)?)\s*/i;

/** Ours is shown in the unit the source uses; a compound such as 1 ft 2 in has no single unit to show in. */
function styleOf(text: string | number): ShowStyle {
  const unit = String(text).replace(leadingNumber, "").trim();
  return { digits: 6, ...(unit === "" || /\s/.test(unit) ? {} : { unit }) };
}

function relativeError(ours: number, expected: number): number {
  return Math.abs(ours - expected) / (expected === 0 ? 1 : Math.abs(expected));
}
