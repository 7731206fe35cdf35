/** Every table of a job: texts in, typed rows and every problem out. */
import { type ReadTable, readTable, type TableRow, type TableSchema } from "../measure/index.js";
import type { Problem } from "../problem.js";
import { Money } from "../quantity/index.js";
import { type Measurements, measuredTables } from "./measured.js";
import { breakRules, leftoverRules, type OfferRows, type Offers, offerTables } from "./offers.js";
import { type Stock, type StockRows, stockTables } from "./stock.js";
import type { AnyTable, LineRule } from "./table.js";

/** A table of a job. */
export type TableName = keyof Stock | keyof Offers | keyof Measurements;

const tables: Readonly<Record<TableName, AnyTable>> = { ...stockTables, ...offerTables, ...measuredTables };
const tableNames = Object.keys(tables) as TableName[];
const stockNames = Object.keys(stockTables) as (keyof Stock)[];

/** The file beside case.yaml that each table stands in. */
export const tableFiles = Object.fromEntries(tableNames.map((name) => [name, tables[name].file])) as Readonly<
  Record<TableName, string>
>;

/** The texts of a job's tables, by file name; absent for a file that is not there. */
export type TableTexts = Readonly<Record<string, string | undefined>>;

/** Rows of the measurements, with their lines. */
export type MeasuredRows = {
  readonly [Table in keyof Measurements]: readonly (Measurements[Table][number] & TableRow)[];
};

/** What the tables gave; rows with a problem are left out. */
export interface ReadTables {
  /** Rows of what can be bought. */
  readonly stock: StockRows;
  /** Rows of how it is sold. */
  readonly offers: OfferRows;
  /** Rows of what was measured. */
  readonly measurements: MeasuredRows;
  /** Problems of the texts, table by table. */
  readonly problems: readonly Problem[];
}

/** Reads the text of one table. */
export type ReadOne = <Row extends TableRow>(
  text: string,
  file: string,
  schema: TableSchema<Row>,
) => ReadTable<Row>;

/** Reads every table. A table of the stock must be there; other tables may be absent or empty. */
export function readTables(texts: TableTexts, readOne: ReadOne = readTable): ReadTables {
  const problems: Problem[] = [];
  const readAll = <Rows>(declared: Readonly<Record<string, AnyTable>>): Rows =>
    Object.fromEntries(
      Object.entries(declared).map(([name, table]) => {
        const read = readText(texts, table, readOne);
        problems.push(...read.problems);
        return [name, read.rows];
      }),
    ) as Rows;
  return {
    stock: readAll<StockRows>(stockTables),
    offers: readAll<OfferRows>(offerTables),
    measurements: readAll<MeasuredRows>(measuredTables),
    problems,
  };
}

function readText(texts: TableTexts, table: AnyTable, readOne: ReadOne): ReadTable<TableRow> {
  const { file, mayBeEmpty } = table;
  const text = texts[file];
  if (text !== undefined) return readOne(text, file, table);
  return { rows: [], problems: mayBeEmpty ? [] : [{ file, expected: "this file beside case.yaml" }] };
}

/** Was every table of the stock read whole? Measurements have no say in whether a case fits together. */
export function stockIsSound({ problems }: ReadTables): boolean {
  const files = stockNames.map((table) => tableFiles[table]);
  return !problems.some(({ file }) => files.includes(file));
}

/** A cell of a table, for a problem in it. */
export interface Cell {
  /** The table it is in. */
  readonly table: TableName;
  /** Line of the file, counted from 1. */
  readonly line: number;
  /** Header without its unit. */
  readonly column: string;
  /** What stands there. */
  readonly value: string;
}

/** A problem of one cell. */
export function cellProblem({ table, line, column, value }: Cell, expected: string): Problem {
  return { file: tableFiles[table], row: line, column, value, expected };
}

/**
 * What a table alone cannot know: names in other tables, the currency of the case, and rows whose figures
 * contradict each other. Rows with a problem were left out when the tables were read, so names are not looked up in
 * a table that has any.
 *
 * @param currency of the case, when it could be read
 */
export function checkTables(read: ReadTables, currency: string | undefined): Problem[] {
  const spoilt = new Set(read.problems.map(({ file }) => file));
  const { stock, offers } = read;
  const broken = (table: TableName, rules: readonly LineRule[]): Problem[] =>
    rules.filter(({ keeps }) => !keeps).map((rule) => cellProblem({ table, ...rule }, rule.expected));
  return [
    ...stockNames.flatMap((table) => strangePrices(table, stock[table], currency)),
    ...tableNames.flatMap((table) => strangeNames(table, rowsOf(read, table), stock, spoilt)),
    ...strangePrices("priceBreaks", offers.priceBreaks, currency),
    ...strangePrices("suppliers", offers.suppliers, currency),
    ...(stockIsSound(read)
      ? [
          ...broken("priceBreaks", breakRules(offers, stock)),
          ...broken("leftovers", leftoverRules(offers, stock)),
        ]
      : []),
    ...tableNames.flatMap((table) => broken(table, tables[table].rulesOf(rowsOf(read, table)))),
  ];
}

function rowsOf({ stock, offers, measurements }: ReadTables, table: TableName): readonly TableRow[] {
  return { ...stock, ...offers, ...measurements }[table];
}

/** The cells of one column, with their lines. */
function cellsOf(
  rows: readonly TableRow[],
  field: string,
): { readonly line: number; readonly value: unknown }[] {
  return rows.map((row) => ({
    line: row.line,
    value: Object.entries(row).find(([name]) => name === field)?.[1],
  }));
}

/** Amounts in another currency than the case's. */
function strangePrices(table: TableName, rows: readonly TableRow[], currency: string | undefined): Problem[] {
  if (currency === undefined) return [];
  const what = table in offerTables ? "an amount" : "a price";
  return Object.entries(tables[table].declared).flatMap(([field, { header }]) =>
    cellsOf(rows, field).flatMap(({ line, value }) => {
      if (!isMoney(value) || value.currency === currency) return [];
      const cell = { table, line, column: header, value: Money.show(value) };
      return [cellProblem(cell, `${what} in ${currency}, the currency of the case`)];
    }),
  );
}

function isMoney(value: unknown): value is Money {
  return typeof value === "object" && value !== null && "currency" in value;
}

/** Cells whose name stands in none of the tables that it should. */
function strangeNames(
  table: TableName,
  rows: readonly TableRow[],
  stock: Stock,
  spoilt: ReadonlySet<string>,
): Problem[] {
  return Object.entries(tables[table].declared).flatMap(([field, { header, namesIn }]) => {
    if (!namesIn || namesIn.some((one) => spoilt.has(tableFiles[one]))) return [];
    const names = namesIn.flatMap((one) => stock[one].map(({ name }) => name));
    const files = namesIn.map((one) => tableFiles[one]).join(" or ");
    return cellsOf(rows, field)
      .map(({ line, value }) => ({ table, line, column: header, value: String(value) }))
      .filter(({ value }) => !names.includes(value))
      .map((cell) => cellProblem(cell, `a name in ${files} (${names.join(", ")})`));
  });
}
