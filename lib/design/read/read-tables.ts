/** Reads every CSV of a job: texts in, typed rows and every problem out. */
import { type ReadTable, readTable, type TableRow, type TableSchema } from "../../measure/index.js";
import type { Problem } from "../../problem.js";
import type { Measurements, Offers, Stock } from "../stock.js";
import { tableFiles } from "../table-files.js";
import { type MeasuredRow, measuredTables } from "./measured-tables.js";
import { type OfferRow, offerTables } from "./offer-tables.js";
import { type StockRow, stockTables } from "./stock-tables.js";

/** The texts of a job's tables, by file name; absent for a file that is not there. */
export type TableTexts = Readonly<Record<string, string | undefined>>;

/** Rows of the stock, with their lines. */
export type StockRows = { readonly [Table in keyof Stock]: readonly StockRow<Table>[] };

/** Rows of the offers, with their lines. */
export type OfferRows = { readonly [Table in keyof Offers]: readonly OfferRow<Table>[] };

/** Rows of the measurements, with their lines. */
export type MeasuredRows = { readonly [Table in keyof Measurements]: readonly MeasuredRow<Table>[] };

/** What the tables gave; rows with a problem are left out. */
export interface ReadTables {
  readonly stock: StockRows;
  readonly offers: OfferRows;
  readonly measurements: MeasuredRows;
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
  const read = <Row extends TableRow>(
    table: keyof typeof tableFiles,
    schema: TableSchema<Row>,
  ): readonly Row[] => {
    const result = readText(texts[tableFiles[table]], tableFiles[table], schema, readOne);
    problems.push(...result.problems);
    return result.rows;
  };
  const stock: StockRows = {
    sheets: read("sheets", stockTables.sheets),
    bars: read("bars", stockTables.bars),
    hardware: read("hardware", stockTables.hardware),
    fasteners: read("fasteners", stockTables.fasteners),
    adhesives: read("adhesives", stockTables.adhesives),
    facings: read("facings", stockTables.facings),
  };
  const offers: OfferRows = {
    priceBreaks: read("priceBreaks", offerTables.priceBreaks),
    suppliers: read("suppliers", offerTables.suppliers),
    leftovers: read("leftovers", offerTables.leftovers),
  };
  const measurements: MeasuredRows = {
    bends: read("bends", measuredTables.bends),
    weights: read("weights", measuredTables.weights),
    spreads: read("spreads", measuredTables.spreads),
    pulls: read("pulls", measuredTables.pulls),
    kerfs: read("kerfs", measuredTables.kerfs),
    timings: read("timings", measuredTables.timings),
    twists: read("twists", measuredTables.twists),
    tilts: read("tilts", measuredTables.tilts),
    cushions: read("cushions", measuredTables.cushions),
    temperatures: read("temperatures", measuredTables.temperatures),
    profiles: read("profiles", measuredTables.profiles),
  };
  return { stock, offers, measurements, problems };
}

function readText<Row extends TableRow>(
  text: string | undefined,
  file: string,
  schema: TableSchema<Row>,
  readOne: ReadOne,
): ReadTable<Row> {
  if (text !== undefined) return readOne(text, file, schema);
  return { rows: [], problems: schema.mayBeEmpty ? [] : [{ file, expected: "this file beside case.yaml" }] };
}
