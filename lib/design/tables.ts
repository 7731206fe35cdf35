/** Every table of a job: texts in, typed rows and every problem out. */
import { type ReadTable, readTable, type TableRow, type TableSchema } from "../measure/index.js";
import { didYouMean, nearestWord, type Problem, type RawProblem } from "../problem.js";
import { isMoney, Money } from "../quantity/index.js";
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

/** The names that each table of the stock has. */
export type StockNames = Readonly<Partial<Record<keyof Stock, readonly string[]>>>;

/** What the tables gave; rows with a problem are left out. */
export interface ReadTables {
  /** Rows of what can be bought. */
  readonly stock: StockRows;
  /** Rows of how it is sold. */
  readonly offers: OfferRows;
  /** Rows of what was measured. */
  readonly measurements: MeasuredRows;
  /** Names of all rows of the stock, left out or not; none where a table does not say them. */
  readonly names: StockNames;
  /** Problems of the texts, table by table. */
  readonly problems: readonly Problem[];
}

/** Reads the text of one table. */
export type ReadOne = <Row extends TableRow>(
  text: string,
  file: string,
  schema: TableSchema<Row>,
) => ReadTable<Row>;

/** Reads every table. A table of the stock that the case uses must be there; other tables may be absent or empty. */
export function readTables(
  texts: TableTexts,
  readOne: ReadOne = readTable,
  used: ReadonlySet<TableName> = new Set(stockNames),
): ReadTables {
  const problems: Problem[] = [];
  const names: Partial<Record<string, readonly string[]>> = {};
  const readAll = <Rows>(declared: Readonly<Record<string, AnyTable>>): Rows =>
    Object.fromEntries(
      Object.entries(declared).map(([name, table]) => {
        const needed = used.has(name as TableName);
        const read = readText(texts, needed ? table : { ...table, mayBeEmpty: true }, readOne);
        problems.push(...read.problems);
        if (read.names) names[name] = read.names;
        return [name, read.rows];
      }),
    ) as Rows;
  return {
    stock: readAll<StockRows>(stockTables),
    offers: readAll<OfferRows>(offerTables),
    measurements: readAll<MeasuredRows>(measuredTables),
    names,
    problems,
  };
}

