/** A row of a table copied under another name, with some of its cells changed. */
import { add, type Change, tableFiles } from "../../design/index.js";
import type { Job } from "../../job/index.js";
import { readCsv } from "../../measure/index.js";

/** A table that things are bought from. */
export type StockTable = "hardware" | "fasteners";

/**
 * The change that adds a copy of a row; nothing where the table has such a row already.
 *
 * @param cells what differs, by the heading of its column without the unit
 */
export function copiedRow(
  job: Pick<Job, "texts">,
  table: StockTable,
  row: string,
  as: string,
  cells: Readonly<Record<string, string>>,
): readonly Change[] {
  const file = tableFiles[table];
  const { lines } = readCsv(job.texts[file] ?? "", file);
  const [header, ...rows] = lines.map((line) => line.cells);
  const found = rows.find(([name]) => name === row);
  if (!header || !found || rows.some(([name]) => name === as)) return [];
  const copy = Object.fromEntries(header.map((heading, i) => [heading, found[i] ?? ""]));
  for (const [column, value] of Object.entries(cells)) {
    const heading = header.find((one) => bare(one) === column);
    if (heading === undefined) return [];
    copy[heading] = value;
  }
  const [first = ""] = header;
  const filled = Object.entries({ ...copy, [first]: as }).filter(([, value]) => value !== "");
  return [add({ file }, Object.fromEntries(filled))];
}

function bare(heading: string): string {
  return heading
    .replace(/\s*\([^()]*\)\s*$/, "")
    .trim()
    .toLowerCase();
}
