/** What a column of a builder's table may hold: its header, its kind, its unit, its bounds. */
import {
  beyondReach,
  type Kind,
  Money,
  onTheLine,
  type Quantity,
  type QuantityKind,
  readNumber,
} from "../quantity/index.js";

/** Rules beyond the kind. Bounds are in SI; for money they are amounts. */
export interface ColumnRules {
  /** The least value allowed. */ readonly min?: number;
  /** The greatest value allowed. */ readonly max?: number;
  /** A bound that is itself not allowed. */ readonly above?: number;
  /** A greatest value that nobody means to pass, and that is told only to whoever does. */ readonly reach?: number;
  /** No value may stand in two rows, capitals or not. */ readonly unique?: boolean;
}

/** One column, ready to read cells. */
export interface Column<T> {
  /** The header without its unit: "span". */ readonly header: string;
  /** A required column stands in every table and has no blank cell. */ readonly required: boolean;
  /** Whether no value may stand in two rows. */ readonly unique: boolean;
  /** The header as a builder may write it: "span (mm)". */ readonly example: string;
  /** Reads the unit of a header, or says by a RangeError which units it may be. */
  readUnit(unit: string | undefined): CellReader<T>;
}

/** Thrown for a value beyond all that a shop could mean; its message says what the most is. */
export class OutOfReach extends RangeError {}

/** Reads the cells below one header. */
export interface CellReader<T> {
  /** What a cell may hold, in words. */ readonly expected: string;
  /** The words of a choice; absent for all else. */ readonly words?: readonly string[];
  /** Throws RangeError or TypeError on anything else. */
  read(cell: string): T;
}

/**
 * A column that every row fills.
 *
 * @param header as it stands in the file, without the unit
 * @param kind a quantity or money (then a unit or a currency stands in the header), a count, a ratio, a
 * name or a choice (then none)
 */
export function column<T>(header: string, kind: Kind<T>, rules: ColumnRules = {}): Column<T> {
  return { ...anyColumn(header, kind, rules), required: true };
}

/** A column that may be absent or have blank cells. */
export function optionalColumn<T>(
  header: string,
  kind: Kind<T>,
  rules: ColumnRules = {},
): Column<T | undefined> {
  return { ...anyColumn(header, kind, rules), required: false };
}

/** @throws RangeError from `readUnit` for a unit that the kind does not have */
function anyColumn<T>(header: string, kind: Kind<T>, rules: ColumnRules): Column<T> {
  const units = unitsOf(kind);
  return {
    header,
    required: true,
    unique: rules.unique ?? false,
    example: units.needed ? `${header} (${units.example})` : header,
    readUnit: (unit) => {
      const named = unit === undefined ? undefined : units.named(unit);
      if (unit === undefined ? units.needed : named === undefined)
        throw new RangeError(units.expected(header));
      return bounded(kind, named, rules);
    },
  };
}

/** Which units a header may carry. */
interface HeaderUnits {
  /** Whether a unit must stand in the header. */ readonly needed: boolean;
  /** One of the units, for an example. */ readonly example: string;
  /** The unit that is written, whatever its capitals where those leave no doubt; undefined for none of the kind. */
  named(unit: string): string | undefined;
  /** What should stand there, in words. */
  expected(header: string): string;
}

function unitsOf<T>(kind: Kind<T>): HeaderUnits {
  if (isMoney(kind)) {
    return {
      needed: true,
      example: "USD",
      named: (unit) => (unit === "€" ? "EUR" : /^[A-Z]{3}$/i.test(unit) ? unit.toUpperCase() : undefined),
      expected: (header) =>
        `a currency of three capitals in the header, such as "${header} (USD)" or "${header} (EUR)"`,
    };
  }
  if (isQuantity(kind)) {
    const names = kind.units.filter(Boolean);
    return {
      needed: !kind.units.includes(""),
      example: kind.usual,
      named: (unit) => unitLike(unit, names),
      expected: (header) =>
        `a unit of ${kind.name} in the header, such as "${header} (${kind.usual})" (units: ${names.join(", ")})`,
    };
  }
  return {
    needed: false,
    example: "",
    named: () => undefined,
    expected: (header) => `"${header}" without a unit`,
  };
}

/** The name itself, or the only one that differs from it in capitals, spaces and raised figures alone: "MM", "fl oz", "m²". */
function unitLike(unit: string, names: readonly string[]): string | undefined {
  if (names.includes(unit)) return unit;
  const bare = (text: string): string => onTheLine(text).replaceAll(" ", "").toLowerCase();
  const alike = names.filter((name) => bare(name) === bare(unit));
  return alike.length === 1 ? alike[0] : undefined;
}

/** @throws RangeError from `read` for a value out of bounds */
function bounded<T>(kind: Kind<T>, unit: string | undefined, rules: ColumnRules): CellReader<T> {
  const expected = [cellExpected(kind, unit), ...boundsInWords(kind, unit, rules)].join(", ");
  return {
    expected,
    ...(kind.words && { words: kind.words }),
    read: (cell) => {
      const value = readCell(kind, unit, cell);
      const measured = kind.measure?.(value);
      if (measured !== undefined && !within(measured, rules)) throw new RangeError(`expected ${expected}`);
      const beyond =
        rules.max === undefined ? beyondReach(kind, measured, { unit, reach: rules.reach }) : undefined;
      if (beyond !== undefined) throw new OutOfReach(beyond);
      return value;
    },
  };
}

function cellExpected<T>(kind: Kind<T>, unit: string | undefined): string {
  return unit === undefined ? kind.expected : `a number in ${unit} (12, 0.5 or 3/8)`;
}

function readCell<T>(kind: Kind<T>, unit: string | undefined, cell: string): T {
  if (unit === undefined) return kind.read(cell);
  const value = readNumber(cell);
  if (isQuantity(kind)) return kind.of(value, unit) as T;
  return kind.read(`${value} ${unit}`);
}

function within(measured: number, { min, max, above }: ColumnRules): boolean {
  return (
    (min === undefined || measured >= min) &&
    (max === undefined || measured <= max) &&
    (above === undefined || measured > above)
  );
}

function boundsInWords<T>(
  kind: Kind<T>,
  unit: string | undefined,
  { min, max, above }: ColumnRules,
): string[] {
  const show = (bound: number): string => kind.showMeasure?.(bound, unit ? { unit } : {}) ?? String(bound);
  return [
    above === undefined ? "" : `above ${show(above)}`,
    min === undefined ? "" : `at least ${show(min)}`,
    max === undefined ? "" : `at most ${show(max)}`,
  ].filter(Boolean);
}

function isMoney(kind: object): boolean {
  return kind === Money;
}

function isQuantity<T>(kind: Kind<T>): kind is Kind<T> & QuantityKind<string> & Kind<T & Quantity<string>> {
  return "of" in kind && "units" in kind;
}
