import type { Stock } from "../stock.js";
import { tableFiles } from "../table-files.js";

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
  if (!found) throw new RangeError(`${tableFiles[table]}: no "${name}"`);
  return found;
}
