/** What a table alone cannot know: names in other tables, and the currency of the case. */
import type { Problem } from "../../problem.js";
import { Money } from "../../quantity/index.js";
import type { ReadTables } from "../read/read-tables.js";
import type { Stock } from "../stock.js";
import { tableFiles } from "../table-files.js";
import { checkOffers } from "./check-offers.js";
import { checkRows } from "./check-rows.js";
import { type Cell, cellProblem, type TableName } from "./table-problem.js";

/**
 * Every disagreement between tables. Rows with a problem were left out when the tables were read, so names
 * are not looked up in a table that has any.
 *
 * @param currency of the case, when it could be read
 */
export function checkTables(tables: ReadTables, currency: string | undefined): Problem[] {
  const spoilt = new Set(tables.problems.map(({ file }) => file));
  return [
    ...pricesOf(tables).flatMap((price) => checkCurrency(price, currency)),
    ...referencesOf(tables)
      .filter(({ among }) => among.every((table) => !spoilt.has(tableFiles[table])))
      .flatMap((reference) => checkReference(reference, tables.stock)),
    ...checkOffers(tables, currency),
    ...checkRows(tables),
  ];
}

/** A cell that holds a name of another table. */
interface Reference extends Cell {
  readonly among: readonly (keyof Stock)[];
}

function referencesOf({ stock, measurements }: ReadTables): Reference[] {
  const refer = (table: TableName, column: string, among: readonly (keyof Stock)[]) => {
    return (line: number, value: string): Reference => ({ table, line, column, value, among });
  };
  const fastenerOfHardware = refer("hardware", "fastener", ["fasteners"]);
  const sheetBent = refer("bends", "sheet", ["sheets"]);
  const weighed = refer("weights", "material", ["sheets", "facings"]);
  const spread = refer("spreads", "adhesive", ["adhesives"]);
  const fastenerPulled = refer("pulls", "fastener", ["fasteners", "hardware"]);
  const sheetPulled = refer("pulls", "sheet", ["sheets"]);
  const sheetTwisted = refer("twists", "sheet", ["sheets"]);
  const barDrawn = refer("profiles", "bar", ["bars"]);
  return [
    ...stock.hardware.map(({ line, fastener }) => fastenerOfHardware(line, fastener)),
    ...measurements.bends.map(({ line, sheet }) => sheetBent(line, sheet)),
    ...measurements.weights.map(({ line, material }) => weighed(line, material)),
    ...measurements.spreads.map(({ line, adhesive }) => spread(line, adhesive)),
    ...measurements.pulls.map(({ line, fastener }) => fastenerPulled(line, fastener)),
    ...measurements.pulls.map(({ line, sheet }) => sheetPulled(line, sheet)),
    ...measurements.twists.map(({ line, sheet }) => sheetTwisted(line, sheet)),
    ...measurements.profiles.map(({ line, bar }) => barDrawn(line, bar)),
  ];
}

function checkReference(reference: Reference, stock: Stock): Problem[] {
  const names = reference.among.flatMap((table) => stock[table].map(({ name }) => name));
  if (names.includes(reference.value)) return [];
  const files = reference.among.map((table) => tableFiles[table]).join(" or ");
  return [cellProblem(reference, `a name in ${files} (${names.join(", ")})`)];
}

/** A cell that holds a price. */
interface PriceCell extends Cell {
  readonly price: Money;
}

function pricesOf({ stock }: ReadTables): PriceCell[] {
  const cell = (table: TableName, line: number, column: string, price: Money): PriceCell => ({
    table,
    line,
    column,
    value: Money.show(price),
    price,
  });
  return [
    ...(Object.keys(stock) as (keyof Stock)[]).flatMap((table) =>
      stock[table].map(({ line, price }) => cell(table, line, "price", price)),
    ),
    ...stock.fasteners.map(({ line, washerPrice }) => cell("fasteners", line, "washer price", washerPrice)),
  ];
}

function checkCurrency(cell: PriceCell, currency: string | undefined): Problem[] {
  if (currency === undefined || cell.price.currency === currency) return [];
  return [cellProblem(cell, `a price in ${currency}, the currency of the case`)];
}
