/** Rows of plain records as a table, each value as it prints. */
import { type TableView, tableOf } from "../../page/index.js";
import { Refusal } from "../../refusal.js";
import { answerText } from "./sweep.js";

/**
 * A table of records, a column a field, in the order of the first: `table(job.panels.map((p) => ({ panel: p.name, sag: p.sag() })))`.
 *
 * @param caption the words above it
 * @throws Refusal without rows
 */
export function table(rows: readonly object[], caption?: string): TableView {
  const [first] = rows;
  if (!first) throw new Refusal("table: give at least one row, such as { panel: p.name, sag: p.sag() }");
  const columns = Object.keys(first).map((heading) => ({
    heading,
    cell: (row: object) => answerText((row as Readonly<Record<string, unknown>>)[heading] ?? ""),
  }));
  return tableOf(rows, columns, caption);
}