function readText(texts: TableTexts, table: AnyTable, readOne: ReadOne): ReadTable<TableRow> {
  const { file, mayBeEmpty } = table;
  const text = texts[file];
  if (text !== undefined) return readOne(text, file, table);
  return {
    rows: [],
    names: mayBeEmpty ? [] : undefined,
    problems: mayBeEmpty ? [] : [{ file, expected: "this file beside case.yaml" }],
  };
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
 * contradict each other. Names are not looked up in a table whose own could not be read.
 *
 * @param currency of the case, when it could be read
 */
export function checkTables(read: ReadTables, currency: string | undefined): RawProblem[] {
  const spoilt = new Set(read.problems.map(({ file }) => file));
  const { stock, offers, names } = read;
  const broken = (table: TableName, rules: readonly LineRule[]): RawProblem[] =>
    rules
      .filter(({ keeps }) => !keeps)
      .map((rule) => ({
        ...cellProblem({ table, ...rule }, rule.expected),
        cause: rule.cause ?? `${table} ${rule.column} ${rule.expected.replace(/[\d.,/-]+/g, "")}`,
      }));
  return [
    ...strangePrices(read, currency),
    ...tableNames.flatMap((table) => strangeNames(table, rowsOf(read, table), names)),
    ...(spoilt.has(tableFiles.suppliers) ? [] : strangeSuppliers(read)),
    ...(stockIsSound(read)
      ? [
          ...broken("priceBreaks", breakRules(offers, stock)),
          ...broken("leftovers", leftoverRules(offers, stock)),
        ]
      : []),
    ...tableNames.flatMap((table) => broken(table, tables[table].rulesOf(rowsOf(read, table)))),
  ];
}

/** Tables with a row, a heading or all of it that could not be read, and what their rows are called all the same. */
export type UnsureTables = ReadonlyMap<keyof Stock, readonly string[] | undefined>;

/** What is left of the stock without its problems. */
export interface SoundStock {
  /** Rows that have none, and whose own names lead to such rows. */
  readonly stock: StockRows;
  /** Tables with a problem, and the names that all of their rows have; undefined where those could not be read. */
  readonly unsure: UnsureTables;
}

/**
 * The stock that a case may be laid out with.
 *
 * @param problems of all tables
 */
export function soundStock({ stock, names }: ReadTables, problems: readonly Problem[]): SoundStock {
  const unsure = new Map(
    stockNames
      .filter((table) => problems.some(({ file }) => file === tableFiles[table]))
      .map((table) => [table, names[table]]),
  );
  if (unsure.size === 0) return { stock, unsure };
  const bad = new Set(
    problems.flatMap(({ file, row, also = [] }) =>
      [{ file, row }, ...also].map((one) => `${one.file} ${one.row}`),
    ),
  );
  const good = <Row extends TableRow>(table: keyof Stock, rows: readonly Row[]): readonly Row[] =>
    rows.filter(({ line }) => !bad.has(`${tableFiles[table]} ${line}`));
  const fasteners = good("fasteners", stock.fasteners);
  const hardware = good("hardware", stock.hardware).filter(({ fastener }) =>
    fasteners.some(({ name }) => name === fastener),
  );
  if (hardware.length < stock.hardware.length) unsure.set("hardware", names.hardware);
  const sound = {
    sheets: good("sheets", stock.sheets),
    bars: good("bars", stock.bars),
    adhesives: good("adhesives", stock.adhesives),
    facings: good("facings", stock.facings),
    strips: good("strips", stock.strips),
    panes: good("panes", stock.panes),
  };
  return { stock: { ...sound, hardware, fasteners }, unsure };
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

/** Amounts in another currency than the case's: one cause for each such currency. */
function strangePrices(read: ReadTables, currency: string | undefined): RawProblem[] {
  if (currency === undefined) return [];
  const strange = tableNames.flatMap((table) =>
    Object.entries(tables[table].declared).flatMap(([field, { header }]) =>
      cellsOf(rowsOf(read, table), field).flatMap(({ line, value }) =>
        isMoney(value) && value.currency !== currency
          ? [{ cell: { table, line, column: header, value: Money.show(value) }, other: value.currency }]
          : [],
      ),
    ),
  );
  return strange.map(({ cell, other }) => {
    const files = new Set(
      strange.flatMap((one) => (one.other === other ? [tableFiles[one.cell.table]] : [])),
    );
    const mend = `change (${other}) in the headings of ${[...files].join(", ")}, or "currency" in case.yaml`;
    const what = cell.table in offerTables ? "an amount" : "a price";
    return {
      ...cellProblem(cell, `${what} in ${currency}, the currency of the case: ${mend}`),
      cause: `currency ${other}`,
    };
  });
}

/** Cells whose name stands in none of the tables that it should. */
function strangeNames(table: TableName, rows: readonly TableRow[], written: StockNames): RawProblem[] {
  return Object.entries(tables[table].declared).flatMap(([field, { header, namesIn }]) => {
    if (!namesIn || namesIn.some((one) => written[one] === undefined)) return [];
    const names = namesIn.flatMap((one) => written[one] ?? []);
    return cellsOf(rows, field)
      .map(({ line, value }) => ({ table, line, column: header, value: String(value) }))
      .filter(({ value }) => !names.includes(value))
      .map((cell) => ({
        ...cellProblem(cell, nameExpected(namesIn, names, cell.value)),
        cause: strangeName(cell.value),
      }));
  });
}

/** A name that leads nowhere is one cause, wherever it is used. */
export function strangeName(name: string): string {
  return `name ${name}`;
}

/** What a name should have been. */
export function nameExpected(
  namesIn: readonly (keyof Stock)[],
  names: readonly string[],
  found: string,
): string {
  const files = namesIn.map((one) => tableFiles[one]).join(" or ");
  return `a name in ${files} (${names.join(", ")})${didYouMean(found, names)}`;
}

/**
 * Names of suppliers that are nearly one of suppliers.csv: slips. One that is quite another ships free and untaxed, as
 * all do where there is no such table.
 */
function strangeSuppliers({ stock, offers: { suppliers } }: ReadTables): RawProblem[] {
  const names = suppliers.map(({ name }) => name);
  return stockNames.flatMap((table) =>
    stock[table].flatMap(({ line, supplier }) => {
      if (names.includes(supplier) || nearestWord(supplier, names) === undefined) return [];
      const expected = `a name in ${tableFiles.suppliers} (${names.join(", ")})${didYouMean(supplier, names)}`;
      const cell = { table, line, column: "supplier", value: supplier };
      return [{ ...cellProblem(cell, expected), cause: `supplier ${supplier}` }];
    }),
  );
}
