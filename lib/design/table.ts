/**
 * How a table of a job is declared: its file, its columns, the names that its cells lead to and the rules of its
 * rows, all in one place. The type of a row follows from its columns.
 */
import {
  type Column,
  type ColumnRules,
  column,
  optionalColumn,
  type TableRow,
  type TableSchema,
} from "../measure/index.js";
import { type Kind, Length, Name } from "../quantity/index.js";

/** The tables of what can be bought, whose rows have names. */
export type StockName =
  | "sheets"
  | "bars"
  | "hardware"
  | "fasteners"
  | "adhesives"
  | "facings"
  | "strips"
  | "panes";

/** A column that says what its cells are. */
export interface DeclaredColumn<T> extends Column<T> {
  /** What a cell is, in a sentence. */
  readonly doc: string;
  /** Bounds of a cell, in SI. */
  readonly rules: ColumnRules;
  /** Tables of stock, one of which must have a row of the name in a cell; absent where a cell is no such name. */
  readonly namesIn?: readonly StockName[];
}

/** Columns by field of the row. */
export type DeclaredColumns = Readonly<Record<string, DeclaredColumn<unknown>>>;

/** The type of what a column reads. */
export type ValueOf<Any> = Any extends Column<infer T> ? T : never;

/** The row that columns read; a column that may be blank gives a field that may be absent. */
export type RowOf<Columns> = {
  readonly [Field in keyof Columns as undefined extends ValueOf<Columns[Field]> ? never : Field]: ValueOf<
    Columns[Field]
  >;
} & {
  readonly [Field in keyof Columns as undefined extends ValueOf<Columns[Field]> ? Field : never]?: ValueOf<
    Columns[Field]
  >;
};

/** A rule that a row must keep, beside the bounds of its cells. */
export interface RowRule {
  /** Whether the row keeps it. */
  readonly keeps: boolean;
  /** Header, without its unit, of the cell to mend. */
  readonly column: string;
  /** What stands there. */
  readonly value: string;
  /** What should stand there. */
  readonly expected: string;
  /** What it has in common with other mistakes of the same cause; by its words where left out. */
  readonly cause?: string;
}

/** A rule with the line of its row, counted from 1. */
export interface LineRule extends RowRule, TableRow {}

/** One table of a job. */
export interface DeclaredTable<Columns extends DeclaredColumns>
  extends TableSchema<RowOf<Columns> & TableRow> {
  /** The file beside case.yaml that it stands in. */
  readonly file: string;
  /** The columns again, with all that was declared of them. */
  readonly declared: Columns;
  /** Rules of the rows, kept and broken. */
  rulesOf(rows: readonly (RowOf<Columns> & TableRow)[]): readonly LineRule[];
}

/** A table whose rows are told by its declaration alone. */
export interface AnyTable extends TableSchema<TableRow> {
  /** The file beside case.yaml that it stands in. */
  readonly file: string;
  /** All that was declared of its columns, by field of the row. */
  readonly declared: DeclaredColumns;
  /** Rules of the rows, kept and broken. */
  rulesOf(rows: readonly TableRow[]): readonly LineRule[];
}

/**
 * Declares a table.
 *
 * @param rulesOf rules that need more than one cell; none where left out
 */
export function table<Columns extends DeclaredColumns>(
  file: string,
  declared: Columns,
  more: { readonly mayBeEmpty?: boolean; rulesOf?: DeclaredTable<Columns>["rulesOf"] } = {},
): DeclaredTable<Columns> {
  const columns = declared as unknown as DeclaredTable<Columns>["columns"];
  return {
    file,
    declared,
    columns,
    mayBeEmpty: more.mayBeEmpty ?? false,
    rulesOf: more.rulesOf ?? (() => []),
  };
}

/** A column that every row fills. */
export function needed<T>(
  header: string,
  kind: Kind<T>,
  doc: string,
  rules: ColumnRules = {},
): DeclaredColumn<T> {
  return { ...column(header, kind, rules), doc, rules };
}

/** A column that may be absent or have blank cells. */
export function optional<T>(
  header: string,
  kind: Kind<T>,
  doc: string,
  rules: ColumnRules = {},
): DeclaredColumn<T | undefined> {
  return { ...optionalColumn(header, kind, rules), doc, rules };
}

/** A column of names that lead to rows of other tables. */
export function nameIn(header: string, namesIn: readonly StockName[], doc: string): DeclaredColumn<string> {
  return { ...needed(header, Name, doc), namesIn };
}

/** A column whose cells hold several values joined by "+": the veneers of a sheet from face to back. */
export function joined<T>(
  header: string,
  kind: Kind<T>,
  doc: string,
  rules: ColumnRules,
): DeclaredColumn<readonly T[]> {
  const single = needed(header, kind, doc, rules);
  return {
    ...single,
    readUnit: (unit) => {
      const one = single.readUnit(unit);
      return {
        expected: `values joined by "+", each ${one.expected}`,
        read: (cell) => cell.split("+").map((part) => one.read(part.trim())),
      };
    },
  };
}

/** Rules of each row by itself. */
export function eachRow<Row extends object>(
  rulesOf: (row: Row) => readonly RowRule[],
): (rows: readonly (Row & TableRow)[]) => readonly LineRule[] {
  return (rows) => rows.flatMap((row) => rulesOf(row).map((rule) => ({ ...rule, line: row.line })));
}

/** A length in millimetres to a hundredth, as calipers read. */
export function inMillimetres(length: number): string {
  return Length.show(Length.si(Number(length.toFixed(5))), { unit: "mm" });
}
