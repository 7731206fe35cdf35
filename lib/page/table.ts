import type { Alignment, TableView } from "./view.js";

/** One column of a table: what stands above it and how a row fills it. */
export interface Column<Row> {
  readonly heading: string;
  readonly cell: (row: Row) => string | number;
  /** Default: right where every cell is a number or starts with one, else left. */
  readonly align?: Alignment;
}

/**
 * A table with one line a row.
 *
 * @example
 * const sheets = [{ name: "ply", mass: kg(12) }];
 * tableOf(sheets, [{ heading: "Sheet", cell: (s) => s.name }, { heading: "Mass", cell: (s) => Mass.show(s.mass) }])
 */
export function tableOf<Row>(
  rows: readonly Row[],
  columns: readonly Column<Row>[],
  caption?: string,
): TableView {
  const cells = rows.map((row) => columns.map(({ cell }) => String(cell(row))));
  return {
    kind: "table",
    ...(caption === undefined ? {} : { caption }),
    columns: columns.map(({ heading, align }, i) => ({
      heading,
      align: align ?? (cells.length > 0 && cells.every((row) => isFigure(row[i] ?? "")) ? "right" : "left"),
    })),
    rows: cells,
  };
}

/** Starts with a number, or is left blank or dashed among numbers. */
function isFigure(text: string): boolean {
  return /^[-+−±]?[\d.]|^[-–]?$/.test(text);
}
