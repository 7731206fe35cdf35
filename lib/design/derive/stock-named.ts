import type { Stock } from "../stock.js";

/** Where each table of the stock stands. */
export const stockFiles: Readonly<Record<keyof Stock, string>> = {
  sheets: "sheet-stock.csv",
  bars: "bar-stock.csv",
  hardware: "hardware.csv",
  fasteners: "fasteners.csv",
  adhesives: "adhesives.csv",
  facings: "facings.csv",
};

/**
 * The row of a name.
 *
 * @throws RangeError naming the file when there is none; a case read from files was checked before
 */
export function stockNamed<Table extends keyof Stock>(
  stock: Stock,
  table: Table,
  name: string,
): Stock[Table][number] {
  const rows: readonly Stock[Table][number][] = stock[table];
  const found = rows.find((row) => row.name === name);
  if (!found) throw new RangeError(`${stockFiles[table]}: no "${name}"`);
  return found;
}
